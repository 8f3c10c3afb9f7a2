package swardcase.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/**
 * Invented farm folders drawn from a seed, full of what the reader allows but nobody expects: names
 * counted as none, nobody walked, no ewes or one, nothing grown, nothing paid, every number at an
 * end of what it may be. Some are refused by the reader.
 */
final class OddFarms {

  private static final Tables TABLES = TablesLoader.standard().load();
  private static final String PADDOCK_HEAD =
      "paddock,area_ha,clover_percent_low,clover_percent,clover_percent_high,growth_index,"
          + "waterlogged,arable,formononetin_percent,formononetin_standard_error,use\n";

  private final SplittableRandom random;
  private final List<String> mobs = new ArrayList<>();

  private OddFarms(SplittableRandom random) {
    this.random = random;
  }

  /** Writes the next farm into a folder. */
  static Path write(Path folder, SplittableRandom random) throws IOException {
    OddFarms odd = new OddFarms(random);
    int paddocks = 1 + random.nextInt(4);
    Files.createDirectories(folder);
    Files.writeString(folder.resolve("farm.yaml"), odd.yaml());
    Files.writeString(folder.resolve("paddocks.csv"), odd.paddocks(paddocks));
    Files.writeString(folder.resolve("plants.csv"), odd.plants(paddocks));
    return folder;
  }

  private String yaml() {
    StringBuilder yaml = new StringBuilder("name: Odd Farm\ncurrency: A$\n");
    yaml.append(maybe("climate: cool\n")).append(growth());
    yaml.append(maybe("season_chances_percent: {poor: 0, average: 100, good: 0}\n"));
    yaml.append(maybe("season_growth_percent: {poor: 0, good: 300}\n"));
    int count = random.nextInt(4);
    yaml.append(count == 0 ? "" : "mobs:\n");
    for (int g = 0; g < count; g++) {
      mobs.add("mob " + g);
      yaml.append(mob(g));
    }
    yaml.append(
        maybe(
            "other_stock:\n  - {name: wethers, head: %s, dse_per_head: %s}\n"
                .formatted(one("0", "1", "300"), one("0", "1.5", "40"))));
    yaml.append(maybe("supplement: " + supplement() + "\n"));
    yaml.append(
        maybe(
            """
            prices:
              net_value_per_lamb: %s
              cost_per_dry_ewe: %s
              replacement_ewe: %s
              spare_feed_per_tonne_dm: %s
              gross_margin_per_ewe: %s
              lamb_supplement_correlation: %s
            """
                .formatted(
                    one("0", "[0, 0, 100]", "1000"),
                    one("0", "50"),
                    one("0", "[0, 180, 300]"),
                    one("0", "[0, 50, 80]"),
                    one("0", "[0, 70, 900]"),
                    one("-0.95", "0", "0.95"))));
    yaml.append(
        maybe(
            """
            finance:
              discount_rate_percent: %s
              horizon_years: %s
              budget_per_year: %s
              most_out_of_grazing_percent: %s
              end_value_per_ha: %s
            """
                .formatted(
                    one("0", "[0, 7, 100]", "100"),
                    one("1", "2", "10"),
                    one("0", "1", "5000", "1000000"),
                    one("0", "[0, 20, 100]", "100"),
                    one("0", "[0, 0, 500]"))));
    yaml.append(
        maybe(
            """
            management:
              condition_deficit_percent: %s
              most_ewe_increase_percent: %s
              weaning_weeks: %s
              loss_limit: %s
            """
                .formatted(
                    one("0", "50"), one("0", "300"), one("4", "30"), one("0", "[0, 0, 100000]"))));
    yaml.append(maybe("extra_feed_use: run more ewes\n"));
    yaml.append("sow: ").append(cultivar()).append('\n');
    yaml.append(
        maybe(
            """
            actions:
              spray-fallow: {establishment_chance_percent: %s, target_clover_percent: %s}
              crop-1: {considered: no}
              crop-2: {crop_margin_per_ha: [0, 0, 900]}
            """
                .formatted(one("0", "1", "100"), one("0", "100"))));
    return yaml.toString();
  }

  private String growth() {
    return random.nextInt(3) > 0
        ? "growth: " + one(List.copyOf(TABLES.districts().keySet())) + "\n"
        : """
          growth:
            winter_months: [%s]
            pasture_quality: %s
            kg_dm_per_ha_per_day:
              average: %s
          """
            .formatted(
                one("June, July, August", "January", "May, June, July, August, September"),
                one(List.copyOf(TABLES.pastureQuality().keySet())),
                one(
                    "[0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0]",
                    "[0, 0, 0, 1, 11, 0, 0, 0, 250, 250, 15, 0]",
                    "[250, 250, 250, 250, 250, 250, 250, 250, 250, 250, 250, 250]"));
  }

  private String mob(int g) {
    String ewes = one("1", "40", "900");
    String ages = one("", ", ages: [%s]", ", ages: [0, 0, %s]", ", ages: [%s, 0]").formatted(ewes);
    String figures =
        ", pregnant_percent: %s, scanning_percent: %s, marking_percent: %s, figures: %s"
            .formatted(
                one("1", "[1, 60, 90]", "100"),
                one("100", "[90, 120, 400]"),
                one("0", "[0, 80, 100]"),
                one("unaffected", "observed on these paddocks"));
    return "  - {name: mob %d, ewes: %s, liveweight_kg: %s, joining_start: %s, joining_weeks: %s%s%s}\n"
        .formatted(
            g,
            ewes,
            one("20", "55", "150"),
            one("1 January", "29 February", "30 June", "31 December"),
            one("1", "[1, 5, 30]", "30"),
            ages,
            maybe(figures));
  }

  private String supplement() {
    return one(
        "wheat",
        "{name: oats, price_per_tonne: 0}",
        "{name: silage, price_per_tonne: [0, 90, 900], energy_mj_per_kg_dm: [3, 9, 20]}",
        "{name: hay of ours, price_per_tonne: 90, energy_mj_per_kg_dm: 3, waste_percent: 80}");
  }

  private String paddocks(int count) {
    StringBuilder rows = new StringBuilder(PADDOCK_HEAD);
    List<String> uses = new ArrayList<>(mobs);
    uses.addAll(List.of("", "ewes", "other stock"));
    for (int i = 0; i < count; i++) {
      rows.append(
          "P%d,%s,%s,%s,%s,%s,%s,%s\n"
              .formatted(
                  i,
                  one("0.1", "20", "3000"),
                  one(",,", ",0,", "0,0,0", "0,1,100", "100,100,100", "30,45,60"),
                  one("", "0", "1", "5"),
                  one("", "yes", "no"),
                  one("", "yes", "no"),
                  one(",", ",", "0,", "0,0", "0.1,0.02", "5,5"),
                  one(uses)));
    }
    return rows.toString();
  }

  private String plants(int paddocks) {
    StringBuilder rows = new StringBuilder("paddock,cultivar,plants,percent,plants_looked_at\n");
    for (int i = 0; i < paddocks; i++) {
      boolean percent = random.nextInt(4) == 0;
      List<String> seen = new ArrayList<>();
      for (int kind = random.nextInt(5); kind > 0; kind--) {
        String name = one("", "", "", cultivar() + " or ") + cultivar();
        if (!seen.contains(name)) {
          seen.add(name);
          rows.append("P" + i + "," + name + ",");
          rows.append(
              percent
                  ? "," + one("0", "0", "2", "20") + ",50\n"
                  : one("0", "0", "1", "40", "100000") + ",,\n");
        }
      }
    }
    return rows.toString();
  }

  /** Any name of the table, the two that stand for plants without a name more often. */
  private String cultivar() {
    return random.nextInt(3) == 0
        ? one("unidentified", "unidentified old", "Dinninup")
        : one(List.copyOf(TABLES.cultivars().keySet()));
  }

  private String maybe(String text) {
    return random.nextBoolean() ? text : "";
  }

  private String one(String... of) {
    return of[random.nextInt(of.length)];
  }

  private String one(List<String> of) {
    return of.get(random.nextInt(of.size()));
  }
}
