package swardcase.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import swardcase.check.Fault;
import swardcase.check.FaultsException;
import swardcase.decision.Decision;
import swardcase.folder.Inputs;
import swardcase.folder.WholeFiles;
import swardcase.intake.FarmFolder;
import swardcase.intake.LoadedFarm;
import swardcase.outcome.FarmModel;
import swardcase.report.ComparisonReport;
import swardcase.report.ComparisonReport.Decided;
import swardcase.tables.Tables;
import swardcase.view.ComparisonTerminalView;
import swardcase.view.JsonView;
import swardcase.wording.MoneyFaces;

/** Decides about a farm and others, or scenarios of it, and takes the difference from it. */
@Command(
    name = "compare",
    description = {
      "Decides about a farm folder and about others, or about what-if scenarios of it, and prints"
          + " the results side by side.",
      "All are drawn alike, and the difference from the farm is taken draw by draw: first what the"
          + " change does by itself, then what the plan adds."
    },
    footer = {
      "%nA scenario file has the keys of farm.yaml below a name:",
      "  scenarios:",
      "    cheap lamb:",
      "      prices:",
      "        net_value_per_lamb: -20 %%"
    })
final class CompareCommand extends FarmTask {

  @Mixin private SheetOptions sheet;
  @Mixin private ScenarioOptions scenarios;

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "OTHER",
      description = "Farm folders compared with it, such as a copy with other prices.")
  private List<Path> folders = List.of();

  @Option(names = "--json", paramLabel = "FILE", description = "Write the comparison (JSON).")
  private Path json;

  /** A farm to be decided about. */
  private record Case(Path folder, Optional<String> scenario, LoadedFarm farm) {}

  @Override
  public Integer call() throws IOException {
    if (scenarios.file().isEmpty() && folders.isEmpty()) {
      throw wrong("Nothing to compare with: give another farm folder, or --scenario FILE");
    }
    Tables tables = tables();
    List<Case> cases = read(tables);
    List<Decided> decided = cases.stream().map(one -> decide(one, tables)).toList();
    ComparisonReport report =
        ComparisonReport.of(decided.get(0), decided.subList(1, decided.size()));
    try (WholeFiles files = new WholeFiles(allInputs())) {
      files.add(json, () -> JsonView.of(report));
      files.commit();
    }
    List<MoneyFaces> faces = decided.stream().map(one -> new MoneyFaces(one.report())).toList();
    print(ComparisonTerminalView.of(report, faces, width()));
    if (json != null) {
      out().println();
      printWritten(json);
    }
    return ExitCodes.DONE;
  }

  private Inputs allInputs() {
    Stream<Path> others = folders.stream().flatMap(FarmTask::files);
    return inputs().and(Stream.concat(others, scenarios.file().stream()).toList());
  }

  /** The farm, the other farms and the scenarios, or the faults of all of them. */
  private List<Case> read(Tables tables) {
    List<Fault> faults = new ArrayList<>();
    List<Case> cases = new ArrayList<>();
    Path first = folder();
    Optional<LoadedFarm> farm = find(first, tables, faults, cases);
    folders.forEach(folder -> find(folder, tables, faults, cases));
    if (farm.isPresent()) {
      scenarios
          .read(first, tables, faults)
          .forEach((name, read) -> cases.add(new Case(first, Optional.of(name), read)));
      cases.forEach(one -> refuseTwoCurrencies(farm.get().farm().currency(), one, faults));
    } else {
      scenarios.find(faults);
    }
    FaultsException.throwIfAny(faults);
    return cases;
  }

  private static Optional<LoadedFarm> find(
      Path folder, Tables tables, List<Fault> faults, List<Case> cases) {
    try {
      LoadedFarm farm = FarmFolder.read(folder, tables);
      cases.add(new Case(folder, Optional.empty(), farm));
      return Optional.of(farm);
    } catch (FaultsException found) {
      found.faults().forEach(fault -> faults.add(in(folder, fault)));
      return Optional.empty();
    }
  }

  /** The fault with the folder before its file. */
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

  private void refuseTwoCurrencies(String currency, Case other, List<Fault> faults) {
    String found = other.farm().farm().currency();
    if (!currency.equals(found)) {
      String rule = "must be " + currency + " as in the first farm, since nothing is converted";
      String farm = other.folder() + "/farm.yaml";
      String file = other.scenario().isPresent() ? scenarios.file().orElseThrow() + "" : farm;
      String column = other.scenario().map(name -> name + ": ").orElse("") + "currency";
      faults.add(new Fault(file, 0, column, rule, found, ""));
    }
  }

  private Decided decide(Case one, Tables tables) {
    FarmModel model = new FarmModel(sheet.signed(one.farm().farm()), tables);
    Decision decision = sheet.decide(model, List.of());
    return sheet.decided(one.folder().toString(), one.scenario(), one.farm(), decision);
  }
}
