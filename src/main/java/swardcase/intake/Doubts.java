package swardcase.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import swardcase.check.NumberText;
import swardcase.evidence.Assumption;
import swardcase.evidence.SetBy;
import swardcase.farm.Farm;
import swardcase.farm.FlockRecord;
import swardcase.farm.Mob;
import swardcase.farm.OtherStock;
import swardcase.farm.Paddock;
import swardcase.farm.SeasonGrowth;
import swardcase.sward.Composition;
import swardcase.sward.LeafAgreement;
import swardcase.sward.LeafAgreement.Side;
import swardcase.sward.StandGate;
import swardcase.tables.Cultivar;
import swardcase.tables.Tables;

/**
 * Looks for what is allowed but odd in a farm, and says what follows from it. The limits are our
 * own judgement (inferred): they decide what is said, never what is computed.
 */
final class Doubts {

  /** Clover is seldom more of a sward than this. */
  private static final double MUCH_CLOVER = 0.9;

  /** A share below this is probably a fraction written where per cent is meant. */
  private static final double HARDLY_ANY = 0.01;

  /** Fewer plants than this say little about a paddock. */
  private static final int FEW_PLANTS = 30;

  /** With fewer plants than this for each hectare, a patch is easily walked past. */
  private static final double FEW_PLANTS_PER_HA = 0.5;

  /** Joinings are seldom longer. */
  private static final int LONG_JOINING_WEEKS = 12;

  /** Fewer lambs for 100 ewes are probably lambs for each ewe. */
  private static final double HARDLY_LAMBS = 4;

  /** A flock marks fewer lambs for a ewe in lamb. */
  private static final double MANY_LAMBS = 2.5;

  private static final double MONTHS = 12;

  private final Farm farm;
  private final Tables tables;
  private final List<Doubt> doubts = new ArrayList<>();

  private Doubts(Farm farm, Tables tables) {
    this.farm = farm;
    this.tables = tables;
  }

  /** The doubts in a fixed order: paddocks, stock, records, per cent, sowing. */
  static List<Doubt> of(Farm farm, Tables tables) {
    Doubts all = new Doubts(farm, tables);
    farm.paddocks().forEach(all::paddock);
    all.stock();
    farm.mobs().forEach(all::joining);
    farm.mobs().forEach(all::grazing);
    all.records();
    all.stocking();
    all.fractions();
    all.sowing();
    return List.copyOf(all.doubts);
  }

  private void paddock(Paddock paddock) {
    double plants = paddock.plantsLookedAt();
    if (plants == 0 && !paddock.identifications().isEmpty()) {
      doubt(
          said("All names given for %s have 0 plants.", paddock.name()),
          "What does grow there is not said, so that its clover counts as unknown: add the plants"
              + " that were found, named or not.");
    } else if (plants > 0 && plants < FEW_PLANTS) {
      doubt(
          said(
              Math.round(plants) == 1
                  ? "Only %s plant was looked at in %s."
                  : "Only %s plants were looked at in %s.",
              Math.round(plants),
              paddock.name()),
          said(
              "Fewer than %s say little: the shares of its clover, and all that rests on them, have"
                  + " wide ranges.",
              FEW_PLANTS));
    } else if (plants > 0 && plants <= FEW_PLANTS_PER_HA * paddock.areaHa()) {
      doubt(
          said(
              "%s plants were looked at on the %s ha of %s.",
              Math.round(plants), NumberText.plain(paddock.areaHa()), paddock.name()),
          "A patch of another cultivar is easily walked past, and the ranges count only chance, not"
              + " patches nobody saw.");
    }
    leafTest(paddock);
    sign(paddock, "ph_cacl2", paddock.signs().phCaCl2(), 3.8, 8.5);
    sign(paddock, "colwell_p_mg_per_kg", paddock.signs().colwellPMgPerKg(), 2, 200);
    sign(paddock, "olsen_p_mg_per_kg", paddock.signs().olsenPMgPerKg(), 1, 100);
    sign(paddock, "nodules_per_plant", paddock.signs().nodulesPerPlant(), 0, 200);
    sign(paddock, "seedlings_per_m2", paddock.seedlingsPerM2(), 10, 20_000);
    double clover = paddock.cloverShare().likely();
    String given =
        said("Clover is given as %s %% of the green feed in %s.", percent(clover), paddock.name());
    if (clover > MUCH_CLOVER) {
      doubt(
          given,
          "Growth lost and oestrogen rise with it: if there is half as much, both are about half.");
    } else if (clover > 0 && clover < HARDLY_ANY) {
      doubt(
          given,
          said(
              "The column is in per cent: if %s %% is meant, all that rests on the clover is a"
                  + " hundred times too small.",
              percent(100 * clover)));
    }
  }

  private void sign(Paddock of, String column, OptionalDouble value, double least, double most) {
    if (value.isPresent() && (value.getAsDouble() < least || value.getAsDouble() > most)) {
      doubt(
          said(
              "%s of %s is given as %s.", column, of.name(), NumberText.plain(value.getAsDouble())),
          said(
              "It is hardly ever below %s or above %s, and decides whether a sowing is sure: is the"
                  + " unit right?",
              NumberText.plain(least), NumberText.plain(most)));
    }
  }

  /** Names and leaf test that cannot both be right. */
  private void leafTest(Paddock paddock) {
    double designEffect = tables.parameter("stand.design-effect").likely();
    Optional<LeafAgreement> test =
        LeafAgreement.of(paddock, Composition.of(paddock, tables, designEffect), tables);
    if (test.isEmpty() || test.get().side() == Side.WITHIN) {
      return;
    }
    boolean below = test.get().side() == Side.BELOW;
    doubt(
        said(
            "The leaf test of %s, %s %%, is far %s the %s to %s %% that the cultivars named there"
                + " can have.",
            paddock.name(),
            NumberText.plain(test.get().testedPercentOfLeaf().likely()),
            below ? "below" : "above",
            hundredths(test.get().namesPercentOfLeaf().low()),
            hundredths(test.get().namesPercentOfLeaf().high())),
        (below
                ? "The test counts and not the names, so that a wrong test hides what is there: "
                : "The test counts, and oestrogenic plants may have been missed or misnamed: ")
            + "is the result in per cent of leaf dry matter? Have the names and a second sample"
            + " looked at before money is spent.");
  }

  private void stock() {
    if (farm.mobs().isEmpty() && farm.otherStock().isEmpty()) {
      doubt("The farm has no stock at all.", "Extra feed is worth nothing to it.");
    } else if (farm.mobs().isEmpty()) {
      doubt("The farm has no ewes.", "Nothing is said about fertility.");
    }
  }

  private void joining(Mob mob) {
    if (mob.joiningWeeks().range().high() > LONG_JOINING_WEEKS) {
      doubt(
          said(
              "%s are joined for up to %s weeks.",
              mob.name(), NumberText.plain(mob.joiningWeeks().range().high())),
          said(
              "More than %s weeks gives ewes many chances to conceive, so that less is seen of the"
                  + " effect of oestrogen, and their lambs come over as many weeks.",
              LONG_JOINING_WEEKS));
    }
  }

  private void grazing(Mob mob) {
    List<Paddock> grazed = farm.paddocks().stream().filter(p -> p.isGrazedBy(mob)).toList();
    if (grazed.isEmpty()) {
      doubt(
          said("No paddock is grazed by %s.", mob.name()),
          "They count as meeting no oestrogen on this farm: if they graze here, say where in the"
              + " column use.");
    } else if (grazed.size() == 1 && farm.paddocks().size() > 1) {
      doubt(
          said("%s graze a single paddock, %s.", mob.name(), grazed.get(0).name()),
          "Its clover alone decides what oestrogen they meet, all year: if they go elsewhere too,"
              + " write ewes or their name in the column use of those paddocks.");
    }
  }

  /** Records that do not fit each other or the ewes of today. */
  private void records() {
    for (FlockRecord record : farm.records()) {
      int inLamb = record.inLamb().orElse(record.ewesJoined());
      if (record.inLamb().isPresent() && inLamb == 0) {
        doubt(
            said("No ewe of %s is recorded in lamb in %s.", record.mob(), record.year()),
            "If they were not scanned, leave the cell empty: 0 counts as scanned and dry.");
      }
      if (record.lambsMarked().orElse(0) > MANY_LAMBS * inLamb) {
        doubt(
            said(
                "%s lambs are recorded as marked from %s ewes of %s in %s.",
                record.lambsMarked().getAsInt(), inLamb, record.mob(), record.year()),
            "That is more than any flock rears: is the mob, the year or a figure another?");
      }
    }
    List<Mob> aged = farm.mobs().stream().filter(mob -> mob.agesSetBy() == SetBy.USER).toList();
    OptionalInt last = farm.records().stream().mapToInt(FlockRecord::year).max();
    if (last.isEmpty() || aged.size() < farm.mobs().size()) {
      return;
    }
    List<FlockRecord> ofLast =
        farm.records().stream().filter(record -> record.year() == last.getAsInt()).toList();
    int joined = ofLast.stream().mapToInt(FlockRecord::ewesJoined).sum();
    double before =
        aged.stream().mapToDouble(mob -> mob.ewes() * (1 - mob.ageShares().get(0))).sum();
    if (ofLast.size() == farm.mobs().size() && Math.rint(before) > joined) {
      doubt(
          said(
              "%s of today's ewes have been joined before, but only %s are recorded as joined in"
                  + " %s.",
              Math.round(before), joined, last.getAsInt()),
          "Unless ewes were bought, ages or records are wrong, and with them how many ewes carry"
              + " lasting damage.");
    }
  }

  /** Fractions written where per cent is meant, in the farm's own numbers. */
  private void fractions() {
    fraction("discount_rate_percent", farm.finance().discountRate());
    fraction("most_out_of_grazing_percent", farm.finance().mostOutOfGrazing());
    fraction("condition_deficit_percent", farm.management().conditionDeficit());
    fraction("most_ewe_increase_percent", farm.management().mostEweIncrease());
    fraction("waste_percent", farm.supplement().wasteFraction());
    farm.finance().loan().ifPresent(loan -> fraction("rate_percent of the loan", loan.rate()));
    for (Mob mob : farm.mobs()) {
      double marked = mob.markingPercent().likely();
      if (mob.markingPercent().setBy() == SetBy.USER && marked > 0 && marked < HARDLY_LAMBS) {
        doubt(
            said("marking_percent of %s is given as %s.", mob.name(), NumberText.plain(marked)),
            said(
                "It counts lambs for 100 ewes: if %s is meant, almost all lambs are left out.",
                percent(marked)));
      }
    }
  }

  private void fraction(String key, Assumption given) {
    if (given.setBy() == SetBy.USER) {
      fraction(key, given.likely());
    }
  }

  private void fraction(String key, double given) {
    if (given > 0 && given < HARDLY_ANY) {
      doubt(
          said("%s is given as %s.", key, percent(given)),
          said("It is in per cent: if %s %% is meant, write %1$s.", percent(100 * given)));
    }
  }

  /** A ewe counts as one dry sheep, which is less than she needs: the need is at least this. */
  private void stocking() {
    double dse = farm.ewesJoined();
    for (OtherStock stock : farm.otherStock()) {
      dse += stock.head() * stock.dsePerHead().likely() * stock.months().size() / MONTHS;
    }
    double needMjPerHa = dse * tables.parameter("feed.dse-energy").likely() * 365 / farm.areaHa();
    double grownMjPerHa = grownMjPerHa();
    if (needMjPerHa > grownMjPerHa) {
      doubt(
          said(
              "The stock are at least %s dry sheep equivalents a hectare, and all the pasture that"
                  + " grows holds the energy for %s.",
              rounded(dse / farm.areaHa()),
              rounded(dse / farm.areaHa() * grownMjPerHa / needMjPerHa)),
          "The rest must be bought every year, so that supplement decides the whole answer: check the"
              + " numbers of stock, the areas and the growth.");
    }
  }

  /** Energy that grows on a mean hectare in a year, as if all of it were eaten green. */
  private double grownMjPerHa() {
    double index = 0;
    for (Paddock paddock : farm.paddocks()) {
      index += paddock.areaHa() * paddock.growthIndex().likely() / farm.areaHa();
    }
    double slope = 100 * tables.parameter("feed.forage-energy-slope").likely();
    double intercept = tables.parameter("feed.forage-energy-intercept").likely();
    double sum = 0;
    for (SeasonGrowth season : farm.feedYear().seasons()) {
      double[] grown = farm.feedYear().growthKgDmPerHa(season);
      for (int p = 0; p < grown.length; p++) {
        double digestibility = farm.feedYear().quality().get(p / 2).greenDigestibility();
        sum += season.chance().likely() * grown[p] * (slope * digestibility + intercept);
      }
    }
    return index * sum;
  }

  private void sowing() {
    Cultivar sown = tables.cultivar(farm.sownCultivar());
    if (!sown.isCurrent()) {
      doubt(
          said("%s is to be sown, and it is not a current cultivar of the table.", sown.name()),
          "A resown paddock may then give as little winter growth, or as much oestrogen, as before.");
    } else if (sown.highOestrogen() || sown.isOutdated()) {
      doubt(
          said(
              "%s is to be sown, and the table has it as %s.",
              sown.name(), sown.highOestrogen() ? "high in formononetin" : "outdated"),
          "A resown paddock may then be no better than before.");
    }
    String wet =
        farm.paddocks().stream()
            .filter(paddock -> StandGate.isWetGroundUnknown(paddock, sown))
            .map(Paddock::name)
            .collect(Collectors.joining(", "));
    if (!wet.isEmpty() && !sown.name().equals(FarmReader.USUAL_SOWN)) {
      doubt(
          said(
              "%s is to be sown, and is not known to stand the wet ground of %s.",
              sown.name(), wet),
          "No figure counts that: before it is sown there, ask for a cultivar of subspecies"
              + " yanninicum, or write in the column wet_ground what is known.");
    }
  }

  private void doubt(String what, String consequence) {
    doubts.add(new Doubt(what, consequence));
  }

  private static String percent(double fraction) {
    return NumberText.plain(Math.rint(fraction * 1e4) / 100);
  }

  private static String hundredths(double value) {
    return NumberText.plain(Math.rint(value * 100) / 100);
  }

  private static String rounded(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  private static String said(String sentence, Object... arguments) {
    return String.format(Locale.ROOT, sentence, arguments);
  }
}
