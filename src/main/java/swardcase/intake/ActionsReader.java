package swardcase.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import swardcase.evidence.Assumption;
import swardcase.farm.Action;
import swardcase.farm.ActionKind;
import swardcase.farm.CostLine;
import swardcase.tables.Tables;

/** Reads the farm's own numbers for the actions of the tables, and actions of its own. */
final class ActionsReader {

  private static final String NEW_CLOVER = "clover share of the new stand";

  private final Tables tables;
  private final String currency;

  ActionsReader(Tables tables, String currency) {
    this.tables = tables;
    this.currency = currency;
  }

  /** All actions in the order of the table, the farm's own behind them. */
  List<Action> list(Fields farm) {
    Map<String, Action> actions = new LinkedHashMap<>();
    tables.actions().forEach(action -> actions.put(action.key(), action));
    Fields own = farm.section("actions");
    boolean crops = farm.findYesNo("crops").orElse(false);
    List<String> dropped = new ArrayList<>();
    for (String key : own.keys()) {
      Fields fields = own.section(key);
      find(fields, key, actions, own).ifPresent(action -> actions.put(key, action));
      if (!fields.findYesNo("considered").orElse(true)) {
        dropped.add(key);
      } else if (!crops && isCrop(actions.get(key))) {
        own.fault(key, "needs 'crops: yes' in this file, since it only crops", key);
      }
      fields.finish();
    }
    costs(farm.section("costs"), actions);
    if (!crops) {
      actions.values().removeIf(ActionsReader::isCrop);
    }
    for (String key : dropped) {
      if (actions.containsKey(key) && actions.get(key).kind() == ActionKind.KEEP) {
        own.fault(key, "must stay: keeping the paddock is what all else is compared with", key);
      } else {
        actions.remove(key);
      }
    }
    return List.copyOf(actions.values());
  }

  private static boolean isCrop(Action action) {
    return action != null && action.kind() == ActionKind.CROP;
  }

  private Optional<Action> find(
      Fields fields, String key, Map<String, Action> actions, Fields own) {
    int before = fields.faults().count();
    Optional<Action> like =
        fields.findName("like", "an action of the tables", actions.keySet()).map(actions::get);
    Action from = like.orElse(actions.get(key));
    if (from == null) {
      if (!fields.has("like")) {
        fields
            .faults()
            .add(
                own.place(key),
                "must be an action of the tables, or say with 'like:' which one it resembles",
                key,
                actions.keySet());
      }
      fields.keys().forEach(fields::has);
      return Optional.empty();
    }
    return changed(fields, key, from, before);
  }

  private Optional<Action> changed(Fields fields, String key, Action from, int before) {
    String name = fields.findText("name").orElse(from.name());
    boolean needsArable = fields.findYesNo("needs_arable").orElse(from.needsArable());
    OptionalInt runDown = fields.findWhole("run_down_years", 0, 5);
    boolean cropped = fields.findYesNo("cropped").orElse(from.cropped());
    OptionalDouble ungrazed = fields.findNumber("months_ungrazed", 0, 12);
    Assumption runDownGrowth =
        percent(fields, "run_down_growth_percent", from.runDownGrowth(), 100);
    Assumption yearOne = percent(fields, "growth_year_one_percent", from.growthYearOne(), 200);
    Assumption yearTwo = percent(fields, "growth_year_two_percent", from.growthYearTwo(), 200);
    Assumption seedSet = percent(fields, "seed_set_percent", from.seedSet(), 100);
    Assumption kill = percent(fields, "seedling_kill_percent", from.seedlingKill(), 100);
    Assumption buried = percent(fields, "buried_seed_percent", from.buriedSeed(), 100);
    Assumption sown = own(fields, "sown_kg_per_ha", from.sownKgPerHa(), 0, 100);
    Optional<Assumption> clover =
        fields
            .findRange("target_clover_percent", 0, 100)
            .map(range -> Assumption.ofFarm(NEW_CLOVER, Defaults.divided(range, 100), "-"))
            .or(from::targetCloverShare);
    Assumption takes =
        percent(fields, "establishment_chance_percent", from.establishmentChance(), 100);
    Assumption margin = own(fields, "crop_margin_per_ha", from.cropMarginPerHa(), -1e6, 1e6);
    return fields
        .faults()
        .build(
            before,
            fields.place(),
            () ->
                new Action(
                    key,
                    name,
                    from.kind(),
                    needsArable,
                    runDown.orElse(from.runDownYears()),
                    cropped,
                    ungrazed.orElse(from.monthsUngrazed()),
                    runDownGrowth,
                    yearOne,
                    yearTwo,
                    seedSet,
                    kill,
                    buried,
                    sown,
                    clover,
                    takes,
                    margin,
                    from.costs(),
                    Optional.empty()));
  }

  private Assumption percent(Fields fields, String key, Assumption from, double high) {
    return fields
        .findRange(key, 0, high)
        .map(range -> Defaults.ofFarm(from, Defaults.divided(range, 100)))
        .orElse(from);
  }

  private Assumption own(Fields fields, String key, Assumption from, double low, double high) {
    return fields
        .findRange(key, low, high)
        .map(range -> inCurrency(from, Defaults.ofFarm(from, range)))
        .orElse(from);
  }

  private Assumption inCurrency(Assumption from, Assumption user) {
    String unit = from.unit().replace(Currencies.OF_TABLES, currency);
    return Assumption.ofFarm(user.name(), user.range(), unit).withDoubt(user.doubt());
  }

  private void costs(Fields costs, Map<String, Action> actions) {
    for (String key : costs.keys()) {
      Fields lines = costs.section(key);
      Action action = actions.get(key);
      if (action == null) {
        costs.faults().add(costs.place(key), "must be an action", key, actions.keySet());
      } else {
        List<CostLine> changed = costs(lines, action);
        actions.put(key, action.withCosts(changed));
      }
    }
  }

  private List<CostLine> costs(Fields lines, Action action) {
    Map<String, CostLine> costs = new LinkedHashMap<>();
    action.costs().forEach(line -> costs.put(line.name(), line));
    for (String name : lines.keys()) {
      CostLine line = costs.get(name);
      if (line == null && !lines.isScalar(name) && lines.has(name)) {
        own(lines.section(name), name).ifPresent(added -> costs.put(name, added));
      } else if (line == null) {
        lines
            .faults()
            .add(
                lines.place(name),
                "must be a cost line of this action, or have 'phase:' and 'cost_per_ha:' below it",
                name,
                costs.keySet());
      } else {
        lines
            .findRange(name, 0, 1e6)
            .ifPresent(
                range ->
                    costs.put(
                        name,
                        new CostLine(
                            name,
                            line.phase(),
                            line.ownLabour(),
                            inCurrency(line.costPerHa(), Defaults.ofFarm(line.costPerHa(), range)),
                            "",
                            "",
                            "")));
      }
    }
    return List.copyOf(costs.values());
  }

  /** A cost line that the table does not have. */
  private Optional<CostLine> own(Fields line, String name) {
    int before = line.faults().count();
    Optional<CostLine.Phase> phase =
        line.findChoice("phase", CostLine.Phase.values(), CostLine.Phase::label);
    Optional<Assumption> cost =
        line.findRange("cost_per_ha", 0, 1e6)
            .map(range -> Assumption.ofFarm(name, range, currency + "/ha"))
            .map(number -> number.withDoubt(CostLine.doubt(name)));
    boolean ownLabour = line.findYesNo("own_labour").orElse(false);
    if (!line.has("phase") || !line.has("cost_per_ha")) {
      line.faults().add(line.place(), "must give phase and cost_per_ha", "");
    }
    line.finish();
    return line.faults()
        .build(
            before,
            line.place(),
            () ->
                new CostLine(name, phase.orElseThrow(), ownLabour, cost.orElseThrow(), "", "", ""));
  }
}
