package swardcase.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import swardcase.evidence.Assumption;
import swardcase.evidence.SetBy;
import swardcase.farm.Action;
import swardcase.farm.CostLine;
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
  private static final double FEW_PLANTS = 30;

  /** Joinings are seldom longer. */
  private static final double LONG_JOINING_WEEKS = 12;

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
    String unseen = names(paddock -> paddock.plantsLookedAt() == 0);
    if (!unseen.isEmpty()) {
      say("Nobody looked at the clover of %s: what grows there is unknown, not safe.", unseen);
    }
    for (Paddock paddock : farm.paddocks()) {
      double plants = paddock.plantsLookedAt();
      if (plants > 0 && plants < FEW_PLANTS) {
        say(
            "Only %s plants were looked at in %s: fewer than %s say little.",
            Fields.plain(plants), paddock.name(), Fields.plain(FEW_PLANTS));
      }
      if (paddock.cloverShare().likely() > MUCH_CLOVER) {
        say(
            "Clover is given as more than %s %% of the green feed in %s: is that so?",
            Fields.plain(MUCH_CLOVER * 100), paddock.name());
      }
    }
    String guessed = names(paddock -> paddock.cloverShare().setBy() != SetBy.USER);
    if (!guessed.isEmpty()) {
      say("The clover share of %s is a default: estimate it in the paddock.", guessed);
    }
    String exact =
        names(p -> p.cloverShare().setBy() == SetBy.USER && p.cloverShare().range().isExact());
    if (!exact.isEmpty()) {
      say(
          "The clover share of %s is one number and is taken as exact: give clover_percent_low and"
              + " clover_percent_high if it is an estimate.",
          exact);
    }
  }

  private void mobs() {
    if (farm.mobs().isEmpty()) {
      say("The farm has no ewes: nothing is said about fertility.");
    }
    for (Mob mob : farm.mobs()) {
      if (mob.joiningWeeks().range().high() > LONG_JOINING_WEEKS) {
        say(
            "%s are joined for more than %s weeks: is that so?",
            mob.name(), Fields.plain(LONG_JOINING_WEEKS));
      }
      List<String> defaults =
          List.of(mob.pregnantPercent(), mob.scanningPercent(), mob.markingPercent()).stream()
              .filter(figure -> figure.setBy() != SetBy.USER)
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
    if (farm.mobs().isEmpty() && farm.otherStock().isEmpty()) {
      say("The farm has no stock at all: extra feed is worth nothing to it.");
    }
  }

  private void money(Defaults defaults) {
    List<String> money =
        defaults.taken().stream()
            .filter(row -> row.unit().contains(Currencies.OF_TABLES) && row.range().high() > 0)
            .map(Assumption::name)
            .toList();
    if (!money.isEmpty()) {
      say("These prices are defaults, so put in your own: %s.", String.join(", ", money));
    }
    if (Currencies.isOfTables(farm.currency())) {
      return;
    }
    List<String> foreign = new ArrayList<>(money);
    if (farm.supplement().pricePerTonne().setBy() != SetBy.USER) {
      foreign.add(farm.supplement().pricePerTonne().name());
    }
    for (Action action : farm.actions()) {
      long lines = action.costs().stream().filter(Notices::isOfTables).count();
      if (lines > 0) {
        foreign.add("costs of '" + action.name() + "'");
      }
    }
    if (!foreign.isEmpty()) {
      say(
          "Money is shown in '%s', but these are table defaults in %s, not converted: get a quote."
              + " They are: %s.",
          farm.currency(), Currencies.OF_TABLES, String.join(", ", foreign));
    }
  }

  private static boolean isOfTables(CostLine line) {
    return line.costPerHa().setBy() != SetBy.USER && line.costPerHa().range().high() > 0;
  }

  private String names(Predicate<Paddock> which) {
    return farm.paddocks().stream()
        .filter(which)
        .map(Paddock::name)
        .collect(Collectors.joining(", "));
  }

  private void say(String sentence, Object... arguments) {
    notices.add(String.format(Locale.ROOT, sentence, arguments));
  }
}
