package swardcase.serve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swardcase.evidence.Assumption;
import swardcase.farm.Farm;
import swardcase.farm.Finance;
import swardcase.farm.Mob;
import swardcase.farm.OtherStock;
import swardcase.farm.Prices;
import swardcase.page.EditViews.Key;
import swardcase.reading.YamlEdit;

/** The keys of {@code farm.yaml} that people change. */
final class Keys {

  /** A key with its way from the top of the file. */
  record Placed(Key key, List<String> path) {}

  private final YamlEdit file;
  private final List<Placed> all = new ArrayList<>();

  private Keys(Farm farm, YamlEdit file) {
    this.file = file;
    farm.mobs().forEach(this::mob);
    for (OtherStock stock : farm.otherStock()) {
      add("other_stock", stock.name(), "head", Optional.empty());
    }
    Prices prices = farm.prices();
    add("price_date", Optional.empty());
    add("supplement.price_per_tonne", Optional.of(farm.supplement().pricePerTonne()));
    add("prices.net_value_per_lamb", Optional.of(prices.netValuePerLamb()));
    add("prices.replacement_ewe", Optional.of(prices.replacementEwe()));
    add("prices.gross_margin_per_ewe", Optional.of(prices.grossMarginPerEwe()));
    add("prices.cost_per_dry_ewe", Optional.of(prices.costPerDryEwe()));
    add("prices.spare_feed_per_tonne_dm", Optional.of(prices.spareFeedPerTonneDm()));
    Finance finance = farm.finance();
    add("finance.budget_per_year", Optional.empty());
    add("finance.discount_rate_percent", Optional.of(finance.discountRate()));
    add("finance.horizon_years", Optional.empty());
    add("finance.most_out_of_grazing_percent", Optional.of(finance.mostOutOfGrazing()));
    add("finance.risk_tolerance", Optional.of(finance.riskTolerance()));
    add("sow", Optional.empty());
  }

  /** The keys of a farm as its file has them. */
  static List<Placed> of(Farm farm, String yaml) {
    return List.copyOf(new Keys(farm, new YamlEdit(yaml)).all);
  }

  private void mob(Mob mob) {
    add("mobs", mob.name(), "ewes", Optional.empty());
    add("mobs", mob.name(), "ages", Optional.empty());
    add("mobs", mob.name(), "joining_start", Optional.empty());
    add("mobs", mob.name(), "joining_weeks", Optional.of(mob.joiningWeeks()));
    add("mobs", mob.name(), "pregnant_percent", Optional.of(mob.pregnantPercent()));
    add("mobs", mob.name(), "scanning_percent", Optional.of(mob.scanningPercent()));
    add("mobs", mob.name(), "marking_percent", Optional.of(mob.markingPercent()));
  }

  private void add(String key, Optional<Assumption> now) {
    add(List.of(key.split("\\.")), "key." + key, "", now);
  }

  private void add(String list, String name, String key, Optional<Assumption> now) {
    add(List.of(list, name, key), "key." + list + "." + key, name, now);
  }

  private void add(List<String> path, String words, String of, Optional<Assumption> now) {
    String id = "key-" + (all.size() + 1);
    all.add(new Placed(new Key(id, words, of, file.find(path).orElse(""), now), path));
  }

  /** What was typed as YAML: several numbers become a list, and odd signs are put in quotes. */
  static String yaml(String typed) {
    String text = typed.strip().replaceAll("\\R", " ");
    if (text.matches("[\\d.+-]+(\\s*,\\s*[\\d.+-]+)+")) {
      return "[" + text + "]";
    }
    boolean plain = text.matches("\\[[\\d.,+ -]*]|[\\p{L}\\p{N}][\\p{L}\\p{N} .%+-]*|");
    return plain ? text : "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }
}
