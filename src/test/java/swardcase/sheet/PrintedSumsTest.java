package swardcase.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import swardcase.Answers;
import swardcase.Answers.Answer;
import swardcase.report.PaddockResult;
import swardcase.report.Report;
import swardcase.sheet.PdfText.Run;
import swardcase.view.TerminalView;
import swardcase.wording.Words;

/** Every sum that is printed is true to its last digit: all numbers are read from the print. */
class PrintedSumsTest {

  /** So wide that no row of a table is broken. */
  private static final int WIDE = 400;

  /** Of the random farms every so many has its sheet read too. */
  private static final int SHEETS = 20;

  private static final String NUMBER = "\u2212?\\d[\\d,]*";
  private static final double SAME_EDGE = 0.6;

  /** A row of the table of paddocks: what stands under cost and under gain. */
  private record Row(String name, OptionalDouble cost, OptionalDouble gain) {

    double costOrNone() {
      return cost.orElse(0);
    }

    double gainOrNone() {
      return gain.orElse(0);
    }
  }

  @Test
  void sums_onTheTerminal_areTrue() {
    int[] farms = new int[2];
    Answers.forAll(
        answer -> {
          List<String> lines = TerminalView.of(answer.report(), WIDE);
          List<Row> rows = rows(lines);
          farms[0]++;
          assertThat(rows).as(answer.name()).hasSizeGreaterThanOrEqualTo(answer.paddocks());
          List<Row> paddocks = rows.subList(0, answer.paddocks());
          if (answer.acts()) {
            farms[1]++;
            addUp(answer, paddocks, rows.subList(answer.paddocks(), rows.size()));
          } else {
            assertThat(rows).allMatch(row -> row.cost.isEmpty() && row.gain.isEmpty());
          }
          reasons(answer, paddocks, unwrapped(lines));
        });
    assertThat(farms[0]).isEqualTo(145);
    assertThat(farms[1]).as("farms whose plan does something").isGreaterThan(50);
  }

  private static void addUp(Answer answer, List<Row> ofPaddocks, List<Row> all) {
    int rules = answer.report().plan().farmWide().size();
    assertThat(all).as(answer.name()).hasSize(2 + rules);
    List<Row> sums = all.subList(rules, 2 + rules);
    List<Row> paddocks = new ArrayList<>(ofPaddocks);
    paddocks.addAll(all.subList(0, rules));
    assertThat(sums.get(0).name).startsWith("Shared");
    assertThat(sums.get(1).name).isEqualTo("The plan");
    double gains = paddocks.stream().mapToDouble(Row::gainOrNone).sum();
    double costs = paddocks.stream().mapToDouble(Row::costOrNone).sum();
    assertThat(gains + sums.get(0).gainOrNone())
        .as(answer.name())
        .isEqualTo(sums.get(1).gain.orElseThrow());
    assertThat(costs).as(answer.name()).isEqualTo(sums.get(1).cost.orElseThrow());
  }

  /** The rows below the heading that begins with "Paddock", read by its right edges. */
  private static List<Row> rows(List<String> lines) {
    int head = 0;
    while (!lines.get(head).startsWith("Paddock ")) {
      head++;
    }
    int cost = end(lines.get(head), "Cost \\S+");
    int gain = end(lines.get(head), "Gain \\S+ \\(range\\)");
    List<Row> rows = new ArrayList<>();
    for (int i = head + 2; !lines.get(i).isBlank(); i++) {
      String line = lines.get(i);
      rows.add(
          new Row(
              line.split(" {2}")[0],
              number(line, cost, "(" + NUMBER + ")$"),
              number(line, gain, " (" + NUMBER + ")(?: \\([^)]*\\))?$")));
    }
    return rows;
  }

  private static int end(String line, String heading) {
    Matcher found = Pattern.compile(heading).matcher(line);
    assertThat(found.find()).as(line).isTrue();
    return found.end();
  }

  private static OptionalDouble number(String line, int to, String pattern) {
    Matcher found =
        Pattern.compile(pattern).matcher(line.substring(0, Math.min(to, line.length())));
    return found.find() ? OptionalDouble.of(number(found.group(1))) : OptionalDouble.empty();
  }

  private static double number(String text) {
    return Double.parseDouble(text.replace(",", "").replace('\u2212', '-'));
  }

  private static String unwrapped(List<String> lines) {
    return String.join("\n", lines).replaceAll("\n {2}(?=\\S)", " ");
  }

  /** The parts of a paddock's gain add up to it, and it is the one in the table. */
  private static void reasons(Answer answer, List<Row> paddocks, String text) {
    List<PaddockResult> results = answer.report().paddocks();
    for (int i = 0; i < results.size(); i++) {
      if (results.get(i).isInPlan()) {
        String name = results.get(i).name();
        Matcher sentence =
            Pattern.compile(
                    "(?m)^"
                        + Pattern.quote(name)
                        + ": (?:Nobody has looked at its clover\\. )?Over \\d+ years, on average(.*)$")
                .matcher(text);
        assertThat(sentence.find()).as(answer.name() + " " + name).isTrue();
        double gain = paddocks.get(i).gain.orElseThrow();
        assertThat(total(sentence.group(1))).as(sentence.group()).isEqualTo(gain);
        if (sentence.group(1).startsWith(":")) {
          assertThat(parts(sentence.group(1))).as(sentence.group()).isEqualTo(gain);
        }
      }
    }
  }

  private static double total(String sentence) {
    Matcher found =
        Pattern.compile(
                "it (gains \\S+ (" + NUMBER + ")|loses \\S+ (" + NUMBER + ")|about breaks even)")
            .matcher(sentence);
    assertThat(found.find()).as(sentence).isTrue();
    return found.group(2) != null
        ? number(found.group(2))
        : found.group(3) != null ? -number(found.group(3)) : 0;
  }

  private static double parts(String sentence) {
    String[] moreLess = sentence.substring(0, sentence.indexOf(". Together")).split("; less ");
    return sum(moreLess[0]) - (moreLess.length > 1 ? sum(moreLess[1]) : 0);
  }

  private static double sum(String parts) {
    double sum = 0;
    for (Matcher each = Pattern.compile("\\S+ (\\d[\\d,]*)(?=,? |$)").matcher(parts);
        each.find(); ) {
      sum += number(each.group(1).replaceAll(",$", ""));
    }
    return sum;
  }

  @Test
  void sums_onTheSheet_areTrue() {
    int[] sheets = new int[2];
    Answers.forAll(
        answer -> {
          boolean isRead = !answer.name().startsWith("random") || sheets[0] % SHEETS == 0;
          sheets[0]++;
          if (isRead && answer.acts()) {
            List<Run> runs = runs(answer.report());
            sheets[1]++;
            changes(answer, runs);
            years(answer, runs);
          }
        });
    assertThat(sheets[1]).as("sheets that were read").isGreaterThan(5);
  }

  private static List<Run> runs(Report report) {
    try {
      return PdfText.runs(Sheets.writeCase(report));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** What the changes cost and gain adds up to the plan's. */
  private static void changes(Answer answer, List<Run> all) {
    int changes = answer.report().plan().calls().changes();
    List<Run> runs = below(all, "What the plan changes");
    List<Double> costs = column(runs, "Cost");
    List<Double> gains = column(runs, "Gain (net");
    double cost = costs.remove(costs.size() - 1);
    double gain = gains.remove(gains.size() - 1);
    assertThat(costs).as(answer.name()).hasSize(changes);
    assertThat(gains).as(answer.name()).hasSize(changes + 1);
    assertThat(sum(costs)).as(answer.name()).isEqualTo(cost);
    assertThat(sum(gains)).as(answer.name()).isEqualTo(gain);
  }

  /** What is drawn behind a heading, on any page, up to the next heading of its size. */
  private static List<Run> below(List<Run> all, String heading) {
    Run head = all.stream().filter(run -> run.text().equals(heading)).findFirst().orElseThrow();
    return all.subList(all.indexOf(head) + 1, all.size()).stream()
        .takeWhile(run -> run.size() < head.size())
        .toList();
  }

  /** Numbers without brackets that end where a heading ends. */
  private static List<Double> column(List<Run> runs, String heading) {
    Run head =
        runs.stream().filter(run -> run.text().startsWith(heading)).findFirst().orElseThrow();
    return runs.stream()
        .filter(run -> run.page() > head.page() || run.baseline() > head.baseline())
        .filter(run -> Math.abs(run.right() - head.right()) < SAME_EDGE)
        .filter(run -> run.text().matches(NUMBER))
        .map(run -> number(run.text()))
        .collect(Collectors.toCollection(ArrayList::new));
  }

  private static double sum(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).sum();
  }

  /**
   * Lines of a year are its net, nets what is in hand, years now the gain, with is without and net.
   */
  private static void years(Answer answer, List<Run> all) {
    List<List<Double>> years = new ArrayList<>();
    int first = answer.report().plan().years().get(0).year();
    List<Run> runs = below(all, "Cash flow with and without the plan");
    for (int t = 0; t < answer.report().plan().years().size(); t++) {
      String year = Integer.toString(first + t);
      Run start = runs.stream().filter(run -> run.text().equals(year)).findFirst().orElseThrow();
      years.add(
          runs.stream()
              .filter(run -> run.page() == start.page())
              .filter(run -> Math.abs(run.baseline() - start.baseline()) < SAME_EDGE)
              .filter(run -> run.left() > start.right() && run.text().matches(NUMBER))
              .map(run -> number(run.text()))
              .toList());
    }
    double inHand = 0;
    double now = 0;
    for (List<Double> year : years) {
      assertThat(year).as(answer.name()).hasSize(9);
      assertThat(sum(year.subList(0, 4))).as(answer.name()).isEqualTo(year.get(4));
      inHand += year.get(4);
      assertThat(year.get(5)).as(answer.name()).isEqualTo(inHand);
      now += year.get(6);
      assertThat(year.get(7) + year.get(4)).as(answer.name()).isEqualTo(year.get(8));
    }
    String gain =
        TerminalView.of(answer.report(), WIDE).stream()
            .filter(line -> line.startsWith("The plan "))
            .findFirst()
            .orElseThrow();
    assertThat(gain.trim()).as(answer.name()).endsWith(" " + Words.rounded(now, 1));
  }
}
