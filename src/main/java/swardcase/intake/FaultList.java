package swardcase.intake;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import swardcase.check.Fault;
import swardcase.check.FaultsException;
import swardcase.check.NearestName;
import swardcase.check.VisibleText;
import swardcase.intake.YamlNode.Spot;

/** Collects the faults of all files, so that the user sees them together. */
final class FaultList {

  /** Faults beyond this number are not kept: the file is then something else altogether. */
  private static final int MOST = 500;

  private final Set<Fault> faults = new LinkedHashSet<>();
  private int count;

  /** Where something stands: line 0 is the file as a whole, a blank column a whole line. */
  record Place(String file, int line, String column) {

    Place(Spot at, String column) {
      this(at.file(), at.line(), column);
    }
  }

  void add(Place place, String rule, String found) {
    add(place, rule, found, List.of());
  }

  /** A fault about a name, which offers the nearest of {@code names}. */
  void add(Place place, String rule, String found, Collection<String> names) {
    String nearest = NearestName.find(found, names).orElse("");
    addAll(
        List.of(
            new Fault(place.file(), place.line(), place.column(), rule, brief(found), nearest)));
  }

  void addAll(Collection<Fault> more) {
    count += more.size();
    more.stream().limit(MOST - faults.size()).forEach(faults::add);
  }

  /** How many there are, to be handed to {@link #build} later. */
  int count() {
    return count;
  }

  /**
   * Makes a record if its parts were read without a fault since {@code before}; what the record
   * itself refuses becomes a fault at {@code place}.
   */
  <T> Optional<T> build(int before, Place place, Supplier<T> maker) {
    if (count != before) {
      return Optional.empty();
    }
    try {
      return Optional.of(maker.get());
    } catch (IllegalArgumentException refused) {
      add(place, refused.getMessage(), "");
      return Optional.empty();
    }
  }

  void throwIfAny() {
    if (!faults.isEmpty()) {
      throw new FaultsException(List.copyOf(faults));
    }
  }

  /** What stood there, on one line and not longer than a message can bear. */
  private static String brief(String found) {
    String line = VisibleText.of(found).replaceAll("\\s+", " ").strip();
    return line.codePointCount(0, line.length()) <= 60
        ? line
        : line.substring(0, line.offsetByCodePoints(0, 57)) + "...";
  }
}
