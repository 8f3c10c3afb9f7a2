package swardcase.cli;

import java.util.List;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import swardcase.decision.Decision;
import swardcase.decision.ExplainTopic;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.outcome.FarmModel;
import swardcase.report.ExplanationReport;
import swardcase.tables.Tables;
import swardcase.view.ExplainView;

/** Says where a printed number comes from. */
@Command(
    name = "explain",
    description = {
      "Says where a number of the decision sheet comes from: its formula, its parts down to the"
          + " numbers of the farm folder and the tables, and what moves it most.",
      "Without WHAT, lists what can be explained."
    })
final class ExplainCommand extends FarmTask {

  @Mixin private DrawOptions draws;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "WHAT",
      description = "The number to be explained, such as plan-gain.")
  private String what;

  @Option(
      names = "--paddock",
      paramLabel = "NAME",
      description = "The paddock, for a number of a paddock.")
  private String paddock;

  @Option(
      names = "--depth",
      paramLabel = "N",
      defaultValue = "3",
      description = "Levels of parts shown. Default: ${DEFAULT-VALUE}.")
  private int depth;

  @Override
  public Integer call() {
    Tables tables = tables();
    Farm farm = load(tables).farm();
    if (what == null) {
      print("Of the farm");
      list(false);
      print("Of a paddock, with --paddock NAME");
      list(true);
      return ExitCodes.DONE;
    }
    ExplainTopic topic =
        ExplainTopic.find(what).orElseThrow(() -> unknown("number", what, ExplainTopic.keys()));
    int place = topic.isOfPaddock() ? place(farm) : -1;
    if (!topic.isOfPaddock() && paddock != null) {
      throw wrong("'" + topic.key() + "' is of the whole farm: leave out --paddock");
    }
    Decision decision = draws.decide(new FarmModel(farm, tables), List.of());
    print(ExplainView.of(ExplanationReport.of(decision, topic, place), Math.max(0, depth)));
    return ExitCodes.DONE;
  }

  private void list(boolean ofPaddock) {
    for (ExplainTopic topic : ExplainTopic.values()) {
      if (topic.isOfPaddock() == ofPaddock) {
        out().printf("  %-19s %s%n", topic.key(), topic.says());
      }
    }
  }

  private int place(Farm farm) {
    List<String> names = farm.paddocks().stream().map(Paddock::name).toList();
    if (paddock == null) {
      throw wrong(
          "'" + what + "' is of a paddock: give --paddock and one of: " + String.join(", ", names));
    }
    return IntStream.range(0, names.size())
        .filter(place -> names.get(place).equalsIgnoreCase(paddock.strip()))
        .findFirst()
        .orElseThrow(() -> unknown("paddock", paddock, names));
  }
}
