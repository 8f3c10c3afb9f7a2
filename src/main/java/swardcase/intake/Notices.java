package swardcase.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import swardcase.evidence.Assumption;
import swardcase.evidence.SetBy;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.farm.Mob;
import swardcase.farm.Paddock;
import swardcase.tables.Cultivar;
import swardcase.tables.Tables;

/** Says in plain sentences what is odd about a farm that can be worked on all the same. */
final class Notices {

  /** Clover is seldom more of a sward than this. */
  private static final double MUCH_CLOVER = 0.9;

  /** Fewer plants than this say little about a paddock. */
  private static final int FEW_PLANTS = 30;

  /** Joinings are seldom longer. */
  private static final int LONG_JOINING_WEEKS = 12;

  private final Farm farm;
  private final Tables tables;
  private final List<String> notices = new ArrayList<>();

  private Notices(Farm farm, Tables tables) {
    this.farm = farm;
    this.tables = tables;
  }

  /** The notices in a fixed order: paddocks, mobs, sowing, money. */
  static List<String> of(Farm farm, Tables tables, Defaults defaults) {
    Notices all = new Notices(farm, tables);
    all.paddocks();
    all.mobs();
    all.sowing();
    all.money(defaults);
    return List.copyOf(all.notices);
  }

  private void paddocks() {
    sayOf(
        "Nobody looked at the clover of %s: what grows there is unknown, not safe.",
        names(paddock -> paddock.plantsLookedAt() == 0));
    for (Paddock paddock : farm.paddocks()) {
      long plants = Math.round(paddock.plantsLookedAt());
      if (plants > 0 && plants < FEW_PLANTS) {
        say(
            "Only %s plants were looked at in %s: fewer than %s say little.",
            plants, paddock.name(), FEW_PLANTS);
      }
      if (paddock.cloverShare().likely() > MUCH_CLOVER) {
        say(
            "Clover is given as more than %s %% of the green feed in %s: is that so?",
            NumberText.plain(MUCH_CLOVER * 100), paddock.name());
      }
    }
    sayOf(
        "The clover share of %s is a default: estimate it in the paddock.",
        names(paddock -> paddock.cloverShare().setBy() == SetBy.DEFAULT));
    sayOf(
        "The clover share of %s is one number and is taken as exact: give clover_percent_low and"
            + " clover_percent_high if it is an estimate.",
        names(p -> p.cloverShare().setBy() == SetBy.USER && p.cloverShare().range().isExact()));
  }

  private void mobs() {
    if (farm.mobs().isEmpty()) {
      say("The farm has no ewes: nothing is said about fertility.");
    }
    if (farm.mobs().isEmpty() && farm.otherStock().isEmpty()) {
      say("The farm has no stock at all: extra feed is worth nothing to it.");
    }
    for (Mob mob : farm.mobs()) {
      if (mob.joiningWeeks().range().high() > LONG_JOINING_WEEKS) {
        say("%s are joined for more than %s weeks: is that so?", mob.name(), LONG_JOINING_WEEKS);
      }
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
    Cultivar sown = tables.cultivar(farm.sownCultivar());
    if (sown.era() != Cultivar.Era.CURRENT || sown.highOestrogen()) {
      say("%s is to be sown, and it is not a current cultivar of the table.", sown.name());
    }
    if (sown.name().equals(FarmYaml.USUAL_SOWN)) {
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
    String margins = actions(a -> a.cropped() && isOfTables(a.cropMarginPerHa()));
    sayOf("These prices are table defaults, so put in your own: %s.", String.join(", ", prices));
    sayOf("The costs of these actions are table defaults, so get a quote: %s.", costs);
    sayOf("The crop margins of these actions are table defaults: %s.", margins);
    boolean any = !(prices.isEmpty() && costs.isEmpty() && margins.isEmpty());
    if (any && !Currencies.isOfTables(farm.currency())) {
      say(
          "Money is shown in '%s', but these table defaults are in %s and are not converted.",
          farm.currency(), Currencies.OF_TABLES);
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
