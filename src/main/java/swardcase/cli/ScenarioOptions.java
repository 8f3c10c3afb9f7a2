package swardcase.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;
import swardcase.check.Fault;
import swardcase.check.FaultsException;
import swardcase.check.NearestName;
import swardcase.intake.FarmFolder;
import swardcase.intake.LoadedFarm;
import swardcase.intake.Scenario;
import swardcase.intake.ScenarioFile;
import swardcase.tables.Tables;

/** A file of scenarios, all of them or some. */
final class ScenarioOptions extends Options {

  @Option(
      names = "--scenario",
      paramLabel = "FILE",
      description = "File with named changes to the farm (YAML).")
  private Path file;

  @Option(
      names = "--only",
      paramLabel = "NAME",
      description = "Only this scenario of the file; may be given several times.")
  private List<String> only = List.of();

  /** The file, if there is one. */
  Optional<Path> file() {
    if (file == null && !only.isEmpty()) {
      throw wrong("--only chooses from the file of --scenario, which was not given");
    }
    return Optional.ofNullable(file);
  }

  /**
   * The farm under each scenario by the scenario's name, in the order of the file.
   *
   * @param faults takes the faults of the file and of every scenario
   */
  Map<String, LoadedFarm> read(Path folder, Tables tables, List<Fault> faults) {
    Map<String, LoadedFarm> farms = new LinkedHashMap<>();
    for (Scenario scenario : find(faults)) {
      try {
        farms.put(scenario.name(), FarmFolder.read(folder, tables, scenario));
      } catch (FaultsException found) {
        faults.addAll(found.faults());
      }
    }
    return farms;
  }

  /**
   * The farm, under the one scenario that was asked for if there is a file of them.
   *
   * @throws FaultsException with all faults of the farm, or of the file and the scenario
   */
  LoadedFarm one(FarmTask task, Tables tables) {
    LoadedFarm farm = task.load(tables);
    List<Fault> faults = new ArrayList<>();
    Map<String, LoadedFarm> farms = read(task.folder(), tables, faults);
    if (faults.isEmpty() && farms.size() > 1) {
      String rule = "must name the one scenario to be decided about: ";
      faults.add(new Fault("--only", 0, "", rule + String.join(", ", farms.keySet()), "", ""));
    }
    FaultsException.throwIfAny(faults);
    return farms.isEmpty() ? farm : farms.values().iterator().next();
  }

  /** The scenarios asked for. */
  List<Scenario> find(List<Fault> faults) {
    try {
      return file().isEmpty() ? List.of() : chosen(ScenarioFile.read(file), faults);
    } catch (FaultsException found) {
      faults.addAll(found.faults());
      return List.of();
    }
  }

  private List<Scenario> chosen(List<Scenario> all, List<Fault> faults) {
    List<String> names = all.stream().map(Scenario::name).toList();
    for (String name : only) {
      if (names.stream().noneMatch(name.strip()::equalsIgnoreCase)) {
        String rule = "must name a scenario of " + file + ": " + String.join(", ", names);
        String nearest = NearestName.find(name, names).orElse("");
        faults.add(new Fault("--only", 0, "", rule, name, nearest));
      }
    }
    return all.stream()
        .filter(
            one ->
                only.isEmpty()
                    || only.stream().map(String::strip).anyMatch(one.name()::equalsIgnoreCase))
        .toList();
  }
}
