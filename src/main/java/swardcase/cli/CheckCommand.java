package swardcase.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import swardcase.check.Fault;
import swardcase.check.FaultsException;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.farm.Mob;
import swardcase.farm.OtherStock;
import swardcase.farm.Paddock;
import swardcase.intake.Doubt;
import swardcase.intake.LoadedFarm;
import swardcase.paper.SheetLetters;
import swardcase.tables.Tables;

/** Reads a farm folder and says everything that is wrong in it, or odd. */
@Command(
    name = "check",
    description = {
      "Reads a farm folder and lists every fault with its file, line and column.",
      "Without faults, lists doubts: what is allowed but odd, and what follows from it."
    },
    exitCodeList = {
      "0:no faults; there may be doubts",
      ExitCodes.FAULT_LINE,
      "2:wrong use, or faults in the files"
    })
final class CheckCommand extends FarmTask {

  @Mixin private ScenarioOptions scenarios;

  @Option(
      names = "--date",
      paramLabel = "YYYY-MM-DD",
      defaultValue = SheetOptions.TODAY,
      description = "Day on which the age of the prices is judged. Default: today.")
  private LocalDate date;

  @Override
  public Integer call() {
    Tables tables = tables();
    try {
      LoadedFarm loaded = load(tables).on(date);
      List<Fault> faults = new ArrayList<>();
      Map<String, LoadedFarm> changed = scenarios.read(folder(), tables, faults);
      FaultsException.throwIfAny(faults);
      farm(loaded);
      changed.forEach((name, under) -> scenario(name, under.on(date), doubts(loaded)));
      return ExitCodes.DONE;
    } catch (FaultsException faults) {
      err().println("Faults");
      throw faults;
    }
  }

  private void farm(LoadedFarm loaded) {
    Farm farm = loaded.farm();
    print(
        "%s: no faults. %d paddocks, %d ewes joined."
            .formatted(farm.name(), farm.paddocks().size(), farm.ewesJoined()));
    out().println();
    List<Doubt> doubts = doubts(loaded);
    print(doubts.isEmpty() ? "Doubts: none" : "Doubts: check that these are meant");
    doubts(doubts);
    if (!loaded.notices().isEmpty()) {
      out().println();
      print("Left out");
      loaded.notices().forEach(notice -> print("- " + notice));
    }
  }

  /** Doubts about the farm, and about names that a sheet cannot print. */
  private static List<Doubt> doubts(LoadedFarm loaded) {
    return Stream.concat(loaded.doubts().stream(), unprintable(loaded.farm()).stream()).toList();
  }

  private static Optional<Doubt> unprintable(Farm farm) {
    List<String> names =
        Stream.of(
                Stream.of(farm.name(), farm.currency(), farm.supplement().name()),
                farm.paddocks().stream().map(Paddock::name),
                farm.mobs().stream().map(Mob::name),
                farm.otherStock().stream().map(OtherStock::name),
                farm.actions().stream().map(Action::name))
            .flatMap(all -> all)
            .filter(name -> !SheetLetters.lacking(name).isEmpty())
            .distinct()
            .toList();
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Doubt(
                "The sheet cannot print "
                    + SheetLetters.lacking(String.join("", names))
                        .codePoints()
                        .mapToObj(Character::toString)
                        .collect(Collectors.joining(" "))
                    + " in: "
                    + String.join(", ", names)
                    + ".",
                "It prints question marks there. The terminal and the files for other programs keep"
                    + " the names, and on the sheet paddocks can be told apart by their numbers."));
  }

  /** Doubts that the farm has already are not said again. */
  private void scenario(String name, LoadedFarm under, List<Doubt> ofFarm) {
    out().println();
    List<Doubt> own = doubts(under).stream().filter(doubt -> !ofFarm.contains(doubt)).toList();
    String doubts = own.isEmpty() ? ", no further doubts" : ". Doubts: check that these are meant";
    print("Scenario '" + name + "': no faults" + doubts);
    doubts(own);
  }

  private void doubts(List<Doubt> doubts) {
    for (Doubt doubt : doubts) {
      print("- " + doubt.what());
      print("  " + doubt.consequence());
    }
  }
}
