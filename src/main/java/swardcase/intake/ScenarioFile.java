package swardcase.intake;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import swardcase.check.FaultsException;
import swardcase.check.ReadLimits;
import swardcase.intake.FaultList.Place;
import swardcase.intake.YamlNode.Entries;
import swardcase.intake.YamlNode.Entry;

/**
 * Reads a file of scenarios: below {@code scenarios} the name of each, and below that the keys of
 * {@code farm.yaml} it changes, and {@code paddocks}, with the columns it changes of each paddock.
 */
public final class ScenarioFile {

  /** The key below which cells of paddocks are changed. */
  static final String PADDOCKS = "paddocks";

  private static final String TOP = "scenarios";

  private ScenarioFile() {}

  /**
   * The scenarios in the order of the file.
   *
   * @throws FaultsException with all faults of the file itself; whether the changes fit a farm is
   *     seen when they are laid over it
   */
  public static List<Scenario> read(Path file) {
    FaultList faults = new FaultList();
    String name = file.toString();
    Place whole = new Place(name, 0, "");
    if (!Files.isRegularFile(file)) {
      faults.add(whole, "must be a file of scenarios", "");
    }
    faults.throwIfAny();
    Optional<String> text = FileText.find(file, name, faults);
    faults.throwIfAny();
    return parse(name, text.orElseThrow());
  }

  /**
   * The scenarios of such a text.
   *
   * @param name what it is called in faults
   */
  public static List<Scenario> parse(String name, String text) {
    FaultList faults = new FaultList();
    List<Scenario> scenarios =
        YamlTree.find(name, text, faults)
            .map(top -> scenarios(top, new Place(name, 0, ""), faults))
            .orElse(List.of());
    faults.throwIfAny();
    return scenarios;
  }

  private static List<Scenario> scenarios(Entries top, Place whole, FaultList faults) {
    top.entries()
        .forEach(
            (key, entry) -> {
              if (!key.equals(TOP)) {
                Place place = new Place(entry.at(), "");
                faults.add(
                    place,
                    "must stand below 'scenarios:' and the name of a scenario",
                    key,
                    List.of(TOP));
              }
            });
    Entry below = top.entries().get(TOP);
    if (below == null || !(below.value() instanceof Entries named) || named.entries().isEmpty()) {
      Place place = below == null ? whole : new Place(below.at(), TOP);
      faults.add(
          place,
          "must have 'scenarios:' with a name for each below it, and below that what it changes",
          "");
      return List.of();
    }
    if (named.entries().size() > ReadLimits.SCENARIOS) {
      String rule = "must not be more than " + ReadLimits.SCENARIOS;
      faults.add(new Place(below.at(), TOP), rule, "");
      return List.of();
    }
    List<Scenario> scenarios = new ArrayList<>();
    named
        .entries()
        .forEach((name, entry) -> find(name, entry, scenarios, faults).ifPresent(scenarios::add));
    return scenarios;
  }

  private static Optional<Scenario> find(
      String typed, Entry entry, List<Scenario> before, FaultList faults) {
    String name = Names.tidy(typed);
    Place place = new Place(entry.at(), TOP);
    if (before.stream().anyMatch(other -> Names.key(other.name()).equals(Names.key(name)))) {
      faults.add(place, "must be given once", name);
      return Optional.empty();
    }
    if (!(entry.value() instanceof Entries changes) || changes.entries().isEmpty()) {
      faults.add(place, "must have below it what it changes, such as 'prices:'", name);
      return Optional.empty();
    }
    Map<String, Entry> keys = new LinkedHashMap<>(changes.entries());
    Entry paddocks = keys.remove(PADDOCKS);
    if (paddocks == null) {
      return Optional.of(
          new Scenario(name, entry.at(), new Entries(entry.at(), keys), Entries.none(entry.at())));
    }
    if (!(paddocks.value() instanceof Entries cells)) {
      faults.add(new Place(paddocks.at(), PADDOCKS), "must have names of paddocks below it", "");
      return Optional.empty();
    }
    return Optional.of(new Scenario(name, entry.at(), new Entries(entry.at(), keys), cells));
  }
}
