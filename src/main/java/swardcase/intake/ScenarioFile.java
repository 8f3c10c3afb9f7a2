package swardcase.intake;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import swardcase.check.FaultsException;
import swardcase.check.ReadLimits;
import swardcase.reading.Faults;
import swardcase.reading.FileText;
import swardcase.reading.Names;
import swardcase.reading.Node.Entries;
import swardcase.reading.Node.Entry;
import swardcase.reading.Node.Spot;
import swardcase.reading.YamlTree;

/**
 * Reads a file of scenarios: below {@code scenarios} the name of each, and below that the keys of
 * {@code farm.yaml} it changes, and {@code paddocks}, with the columns it changes of each paddock.
 */
public final class ScenarioFile {

  private static final String TOP = "scenarios";

  private ScenarioFile() {}

  /**
   * The scenarios in the order of the file.
   *
   * @throws FaultsException with all faults of the file itself; whether the changes fit a farm is
   *     seen when they are laid over it
   */
  public static List<Scenario> read(Path file) {
    Faults faults = new Faults();
    if (!Files.isRegularFile(file)) {
      faults.add(file.toString(), "must be a file of scenarios");
    }
    faults.throwIfAny();
    Optional<String> text = FileText.find(file, file.toString(), faults);
    faults.throwIfAny();
    return parse(file.toString(), text.orElseThrow());
  }

  /**
   * The scenarios of such a text.
   *
   * @param name what it is called in faults
   */
  public static List<Scenario> parse(String name, String text) {
    Faults faults = new Faults();
    List<Scenario> scenarios = new ArrayList<>();
    YamlTree.find(name, text, faults)
        .ifPresent(
            top ->
                below(top.entries(), new Spot(name, 0), faults)
                    .forEach((of, entry) -> add(Names.tidy(of), entry, scenarios, faults)));
    faults.throwIfAny();
    return scenarios;
  }

  /** What stands below the one key of the file. */
  private static Map<String, Entry> below(Map<String, Entry> top, Spot whole, Faults faults) {
    top.forEach(
        (key, entry) -> {
          if (!key.equals(TOP)) {
            String rule = "must stand below 'scenarios:' and the name of a scenario";
            faults.add(entry.at(), "", rule, key, List.of(TOP));
          }
        });
    Entry below = top.get(TOP);
    Spot at = below == null ? whole : below.at();
    if (below == null || !(below.value() instanceof Entries named) || named.entries().isEmpty()) {
      String rule =
          "must have 'scenarios:' with a name for each below it, and below that what it changes";
      faults.add(at, below == null ? "" : TOP, rule, "");
      return Map.of();
    }
    if (named.entries().size() > ReadLimits.SCENARIOS) {
      faults.add(at, TOP, "must not be more than " + ReadLimits.SCENARIOS, "");
      return Map.of();
    }
    return named.entries();
  }

  private static void add(String name, Entry entry, List<Scenario> scenarios, Faults faults) {
    if (Names.find(name, scenarios.stream().map(Scenario::name).toList()).isPresent()) {
      faults.add(entry.at(), TOP, "must be given once", name);
    } else if (!(entry.value() instanceof Entries keys) || keys.entries().isEmpty()) {
      String rule = "must have below it what it changes, such as 'prices:'";
      faults.add(entry.at(), TOP, rule, name);
    } else {
      Entry paddocks = keys.entries().get(Scenario.PADDOCKS);
      if (paddocks != null && !(paddocks.value() instanceof Entries)) {
        String rule = "must have names of paddocks below it";
        faults.add(paddocks.at(), Scenario.PADDOCKS, rule, "");
      }
      scenarios.add(new Scenario(name, entry.at(), keys.entries()));
    }
  }
}
