package swardcase.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import swardcase.check.NumberText;
import swardcase.evidence.Assumption;
import swardcase.evidence.SetBy;
import swardcase.farm.Action;
import swardcase.farm.ActionNumber;
import swardcase.farm.Farm;
import swardcase.farm.Mob;
import swardcase.farm.Paddock;

/** Says in plain sentences what a farm folder leaves out and what was taken in its place. */
final class Notices {

  private final Farm farm;
  private final List<String> notices = new ArrayList<>();

  private Notices(Farm farm) {
    this.farm = farm;
  }

  /** The notices in a fixed order: paddocks, mobs, sowing, money. */
  static List<String> of(Farm farm, Defaults defaults, Optional<LocalDate> priceDate) {
    Notices all = new Notices(farm);
    all.paddocks();
    all.mobs();
    all.sowing();
    all.money(defaults);
    if (priceDate.isEmpty() && PriceAge.matters(farm)) {
      all.say(
          "When the farm's own prices and quotes were taken is not said, so they may be old: write"
              + " the day behind price_date.");
    }
    return List.copyOf(all.notices);
  }

  private void paddocks() {
    sayOf(
        "Nobody looked at the clover of %s: what grows there is unknown, not safe.",
        names(paddock -> !paddock.isLookedAt()));
    sayOf(
        "The clover share of %s is a default: estimate it in the paddock.",
        names(paddock -> paddock.cloverShare().setBy() == SetBy.DEFAULT));
    sayOf(
        "The clover share of %s is one number and is taken as exact: give clover_percent_low and"
            + " clover_percent_high if it is an estimate.",
        names(p -> p.cloverShare().setBy() == SetBy.USER && p.cloverShare().range().isExact()));
  }

  private void mobs() {
    for (Mob mob : farm.mobs()) {
      List<String> defaults =
          List.of(mob.pregnantPercent(), mob.scanningPercent(), mob.markingPercent()).stream()
              .filter(figure -> figure.setBy() == SetBy.DEFAULT)
              .map(Assumption::name)
              .toList();
      if (!defaults.isEmpty()) {
        say("For %s these are defaults: %s.", mob.name(), String.join(", ", defaults));
      }
    }
  }

  private void sowing() {
    if (farm.sownCultivar().equals(FarmReader.USUAL_SOWN)) {
      say("No cultivar to sow is chosen: ask an agronomist which suits your rain and soil.");
    }
  }

  private void money(Defaults defaults) {
    List<String> prices = new ArrayList<>();
    for (Assumption row : defaults.taken()) {
      if (isOfTables(row) && row.unit().contains(Currencies.OF_TABLES)) {
        prices.add(row.name());
      }
    }
    if (isOfTables(farm.supplement().pricePerTonne())) {
      prices.add(farm.supplement().pricePerTonne().name());
    }
    String costs = actions(a -> a.costs().stream().anyMatch(line -> isOfTables(line.costPerHa())));
    String margins = actions(a -> a.cropped() && isOfTables(a.number(ActionNumber.CROP_MARGIN)));
    sayOf("These prices are table defaults, so put in your own: %s.", String.join(", ", prices));
    sayOf(
        "The costs of these actions are table defaults, so get quotes, and put in your own labour: %s.",
        costs);
    sayOf("The crop margins of these actions are table defaults: %s.", margins);
    boolean any = !(prices.isEmpty() && costs.isEmpty() && margins.isEmpty());
    if (any && !Currencies.isOfTables(farm.currency())) {
      say(
          "Money is shown in '%s', but these table defaults are in %s and are not converted.",
          farm.currency(), Currencies.OF_TABLES);
    }
    Assumption tolerance = farm.finance().riskTolerance();
    if (isOfTables(tolerance) && !Currencies.isOfTables(farm.currency())) {
      say(
          "Money is shown in '%s', but the risk tolerance that the plan is chosen by, %s, is a table"
              + " default in %s and is not converted: write risk_tolerance under finance.",
          farm.currency(), NumberText.plain(tolerance.likely()), Currencies.OF_TABLES);
    }
  }

  private String actions(Predicate<Action> which) {
    return farm.actions().stream()
        .filter(which)
        .map(action -> "'" + action.name() + "'")
        .collect(Collectors.joining(", "));
  }

  /** Whether a number is the program's own and is not simply nothing. */
  private static boolean isOfTables(Assumption number) {
    return number.setBy() == SetBy.DEFAULT && number.range().high() > 0;
  }

  private String names(Predicate<Paddock> which) {
    return farm.paddocks().stream()
        .filter(which)
        .map(Paddock::name)
        .collect(Collectors.joining(", "));
  }

  /** Says a sentence about something, unless there is nothing of the kind. */
  private void sayOf(String sentence, String names) {
    if (!names.isEmpty()) {
      say(sentence, names);
    }
  }

  private void say(String sentence, Object... arguments) {
    notices.add(String.format(Locale.ROOT, sentence, arguments));
  }
}
