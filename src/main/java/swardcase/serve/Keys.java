package swardcase.serve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import swardcase.evidence.Assumption;
import swardcase.farm.Farm;
import swardcase.farm.Finance;
import swardcase.farm.Mob;
import swardcase.farm.OtherStock;
import swardcase.farm.Prices;
import swardcase.page.EditViews.Key;
import swardcase.reading.YamlEdit;
import swardcase.wording.KeyWords;

/** The keys of {@code farm.yaml} that people change. */
final class Keys {

  private final YamlEdit file;
  private final List<Key> all = new ArrayList<>();

  private Keys(Farm farm, YamlEdit file) {
    this.file = file;
    for (Mob mob : farm.mobs()) {
      for (String key : List.of("ewes", "ages", "joining_start")) {
        add("mobs", mob.name(), key, null);
      }
      add("mobs", mob.name(), "joining_weeks", mob.joiningWeeks());
      add("mobs", mob.name(), "pregnant_percent", mob.pregnantPercent());
      add("mobs", mob.name(), "scanning_percent", mob.scanningPercent());
      add("mobs", mob.name(), "marking_percent", mob.markingPercent());
    }
    for (OtherStock stock : farm.otherStock()) {
      add("other_stock", stock.name(), "head", null);
    }
    add("price_date", null);
    prices(farm).forEach(this::add);
    Finance finance = farm.finance();
    add("finance.budget_per_year", null);
    add("finance.discount_rate_percent", finance.discountRate());
    add("finance.horizon_years", null);
    add("finance.most_out_of_grazing_percent", finance.mostOutOfGrazing());
    add("finance.risk_tolerance", finance.riskTolerance());
    add("sow", null);
  }

  /** The keys of a farm as its file has them. */
  static List<Key> of(Farm farm, String yaml) {
    return List.copyOf(new Keys(farm, new YamlEdit(yaml)).all);
  }

  /** The prices of a farm by their keys. */
  static Map<String, Assumption> prices(Farm farm) {
    Prices prices = farm.prices();
    Map<String, Assumption> all = new LinkedHashMap<>();
    all.put("supplement.price_per_tonne", farm.supplement().pricePerTonne());
    all.put("prices.net_value_per_lamb", prices.netValuePerLamb());
    all.put("prices.replacement_ewe", prices.replacementEwe());
    all.put("prices.gross_margin_per_ewe", prices.grossMarginPerEwe());
    all.put("prices.cost_per_dry_ewe", prices.costPerDryEwe());
    all.put("prices.spare_feed_per_tonne_dm", prices.spareFeedPerTonneDm());
    return all;
  }

  /** A key with the number it stands for now; null for what is no uncertain number. */
  private void add(String key, Assumption now) {
    add(List.of(key.split("\\.")), new KeyWords("key." + key, ""), now);
  }

  private void add(String list, String name, String key, Assumption now) {
    add(List.of(list, name, key), new KeyWords("key." + list + "." + key, name), now);
  }

  private void add(List<String> path, KeyWords words, Assumption now) {
    String typed = file.find(path).orElse("");
    String id = "key-" + (all.size() + 1);
    all.add(new Key(id, words, typed, Optional.ofNullable(now), path));
  }
}
