package swardcase.intake;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.farm.Action;
import swardcase.farm.ActionKind;
import swardcase.farm.ActionNumber;
import swardcase.farm.CostLine;
import swardcase.reading.Fields;
import swardcase.tables.Tables;

/** Reads the farm's own numbers for the actions of the tables, and actions of its own. */
final class ActionsReader {

  private static final String NEW_CLOVER = "clover share of the new stand";
  private static final Map<String, CostLine.Phase> PHASES =
      Fields.words(CostLine.Phase.values(), CostLine.Phase::label);
  private static final double MOST_COST = 1e6;

  private final Map<String, Action> actions = new LinkedHashMap<>();
  private final String currency;

  ActionsReader(Tables tables, String currency) {
    tables.actions().forEach(action -> actions.put(action.key(), action));
    this.currency = currency;
  }

  /** All actions in the order of the table, the farm's own behind them. */
  List<Action> list(Fields farm) {
    Fields own = farm.section("actions");
    boolean crops = farm.findYesNo("crops").orElse(false);
    List<String> dropped = new ArrayList<>();
    for (String key : own.keys()) {
      Fields fields = own.section(key);
      fields.make(() -> changed(fields, key, own)).ifPresent(action -> actions.put(key, action));
      if (!fields.findYesNo("considered").orElse(true)) {
        dropped.add(key);
      } else if (!crops && isCrop(actions.get(key))) {
        own.found(key, "needs 'crops: yes' in this file, since it only crops", key);
      }
    }
    costs(farm.section("costs"));
    if (!crops) {
      actions.values().removeIf(ActionsReader::isCrop);
    }
    for (String key : dropped) {
      if (actions.containsKey(key) && actions.get(key).kind() == ActionKind.KEEP) {
        own.found(key, "must stay: keeping the paddock is what all else is compared with", key);
      } else {
        actions.remove(key);
      }
    }
    return List.copyOf(actions.values());
  }

  private static boolean isCrop(Action action) {
    return action != null && action.kind() == ActionKind.CROP;
  }

  private Action changed(Fields fields, String key, Fields own) {
    fields.has("considered");
    Optional<String> like = fields.findName("like", "an action of the tables", actions.keySet());
    Action from = actions.get(like.orElse(key));
    if (from == null) {
      if (!fields.has("like")) {
        String rule = "must be an action of the tables, or say with 'like:' which one it resembles";
        own.faults().add(own.at(key), "actions." + key, rule, key, actions.keySet());
      }
      fields.keys().forEach(fields::has);
      return null;
    }
    Map<ActionNumber, Assumption> numbers = new EnumMap<>(from.numbers());
    for (ActionNumber number : ActionNumber.values()) {
      find(fields, number, from).ifPresent(value -> numbers.put(number, value));
    }
    return new Action(
        key,
        fields.findText("name").orElse(from.name()),
        from.kind(),
        fields.findYesNo("needs_arable").orElse(from.needsArable()),
        fields.findWhole("run_down_years", 0, 5).orElse(from.runDownYears()),
        fields.findYesNo("cropped").orElse(from.cropped()),
        fields.findNumber("months_ungrazed", 0, 12).orElse(from.monthsUngrazed()),
        numbers,
        from.costs(),
        Optional.empty());
  }

  /** The farm's own number in place of that of the action it is like. */
  private Optional<Assumption> find(Fields fields, ActionNumber number, Action from) {
    boolean isPercent = number.farmKey().endsWith("_percent");
    double per = isPercent ? 100 : 1;
    Optional<Range> written =
        fields.findRange(number.farmKey(), per * number.least(), per * number.most());
    Optional<Range> range = isPercent ? written.map(Fields::fractions) : written;
    return number == ActionNumber.CLOVER_SHARE
        ? range.map(own -> Assumption.ofFarm(NEW_CLOVER, own, number.unit()))
        : range.map(own -> Currencies.ofFarm(Defaults.ofFarm(from.number(number), own), currency));
  }

  private void costs(Fields costs) {
    for (String key : costs.keys()) {
      Fields lines = costs.section(key);
      Action action = actions.get(key);
      if (action == null) {
        costs
            .faults()
            .add(costs.at(key), "costs." + key, "must be an action", key, actions.keySet());
      } else {
        actions.put(key, action.withCosts(costs(lines, action)));
      }
    }
  }

  private List<CostLine> costs(Fields lines, Action action) {
    Map<String, CostLine> costs = new LinkedHashMap<>();
    action.costs().forEach(line -> costs.put(line.name(), line));
    for (String name : lines.keys()) {
      CostLine line = costs.get(name);
      if (line != null) {
        lines
            .findRange(name, 0, MOST_COST)
            .map(range -> Defaults.ofFarm(line.costPerHa(), range))
            .map(cost -> Currencies.ofFarm(cost, currency))
            .map(cost -> new CostLine(name, line.phase(), line.ownLabour(), cost))
            .ifPresent(changed -> costs.put(name, changed));
      } else if (lines.isScalar(name) || !lines.has(name)) {
        String rule =
            "must be a cost line of this action, or have 'phase:' and 'cost_per_ha:' below it";
        String path = "costs." + action.key() + "." + name;
        lines.faults().add(lines.at(name), path, rule, name, costs.keySet());
      } else {
        Fields own = lines.section(name);
        own.make(() -> own(own, name)).ifPresent(added -> costs.put(name, added));
      }
    }
    return List.copyOf(costs.values());
  }

  /** A cost line that the table does not have. */
  private CostLine own(Fields line, String name) {
    Optional<Range> cost = line.findRange("cost_per_ha", 0, MOST_COST);
    Optional<CostLine.Phase> phase = line.findChoice("phase", PHASES);
    boolean ownLabour = line.findYesNo("own_labour").orElse(false);
    if (!line.has("phase") || !line.has("cost_per_ha")) {
      line.fault("must give phase and cost_per_ha");
    }
    Assumption perHa = Assumption.ofFarm(name, cost.orElseThrow(), currency + "/ha");
    return new CostLine(
        name, phase.orElseThrow(), ownLabour, perHa.withDoubt(CostLine.doubt(name)));
  }
}
