package swardcase.report;

import java.util.List;

/** What is printed on every sheet, whatever the farm. */
public final class Cautions {

  private static final List<String> ALL =
      List.of(
          "A screening estimate from tables with wide ranges. It is not veterinary advice and not"
              + " agronomic advice.",
          "Poor scanning, prolapse, difficult births or dry ewes: call a vet before you act on this"
              + " sheet. Infections, nutrition, trace elements, rams, heat and weather must be ruled"
              + " out first.",
          "Choice of cultivar, herbicides and the plan for the seed bank: ask an agronomist.",
          "Follow labels, permits, withholding periods, grazing intervals and local rules.",
          "An identification by eye can be wrong. Have a laboratory test clover leaf before money is"
              + " spent on it.",
          "New pasture with much clover carries bloat and other risks to stock health.",
          "Never keep feed from late-pregnant ewes to avoid a paddock.");

  private Cautions() {}

  /** The cautions in the order they are printed. */
  public static List<String> all() {
    return ALL;
  }
}
