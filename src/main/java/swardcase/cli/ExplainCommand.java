package swardcase.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
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
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Says where a number of the decision sheet comes from: its formula, its parts down to the"
          + " numbers of the farm folder and the tables, and what moves it most.",
      "Without WHAT, lists what can be explained."
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {ExitCodes.DONE_LINE, ExitCodes.FAULT_LINE, ExitCodes.INPUT_LINE})
final class ExplainCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;
  @Mixin private FarmOptions options;
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
    draws.check();
    PrintWriter out = spec.commandLine().getOut();
    Tables tables = options.tables();
    Farm farm = options.load(tables).farm();
    if (what == null) {
      list(out);
      return ExitCodes.DONE;
    }
    ExplainTopic topic =
        ExplainTopic.find(what)
            .orElseThrow(() -> UnknownName.of(spec, "number", what, ExplainTopic.keys()));
    int place = topic.isOfPaddock() ? place(farm) : -1;
    if (!topic.isOfPaddock() && paddock != null) {
      throw new ParameterException(
          spec.commandLine(), "'" + topic.key() + "' is of the whole farm: leave out --paddock");
    }
    Decision decision = draws.decide(draws.of(new FarmModel(farm, tables)), List.of());
    ExplanationReport report = ExplanationReport.of(decision, topic, place);
    ExplainView.of(report, Math.max(0, depth)).forEach(line -> out.println(PlainText.of(line)));
    return ExitCodes.DONE;
  }

  private void list(PrintWriter out) {
    out.println("Of the farm");
    print(out, false);
    out.println("Of a paddock, with --paddock NAME");
    print(out, true);
  }

  private static void print(PrintWriter out, boolean ofPaddock) {
    for (ExplainTopic topic : ExplainTopic.values()) {
      if (topic.isOfPaddock() == ofPaddock) {
        out.printf("  %-19s %s%n", topic.key(), topic.says());
      }
    }
  }

  private int place(Farm farm) {
    List<String> names = farm.paddocks().stream().map(Paddock::name).toList();
    if (paddock == null) {
      throw new ParameterException(
          spec.commandLine(),
          "'" + what + "' is of a paddock: give --paddock and one of: " + String.join(", ", names));
    }
    for (int i = 0; i < names.size(); i++) {
      if (names.get(i).equalsIgnoreCase(paddock.strip())) {
        return i;
      }
    }
    throw UnknownName.of(spec, "paddock", paddock, names);
  }
}
