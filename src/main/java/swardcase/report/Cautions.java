package swardcase.report;

import java.util.List;

/** What is printed on every sheet, whatever the farm: fixed texts. */
final class Cautions {

  /** The cautions of a decision sheet in the order they are printed. */
  static final List<String> DECISION =
      List.of(
          "A screening estimate from tables with wide ranges. It is not veterinary advice and "
              + "not agronomic advice.",
          "Poor scanning, prolapse, difficult births or dry ewes: call a vet before you act on "
              + "this sheet. Infections, nutrition, trace elements, rams, heat and weather must be "
              + "ruled out first.",
          "Choice of cultivar, herbicides and the plan for the seed bank: ask an agronomist.",
          "Follow labels, permits, withholding periods, grazing intervals and local rules.",
          "An identification by eye can be wrong. Have a laboratory test clover leaf before "
              + "money is spent on it.",
          "New pasture with much clover carries bloat and other risks to stock health.",
          "Never keep feed from late-pregnant ewes to avoid a paddock.");

  /** Those of a joining sheet. */
  static final List<String> JOINING =
      List.of(
          "If scanning was poor, or ewes were dry, prolapsed or had difficult births: call a "
              + "vet first. Infections, nutrition, trace elements, rams, heat and weather must be "
              + "ruled out.",
          "Never keep feed from late-pregnant ewes to avoid a paddock.",
          "Hay or silage made from a paddock that is not open stays risky; dry standing feed "
              + "does not. Do not feed such hay or silage around joining.",
          "Wethers may graze risky green feed for limited periods only; cattle are less "
              + "sensitive than sheep.",
          "Move ewes off on the day, not on average: a screening estimate with wide ranges, and "
              + "not veterinary advice.");

  private Cautions() {}
}
