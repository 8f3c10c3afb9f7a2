package swardcase.evaluation;

import static swardcase.evaluation.PublishedRows.number;
import static swardcase.evaluation.PublishedRows.published;

import java.time.Month;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.chance.Range;
import swardcase.evaluation.PublishedCheck.Part;
import swardcase.evidence.Assumption;
import swardcase.farm.Farm;
import swardcase.farm.OtherStock;
import swardcase.feed.AfrcEnergy;
import swardcase.feed.Conceptus;
import swardcase.feed.EnergyMethod;
import swardcase.feed.EweEnergy;
import swardcase.feed.GrazingConditions;
import swardcase.feed.PastureIntake;
import swardcase.feed.ScaEnergy;
import swardcase.feed.StockDemand;
import swardcase.feed.SupplementCost;
import swardcase.tables.Tables;

/** Published rows on sheep feed beside the calculators of feed. */
public final class FeedChecks {

  private static final double AGE_YEARS = 4;
  private static final double WETHERS_AGE_YEARS = 3;

  private final AfrcEnergy afrc;
  private final ScaEnergy sca;
  private final Conceptus conceptus;
  private final PastureIntake intake;
  private final EweEnergy bySca;
  private final EweEnergy byAfrc;
  private final double dseMj;
  private final Tables tables;
  private final double drySelection;

  /** Reads the coefficients from the tables. */
  public FeedChecks(Tables tables) {
    this.tables = tables;
    afrc = new AfrcEnergy(tables);
    sca = new ScaEnergy(tables);
    conceptus = new Conceptus(tables);
    intake = new PastureIntake(tables);
    bySca = new EweEnergy(tables, EnergyMethod.SCA_1990);
    byAfrc = new EweEnergy(tables, EnergyMethod.AFRC_1993);
    dseMj = tables.parameter("feed.dse-energy").likely();
    drySelection = tables.parameter("feed.dry-selection").likely();
  }

  /** Forage energy, coefficients and single needs. */
  public List<PublishedCheck> values() {
    return published("feed-values.csv").stream()
        .map(
            row -> {
              String what =
                  row.get("what")
                      + (row.get("argument").isEmpty() ? "" : " " + row.get("argument"))
                      + (row.get("weight_kg").isEmpty() ? "" : ", " + row.get("weight_kg") + " kg")
                      + (row.get("lambs").isEmpty() ? "" : ", lambs " + row.get("lambs"));
              return PublishedCheck.ofRow(what, row, value(row), Part.of(row));
            })
        .toList();
  }

  private double value(Map<String, String> row) {
    return switch (row.get("what")) {
      case "forage energy at digestibility" -> intake.energyMjPerKgDm(number(row, "argument"));
      case "fasting heat of AFRC" -> afrc.fastingMjPerDay(number(row, "weight_kg"));
      case "grazing wether by the 1990 form, green t/ha" -> wether(row);
      case "conceptus of a kg of lamb on day" -> conceptus.needMjPerDay(number(row, "argument"), 1);
      case "ewe in milk on day" ->
          inMilk(
              number(row, "weight_kg"), (int) number(row, "argument"), (int) number(row, "lambs"));
      default -> throw new IllegalArgumentException(row.toString());
    };
  }

  private double wether(Map<String, String> row) {
    double weight = number(row, "weight_kg");
    GrazingConditions grazing = new GrazingConditions(1, number(row, "argument"), 0.02, 0.68, 10);
    return sca.maintenanceMjPerDay(weight, WETHERS_AGE_YEARS, 10)
        + sca.grazing1990MjPerDay(weight, grazing, 0.02 * weight);
  }

  private double inMilk(double weight, int day, int lambs) {
    return bySca.lactatingMjPerDay(weight, bySca.milkKgPerDay(weight, day, lambs));
  }

  /** Daily needs of ewes. */
  public List<PublishedCheck> eweRows() {
    return published("ewe-energy-rows.csv").stream().map(this::eweRow).toList();
  }

  private PublishedCheck eweRow(Map<String, String> row) {
    String litter = number(row, "litterKg") > 0 ? ", litter " + row.get("litterKg") + " kg" : "";
    String what =
        "%s, %s kg%s, by %s"
            .formatted(
                row.get("state"),
                row.get("weightKg"),
                litter,
                row.get("equation").toLowerCase(Locale.ROOT).replace('_', ' '));
    PublishedCheck check =
        new PublishedCheck(
            what,
            row.get("source"),
            row.get("publishedMjPerDay"),
            eweMjPerDay(row),
            PublishedCheck.halfOfTheLastDigit(row.get("publishedMjPerDay")),
            "half of the last digit",
            Part.of(row),
            row.get("effect"));
    return check.orEffect(check.difference() < 0 ? "need-more" : "need-less");
  }

  /** Need of the ewe in a row of ewe-energy-rows.csv, MJ ME a day. */
  public double eweMjPerDay(Map<String, String> row) {
    double weight = number(row, "weightKg");
    double energy = number(row, "energyMjPerKgDm");
    double litter = number(row, "litterKg");
    if (litter > 0) {
      EweEnergy ewe = row.get("equation").equals("SCA_GRAZING") ? bySca : byAfrc;
      double sum = 0;
      for (int day = 120; day <= 147; day++) {
        sum += ewe.pregnantMjPerDay(weight, day, litter);
      }
      return sum / 28;
    }
    return switch (row.get("equation")) {
      case "AFRC_HOUSED" -> afrc.maintenanceMjPerDay(weight, energy, AfrcEnergy.Activity.HOUSED);
      case "AFRC_LOWLAND" -> byAfrc.dryMjPerDay(weight);
      case "SCA_PLAIN" -> sca.maintenanceMjPerDay(weight, AGE_YEARS, energy);
      case "SCA_GRAZING" -> bySca.dryMjPerDay(weight);
      default -> throw new IllegalArgumentException(row.toString());
    };
  }

  /**
   * Dry sheep equivalents: our energy of ewes over that of the program's equivalent; and what stock
   * of a table's own equivalents need in the program, beside the table's own energy.
   */
  public List<PublishedCheck> dryEquivalents() {
    return published("dry-sheep-equivalents.csv").stream()
        .map(row -> row.get("mjPerDay").isEmpty() ? equivalentOfEwe(row) : energyOfStock(row))
        .toList();
  }

  private PublishedCheck equivalentOfEwe(Map<String, String> row) {
    double weight = number(row, "weightKg");
    double energy =
        switch (row.get("state")) {
          case "dry" -> bySca.dryMjPerDay(weight);
          case "lamb at foot single" -> inMilk(weight, 10, 1);
          case "lamb at foot twins" -> inMilk(weight, 10, 2);
          default -> throw new IllegalArgumentException(row.toString());
        };
    return new PublishedCheck(
        "%s, %s kg, dry sheep equivalents".formatted(row.get("state"), row.get("weightKg")),
        row.get("source"),
        row.get("dse"),
        energy / dseMj,
        0.05,
        "half of the last digit",
        Part.of(row),
        row.get("state").equals("dry") ? "equivalent" : "milk");
  }

  private PublishedCheck energyOfStock(Map<String, String> row) {
    OtherStock stock =
        new OtherStock(
            "stock",
            1,
            Assumption.ofFarm("equivalents", Range.exactly(number(row, "dse")), "DSE"),
            Optional.empty(),
            List.of(Month.values()),
            true);
    Farm farm =
        FarmCopy.of(RandomFarms.demo("current-farm"))
            .mobs(List.of())
            .otherStock(List.of(stock))
            .build();
    StockDemand demand = new StockDemand(farm, tables, EnergyMethod.SCA_1990, new double[0]);
    return new PublishedCheck(
        "%s, %s kg, MJ of %s equivalents"
            .formatted(row.get("state"), row.get("weightKg"), row.get("dse")),
        row.get("source"),
        row.get("mjPerDay"),
        demand.otherMjPerDay(0),
        0.05 * dseMj,
        "half of the last digit of the equivalents",
        Part.of(row),
        "equivalent");
  }

  /** Grain that holds a ewe on dry pasture. */
  public List<PublishedCheck> grain() {
    return published("grain-on-dry-pasture.csv").stream()
        .map(
            row ->
                new PublishedCheck(
                    "%s kg ewe, %s kg DM/ha of %s %%"
                        .formatted(
                            row.get("weightKg"),
                            row.get("kgDmPerHa"),
                            row.get("digestibilityPercent")),
                    row.get("source"),
                    row.get("grainKgPerDay"),
                    grainKgPerDay(row),
                    0.005,
                    "half of the last digit",
                    Part.FIT,
                    "intake"))
        .toList();
  }

  /**
   * Grain in a row of grain-on-dry-pasture.csv, kg as fed a day, 13 MJ/kg DM and 90 % dry matter.
   * What is eaten is better than the pasture by the selection that these rows were fitted for.
   */
  public double grainKgPerDay(Map<String, String> row) {
    double weight = number(row, "weightKg");
    double digestibility = number(row, "digestibilityPercent") / 100 + drySelection;
    double eatenKgDm =
        intake.potentialKgDmPerDay(weight)
            * intake.availability(number(row, "kgDmPerHa"))
            * intake.quality(digestibility, 0);
    double eatenMj = eatenKgDm * intake.energyMjPerKgDm(digestibility);
    return Math.max(0, bySca.dryMjPerDay(weight) - eatenMj) / (0.9 * 13);
  }

  /** What energy from a supplement costs and weighs. */
  public static List<PublishedCheck> supplements() {
    return published("supplement-cost.csv").stream()
        .map(
            row -> {
              double energy = number(row, "energy_mj");
              double ofTonne =
                  SupplementCost.energyMjPerTonne(energy, number(row, "dry_matter"), 0);
              double perMj = 100 * number(row, "price_per_tonne") / ofTonne;
              double ours =
                  switch (row.get("what")) {
                    case "cents per MJ" -> perMj;
                    case "cents per kg DM" -> perMj * energy;
                    case "g for 6.2 MJ" -> 6.2 / ofTonne * 1e6;
                    default -> throw new IllegalArgumentException(row.toString());
                  };
              String what =
                  "%s, price %s, %s MJ, dry matter %s"
                      .formatted(
                          row.get("what"),
                          row.get("price_per_tonne"),
                          row.get("energy_mj"),
                          row.get("dry_matter"));
              return PublishedCheck.ofRow(what, row, ours, Part.EQUATION);
            })
        .toList();
  }
}
