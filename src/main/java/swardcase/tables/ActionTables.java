package swardcase.tables;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.farm.Action;
import swardcase.farm.ActionKind;
import swardcase.farm.ActionNumber;
import swardcase.farm.CostLine;
import swardcase.reading.Faults;
import swardcase.reading.Fields;
import swardcase.reading.Node.Spot;

/** Reads {@code actions.csv}, {@code action-values.csv} and {@code action-costs.csv}. */
final class ActionTables {

  private static final Map<String, ActionKind> KINDS =
      Fields.words(ActionKind.values(), ActionKind::label);
  private static final Map<String, ActionNumber> NUMBERS =
      Fields.words(ActionNumber.values(), ActionNumber::label);
  private static final Map<String, CostLine.Phase> PHASES =
      Fields.words(CostLine.Phase.values(), CostLine.Phase::label);

  static {
    KINDS.remove(ActionKind.KEEP_OFF.label());
    NUMBERS.remove(ActionNumber.CLOVER_SHARE.label());
  }

  private final Faults faults;
  private final Map<String, Map<ActionNumber, Assumption>> values = new HashMap<>();
  private final Map<ActionNumber, String> doubts = new EnumMap<>(ActionNumber.class);
  private final Map<String, List<CostLine>> costs = new HashMap<>();

  private ActionTables(Faults faults) {
    this.faults = faults;
  }

  static List<Action> read(
      List<TableRow> actions, List<TableRow> values, List<TableRow> costs, Faults faults) {
    ActionTables tables = new ActionTables(faults);
    List<String> keys = actions.stream().map(row -> row.text("key")).toList();
    values.forEach(row -> row.make(() -> tables.addValue(row, keys)));
    costs.forEach(row -> row.make(() -> tables.addCost(row, keys)));
    List<Action> read = new ArrayList<>();
    actions.forEach(row -> row.make(() -> tables.action(row)).ifPresent(read::add));
    long keeps = read.stream().filter(action -> action.kind() == ActionKind.KEEP).count();
    if (faults.count() == 0 && keeps != 1) {
      Spot whole = new Spot(TableFile.ACTIONS.fileName(), 0);
      faults.add(whole, "kind", "must be keep for exactly one action", Long.toString(keeps));
    }
    return List.copyOf(read);
  }

  private Assumption addValue(TableRow row, List<String> keys) {
    String key = action(row, keys);
    row.has("note");
    ActionNumber number = row.choice("value", NUMBERS);
    String unit = row.text("unit");
    if (number == null) {
      return null;
    }
    if (number != ActionNumber.CROP_MARGIN && !unit.equals(number.unit())) {
      row.fault("unit", "must be " + number.unit() + " for " + number.label());
    }
    String doubt = row.findText("doubt").orElse(number.label());
    doubts.putIfAbsent(number, doubt);
    String name = number.label() + " of " + key;
    Assumption value = row.number(name, unit, "%", number.least(), number.most(), "");
    return values
        .computeIfAbsent(key, k -> new EnumMap<>(ActionNumber.class))
        .merge(number, value.withDoubt(doubt), (before, after) -> after);
  }

  private boolean addCost(TableRow row, List<String> keys) {
    String key = action(row, keys);
    String name = row.text("name");
    String currency = row.text("currency");
    Assumption cost =
        row.number(name + " for " + key, currency + "/ha", "%_per_ha", 0, 100_000, "")
            .withDoubt(row.findText("doubt").orElse(CostLine.doubt(name)));
    List.of("date", "note").forEach(row::has);
    CostLine line = new CostLine(name, row.choice("phase", PHASES), row.yes("own_labour"), cost);
    return costs.computeIfAbsent(key, k -> new ArrayList<>()).add(line);
  }

  private static String action(TableRow row, List<String> keys) {
    String key = row.text("action");
    if (!key.isEmpty() && !keys.contains(key)) {
      row.fault("action", "must be a key of actions.csv", keys);
    }
    return key;
  }

  private Action action(TableRow row) {
    String key = row.text("key");
    String name = row.text("name");
    ActionKind kind = row.choice("kind", KINDS);
    boolean arable = row.yes("needs_arable");
    int years = row.whole("run_down_years", 0, 5);
    boolean cropped = row.yes("cropped");
    row.has("note");
    row.evidenceOf("months_ungrazed", "evidence");
    row.source("source", Evidence.INFERRED);
    if (kind == null) {
      return null;
    }
    if (years > 0 && kind != ActionKind.RESOW && kind != ActionKind.CROP) {
      row.fault("run_down_years", "must be 0 unless the kind is resow or crop");
    }
    if (cropped && years == 0) {
      row.fault("cropped", "must be no where there is no run-down year");
    }
    double months = kind.seeds() ? row.number("months_ungrazed", 0, 12) : 0;
    Map<ActionNumber, Assumption> numbers = new EnumMap<>(ActionNumber.class);
    for (ActionNumber number : NUMBERS.values()) {
      numbers.put(number, number(row, key, number, number.applies(kind, years > 0, cropped)));
    }
    List<CostLine> lines = costs.getOrDefault(key, List.of());
    return new Action(
        key, name, kind, arable, years, cropped, months, numbers, lines, Optional.empty());
  }

  /** The number from the table where it applies, its neutral value where it does not. */
  private Assumption number(TableRow row, String key, ActionNumber number, boolean applies) {
    Assumption found = values.getOrDefault(key, Map.of()).get(number);
    if (found != null && !applies) {
      row.fault("key", number.label() + " must not be given, since it does not apply to this");
    }
    // A row that is there but at fault must not also count as missing.
    if (found == null && applies && !number.isOptional() && faults.count() == 0) {
      row.fault("key", "must have a row for " + number.label() + " in action-values.csv");
    }
    return found != null
        ? found
        : new Assumption(
            number.label() + " of " + key,
            Range.exactly(number.neutral()),
            number.unit(),
            Evidence.INFERRED,
            "",
            SetBy.DEFAULT,
            doubts.getOrDefault(number, number.label()));
  }
}
