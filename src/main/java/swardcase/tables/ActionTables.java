package swardcase.tables;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import swardcase.chance.Range;
import swardcase.check.Fault;
import swardcase.evidence.Assumption;
import swardcase.evidence.Evidence;
import swardcase.evidence.SetBy;
import swardcase.farm.Action;
import swardcase.farm.ActionKind;
import swardcase.farm.CostLine;

/** Reads {@code actions.csv}, {@code action-values.csv} and {@code action-costs.csv}. */
final class ActionTables {

  private static final Map<String, ActionKind> KINDS =
      Arrays.stream(ActionKind.values())
          .filter(kind -> kind != ActionKind.KEEP_OFF)
          .collect(Collectors.toUnmodifiableMap(ActionKind::label, Function.identity()));

  private static final Map<String, CostLine.Phase> PHASES =
      Arrays.stream(CostLine.Phase.values())
          .collect(Collectors.toUnmodifiableMap(CostLine.Phase::label, Function.identity()));

  private final List<Fault> faults;
  private final Map<String, Map<ActionValue, Assumption>> values = new HashMap<>();
  private final Map<ActionValue, String> doubts = new EnumMap<>(ActionValue.class);
  private final Map<String, List<CostLine>> costs = new HashMap<>();

  private ActionTables(List<Fault> faults) {
    this.faults = faults;
  }

  static List<Action> read(
      List<TableRow> actions, List<TableRow> values, List<TableRow> costs, List<Fault> faults) {
    ActionTables tables = new ActionTables(faults);
    List<String> keys = actions.stream().map(row -> row.cells().text("key")).toList();
    values.forEach(row -> tables.addValue(row, keys));
    costs.forEach(row -> tables.addCost(row, keys));
    List<Action> read = new ArrayList<>();
    actions.forEach(row -> tables.action(row).ifPresent(read::add));
    long keeps = read.stream().filter(action -> action.kind() == ActionKind.KEEP).count();
    if (faults.isEmpty() && keeps != 1) {
      faults.add(
          new Fault(
              TableFile.ACTIONS.fileName(),
              0,
              "kind",
              "must be keep for exactly one action",
              Long.toString(keeps),
              ""));
    }
    return List.copyOf(read);
  }

  private void addValue(TableRow row, List<String> keys) {
    CsvRow cells = row.cells();
    String key = action(cells, keys);
    Optional<ActionValue> value = cells.choice("value", ActionValue.BY_LABEL);
    if (value.isEmpty()) {
      return;
    }
    double most = value.get().most();
    double least = value.get() == ActionValue.CROP_MARGIN ? -most : 0;
    Optional<Range> range = cells.range("low", "likely", "high", least, most);
    String unit = cells.text("unit");
    if (value.get() != ActionValue.CROP_MARGIN && !unit.equals(value.get().unit())) {
      cells.fault("unit", "must be " + value.get().unit() + " for " + value.get().label());
    }
    String doubt = cells.findText("doubt").orElse(value.get().label());
    doubts.putIfAbsent(value.get(), doubt);
    row.assumption(value.get().label() + " of " + key, range, unit, "evidence", "source")
        .map(number -> number.withDoubt(doubt))
        .ifPresent(
            number -> values.computeIfAbsent(key, k -> new HashMap<>()).put(value.get(), number));
  }

  private void addCost(TableRow row, List<String> keys) {
    CsvRow cells = row.cells();
    String key = action(cells, keys);
    String name = cells.text("name");
    Optional<CostLine.Phase> phase = cells.choice("phase", PHASES);
    boolean ownLabour = cells.yes("own_labour");
    String currency = cells.text("currency");
    Optional<Range> range = cells.range("low_per_ha", "likely_per_ha", "high_per_ha", 0, 100_000);
    Optional<Assumption> cost =
        row.assumption(name + " for " + key, range, currency + "/ha", "evidence", "source")
            .map(number -> number.withDoubt(cells.findText("doubt").orElse(CostLine.doubt(name))));
    cells
        .make(
            () ->
                new CostLine(
                    name,
                    phase.orElseThrow(),
                    ownLabour,
                    cost.orElseThrow(),
                    currency,
                    cells.findText("date").orElse(""),
                    cells.findText("note").orElse("")))
        .ifPresent(line -> costs.computeIfAbsent(key, k -> new ArrayList<>()).add(line));
  }

  private static String action(CsvRow cells, List<String> keys) {
    String key = cells.text("action");
    if (!key.isEmpty() && !keys.contains(key)) {
      cells.faultName("action", "must be a key of actions.csv", keys);
    }
    return key;
  }

  private Optional<Action> action(TableRow row) {
    CsvRow cells = row.cells();
    String key = cells.text("key");
    String name = cells.text("name");
    Optional<ActionKind> kind = cells.choice("kind", KINDS);
    boolean arable = cells.yes("needs_arable");
    int years = cells.whole("run_down_years", 0, 5);
    boolean cropped = cells.yes("cropped");
    row.evidenceOf("months_ungrazed", "evidence");
    row.source("source", Evidence.INFERRED);
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    double months = kind.get().seeds() ? cells.number("months_ungrazed", 0, 12) : 0;
    checkSense(cells, kind.get(), years, cropped);
    Function<ActionValue, Assumption> value =
        wanted -> value(cells, key, wanted, wanted.applies(kind.get(), years > 0, cropped));
    List<Assumption> numbers = Arrays.stream(ActionValue.values()).map(value).toList();
    return cells.make(
        () ->
            new Action(
                key,
                name,
                kind.get(),
                arable,
                years,
                cropped,
                months,
                numbers.get(ActionValue.RUN_DOWN_GROWTH.ordinal()),
                numbers.get(ActionValue.GROWTH_YEAR_ONE.ordinal()),
                numbers.get(ActionValue.GROWTH_YEAR_TWO.ordinal()),
                numbers.get(ActionValue.SEED_SET.ordinal()),
                numbers.get(ActionValue.SEEDLING_KILL.ordinal()),
                numbers.get(ActionValue.BURIED_SEED.ordinal()),
                numbers.get(ActionValue.SOWN_SEED.ordinal()),
                Optional.empty(),
                numbers.get(ActionValue.ESTABLISHMENT_CHANCE.ordinal()),
                numbers.get(ActionValue.CROP_MARGIN.ordinal()),
                costs.getOrDefault(key, List.of()),
                Optional.empty()));
  }

  private static void checkSense(CsvRow cells, ActionKind kind, int years, boolean cropped) {
    if (years > 0 && kind != ActionKind.RESOW && kind != ActionKind.CROP) {
      cells.fault("run_down_years", "must be 0 unless the kind is resow or crop");
    }
    if (cropped && years == 0) {
      cells.fault("cropped", "must be no where there is no run-down year");
    }
  }

  /** The number from the table where it applies, its neutral value where it does not. */
  private Assumption value(CsvRow cells, String key, ActionValue wanted, boolean applies) {
    Assumption found = values.getOrDefault(key, Map.of()).get(wanted);
    if (found != null && !applies) {
      cells.fault("key", wanted.label() + " must not be given, since it does not apply to this");
    }
    // A row that is there but at fault must not also count as missing.
    if (found == null && applies && !wanted.isOptional() && faults.isEmpty()) {
      cells.fault("key", "must have a row for " + wanted.label() + " in action-values.csv");
    }
    return found != null
        ? found
        : new Assumption(
            wanted.label() + " of " + key,
            Range.exactly(wanted.neutral()),
            wanted.unit(),
            Evidence.INFERRED,
            "",
            SetBy.DEFAULT,
            doubts.getOrDefault(wanted, wanted.label()));
  }
}
