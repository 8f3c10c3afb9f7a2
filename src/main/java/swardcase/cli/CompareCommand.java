package swardcase.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import swardcase.check.Fault;
import swardcase.check.FaultsException;
import swardcase.farm.Farm;
import swardcase.findings.HowSure;
import swardcase.intake.FarmFolder;
import swardcase.intake.LoadedFarm;
import swardcase.plan.Decision;
import swardcase.plan.FarmModel;
import swardcase.report.ComparisonBuilder;
import swardcase.report.ComparisonBuilder.Decided;
import swardcase.report.ComparisonReport;
import swardcase.report.ComparisonTerminalView;
import swardcase.report.JsonView;
import swardcase.report.ReportBuilder;
import swardcase.tables.Tables;

/** Decides about two farms, or two versions of one, and says what makes the difference. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Decides about two farm folders and prints the results side by side.",
      "Then goes from the first to the second, one group of inputs at a time, and says by how much"
          + " each changes what the plan gains."
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {ExitCodes.DONE_LINE, ExitCodes.FAULT_LINE, ExitCodes.INPUT_LINE})
final class CompareCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;
  @Mixin private FarmOptions options;
  @Mixin private SheetOptions sheet;
  @Mixin private DrawOptions draws;

  @Parameters(
      index = "1",
      paramLabel = "SECOND",
      description = "Farm folder compared with it, such as a copy with other prices.")
  private Path second;

  @Option(names = "--json", paramLabel = "FILE", description = "Write the comparison (JSON).")
  private Path json;

  @Override
  public Integer call() throws IOException {
    draws.check();
    Tables tables = options.tables();
    Path first = options.folder();
    List<Fault> faults = new ArrayList<>();
    Optional<LoadedFarm> farm = find(first, tables, faults);
    Optional<LoadedFarm> other = find(second, tables, faults);
    if (farm.isPresent() && other.isPresent()) {
      refuseTwoCurrencies(farm.get().farm().currency(), other.get().farm().currency(), faults);
    }
    if (!faults.isEmpty()) {
      throw new FaultsException(faults);
    }
    LocalDate day = sheet.date();
    ComparisonReport report =
        ComparisonBuilder.build(
            decide(first, farm.orElseThrow(), tables, day),
            decide(second, other.orElseThrow(), tables, day));
    if (json != null) {
      List<Path> inputs =
          Stream.concat(options.files().stream(), FarmOptions.files(second)).toList();
      try (WholeFiles files = new WholeFiles(inputs)) {
        files.add(json, JsonView.of(report));
        files.commit();
      }
    }
    PrintWriter out = spec.commandLine().getOut();
    ComparisonTerminalView.of(report).forEach(line -> out.println(PlainText.of(line)));
    if (json != null) {
      out.println();
      out.println("Written: " + json);
    }
    return ExitCodes.DONE;
  }

  /** The farm, or its faults with the folder before their file. */
  private static Optional<LoadedFarm> find(Path folder, Tables tables, List<Fault> faults) {
    try {
      return Optional.of(FarmFolder.read(folder, tables));
    } catch (FaultsException found) {
      found.faults().forEach(fault -> faults.add(in(folder, fault)));
      return Optional.empty();
    }
  }

  private static Fault in(Path folder, Fault fault) {
    String name = folder.toString();
    return fault.file().equals(name)
        ? fault
        : new Fault(
            name + "/" + fault.file(),
            fault.line(),
            fault.column(),
            fault.rule(),
            fault.found(),
            fault.nearest());
  }

  private void refuseTwoCurrencies(String currency, String other, List<Fault> faults) {
    if (!currency.equals(other)) {
      String rule = "must be " + currency + " as in the first farm, since nothing is converted";
      faults.add(in(second, new Fault("farm.yaml", 0, "currency", rule, other, "")));
    }
  }

  private Decided decide(Path folder, LoadedFarm loaded, Tables tables, LocalDate day) {
    Farm farm = sheet.signed(loaded.farm());
    Decision decision = Decision.of(new FarmModel(farm, tables));
    HowSure howSure = draws.of(decision);
    return new Decided(
        folder.toString(),
        decision,
        howSure,
        ReportBuilder.build(decision, howSure, Version.text(), day, loaded.remarks()));
  }
}
