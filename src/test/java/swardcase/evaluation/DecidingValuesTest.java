package swardcase.evaluation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import swardcase.check.FaultsException;
import swardcase.evidence.SetBy;
import swardcase.farm.Paddock;
import swardcase.intake.FarmFolder;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.search.LikelySearch;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/**
 * Which reference values move a decision on the demo farms: every number of the tables goes to the
 * ends of its range alone, and the farm is read, valued and planned again at likely values. Takes
 * minutes; run it with {@code mvn -q test -Dtest=DecidingValuesTest -Ddeciding=true}, which writes
 * docs/deciding-values.md.
 */
class DecidingValuesTest {

  static final Path DOCUMENT = Path.of("docs/deciding-values.md");

  private static final String HEAD =
      """
      # Reference values that move a decision

      Written by `mvn -q test -Dtest=DecidingValuesTest -Ddeciding=true`, which takes ten minutes to half an hour. Every number of `tables/` goes alone to the
      ends of its range, a number without a range a tenth down and up, and the farm is read, valued and planned again at likely values. Of each farm
      the ten stand here that move the net present value of some action on some paddock most, as a share of what the action costs. *Planned otherwise* counts the paddocks in which something else is then planned, be it by a plan of nearly equal value. *On the sheet as*
      says whether the sheet prints the number with its mark among those that draws move, or among those held fixed; *as* names the one number that is drawn in place of it and others of its equation ([why](method/chance.md#what-is-held-fixed-and-why)). The source of each stands in its table
      (`swardcase tables dose-response`); sums of the farm's own stand in no table. See [evaluation](evaluation.md) for what this means.
      """;

  /** How many values of a farm the document shows. */
  private static final int SHOWN = 10;

  private static final List<String> FARMS =
      List.of("mixed-farm", "northern-farm", "current-farm", "risky-farm", "large-farm");

  /** A change of net present value that counts, as a share of what the action costs. */
  private static final double LIMIT = 0.05;

  /** From this change on a plan is looked for again. */
  private static final double AGAIN = 0.02;

  @TempDir private Path work;

  private final AtomicInteger folders = new AtomicInteger();

  /** What an action on a paddock is worth and costs, likely. */
  private record Option(double npv, double cost) {}

  /** A farm at one end of one number. */
  private record Answer(FarmModel model, Map<String, Option> options) {

    /** The action planned for each paddock. */
    Map<String, String> plan() {
      Plan plan = new LikelySearch(model).best();
      Map<String, String> actions = new TreeMap<>();
      for (int i = 0; i < plan.paddocks(); i++) {
        String name = model.farm().paddocks().get(i).name();
        actions.put(name, model.actions().get(plan.action(i)).key());
      }
      return actions;
    }
  }

  /**
   * What a value moves.
   *
   * @param change the value
   * @param share largest change of an action's net present value, as a share of the action's cost
   * @param where the paddock and action it is largest for
   * @param otherChoice paddocks in which something else is planned at one end or the other
   * @param printed whether the sheet prints it with its mark among the assumptions
   */
  private record Effect(
      ReferenceChange change,
      double share,
      String where,
      List<String> otherChoice,
      boolean printed) {}

  @Test
  @EnabledIfSystemProperty(named = "deciding", matches = "true")
  void valuesThatMoveADecision_areWrittenDown() throws IOException {
    StringBuilder text = new StringBuilder();
    List<Effect> all = new ArrayList<>();
    for (String farm : FARMS) {
      List<Effect> effects = effects(Path.of("demo-data", farm));
      all.addAll(effects);
      write(text, farm, effects.subList(0, Math.min(SHOWN, effects.size())));
    }
    Files.writeString(DOCUMENT, HEAD + counts(all) + text, StandardCharsets.UTF_8);
  }

  private List<Effect> effects(Path farm) {
    Tables tables = TablesLoader.standard().load();
    FarmModel model = new FarmModel(FarmFolder.read(farm, tables).farm(), tables);
    int[][] starts = starts(model);
    Answer base = answer(model, starts);
    Map<String, String> plan = base.plan();
    return ReferenceChange.all(namesUsed(model)).parallelStream()
        .map(change -> effect(change, base, plan, ends(change, farm, starts)))
        .filter(effect -> effect.share() > LIMIT || !effect.otherChoice().isEmpty())
        .sorted(
            Comparator.comparing(Effect::share, Comparator.reverseOrder())
                .thenComparing(e -> e.change().input()))
        .toList();
  }

  /** The farm with the number at its low and at its high end, where the program takes it. */
  private List<Answer> ends(ReferenceChange change, Path farm, int[][] starts) {
    List<Answer> ends = new ArrayList<>();
    for (List<Map<String, String>> rows : List.of(change.low(), change.high())) {
      try {
        Tables tables = TablesLoader.standard().with(folder(change, rows)).load();
        ends.add(answer(new FarmModel(FarmFolder.read(farm, tables).farm(), tables), starts));
      } catch (FaultsException | IllegalArgumentException e) {
        // The tables, the farm or a calculator refuse the number, so it cannot decide anything.
        continue;
      }
    }
    return ends;
  }

  /** Everything a farm and what stands in its paddocks is called by. */
  private static String namesUsed(FarmModel model) {
    StringBuilder names = new StringBuilder(model.farm().toString());
    OutcomeFunction run = model.newRun();
    for (int i = 0; i < model.farm().paddocks().size(); i++) {
      for (int c = 0; c < run.composition(i).size(); c++) {
        names.append('\n').append(run.composition(i).cultivar(c).name());
      }
    }
    return names.toString();
  }

  /** The year in which each action alone is worth most; the coming one if it loses in all. */
  private static int[][] starts(FarmModel model) {
    OutcomeFunction run = model.newRun();
    run.setBase(model.keepAll());
    int[][] starts = new int[model.farm().paddocks().size()][model.actions().size()];
    for (int i = 0; i < starts.length; i++) {
      for (int a = 0; a < starts[i].length; a++) {
        double most = 0;
        for (int s = 0; s < model.startYears(a) && run.allowed(i, a); s++) {
          double npv = run.npvOfBaseWith(i, a, s);
          if (npv > most) {
            most = npv;
            starts[i][a] = s;
          }
        }
      }
    }
    return starts;
  }

  /**
   * Each action, use rules aside because they cost next to nothing, starts in the year that is best
   * for it with the tables as they are.
   */
  private static Answer answer(FarmModel model, int[][] starts) {
    OutcomeFunction run = model.newRun();
    Map<String, Option> options = new TreeMap<>();
    run.setBase(model.keepAll());
    for (int i = 0; i < model.farm().paddocks().size(); i++) {
      Paddock paddock = model.farm().paddocks().get(i);
      for (int a = 0; a < model.farm().actions().size(); a++) {
        if (a == model.keep() || !run.allowed(i, a)) {
          continue;
        }
        int start = starts[i][a];
        options.put(
            paddock.name() + ": " + model.actions().get(a).name(),
            new Option(
                run.npvOfBaseWith(i, a, start), paddock.areaHa() * run.costPerHa(i, a, start)));
      }
    }
    return new Answer(model, options);
  }

  private static Effect effect(
      ReferenceChange change, Answer base, Map<String, String> plan, List<Answer> ends) {
    double most = 0;
    String where = "";
    for (Map.Entry<String, Option> entry : base.options().entrySet()) {
      double low = entry.getValue().npv();
      double high = low;
      for (Answer end : ends) {
        Option option = end.options().get(entry.getKey());
        low = Math.min(low, option.npv());
        high = Math.max(high, option.npv());
      }
      double cost = entry.getValue().cost();
      if ((high - low) / cost > most) {
        most = (high - low) / cost;
        where = entry.getKey();
      }
    }
    List<String> other = new ArrayList<>();
    boolean printed = false;
    for (Answer end : ends) {
      Map<String, String> then = most > AGAIN ? end.plan() : plan;
      plan.keySet().stream()
          .filter(paddock -> !plan.get(paddock).equals(then.get(paddock)))
          .filter(paddock -> !other.contains(paddock))
          .forEach(other::add);
      printed |= prints(change, end);
    }
    return new Effect(change, most, where, other, printed);
  }

  /** The sheet lists every input; a changed row is the only one that a user's table has set. */
  private static boolean prints(ReferenceChange change, Answer end) {
    return end.model().inputs().all().stream()
        .filter(assumption -> assumption.setBy() == SetBy.OVERRIDE)
        .anyMatch(assumption -> assumption.evidence().label().equals(change.evidence()));
  }

  private Path folder(ReferenceChange change, List<Map<String, String>> rows) {
    Path folder = work.resolve("tables-" + folders.incrementAndGet());
    try {
      ReferenceChange.write(folder, change.file(), rows);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return folder;
  }

  /** How many values decide, by their marks; each value once, however many farms it moves. */
  private static String counts(List<Effect> effects) {
    StringBuilder text = new StringBuilder("\nBy marks, each value once, all farms:\n\n");
    text.append("| | ")
        .append(String.join(" | ", EvaluationDocumentTest.MARKS))
        .append(" | all |\n");
    text.append("|---|---|---|---|---|---|\n");
    counts(text, "moves an action by more than 5 % of its cost", effects, e -> e.share() > LIMIT);
    counts(text, "something else is planned", effects, e -> !e.otherChoice().isEmpty());
    counts(
        text,
        "either, and another is drawn in place of its equation",
        effects,
        e -> !e.printed() && !e.change().factor().isEmpty());
    counts(
        text,
        "either, and held fixed: no draw moves it",
        effects,
        e -> !e.printed() && e.change().factor().isEmpty());
    return text.toString();
  }

  private static void counts(
      StringBuilder text, String name, List<Effect> effects, Predicate<Effect> counted) {
    List<String> marks =
        effects.stream()
            .filter(counted)
            .map(Effect::change)
            .collect(
                Collectors.toMap(
                    change -> change.file() + change.input(),
                    ReferenceChange::evidence,
                    (a, b) -> a))
            .values()
            .stream()
            .toList();
    EvaluationDocumentTest.row(
        text,
        name,
        EvaluationDocumentTest.MARKS.stream()
            .mapToLong(mark -> marks.stream().filter(mark::equals).count())
            .toArray());
  }

  private static void write(StringBuilder text, String farm, List<Effect> effects) {
    text.append("\n## ").append(farm).append("\n\n");
    if (effects.isEmpty()) {
      text.append("None.\n");
      return;
    }
    text.append("| value | table | range tried | mark | NPV moves, % of cost | most for |");
    text.append(" planned otherwise | on the sheet as |\n|---|---|---|---|---|---|---|---|\n");
    for (Effect effect : effects) {
      text.append(effect.change().cells())
          .append(
              String.format(
                  Locale.ROOT,
                  " %.0f | %s | %s | %s |\n",
                  100 * effect.share(),
                  effect.where(),
                  effect.otherChoice().size(),
                  effect.printed() ? "drawn" : fixed(effect.change().factor())));
    }
  }

  private static String fixed(String factor) {
    return factor.isEmpty() ? "held fixed" : "as " + factor;
  }
}
