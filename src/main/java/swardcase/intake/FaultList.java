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
import swardcase.check.ReadLimits;
import swardcase.intake.YamlNode.Spot;

/** Collects the faults of all files, so that the user sees them together. */
final class FaultList {

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
    count++;
    if (faults.size() < ReadLimits.FAULTS) {
      boolean few = faults.size() < ReadLimits.NEAREST;
      String nearest = few ? NearestName.find(found, names).orElse("") : "";
      faults.add(new Fault(place.file(), place.line(), place.column(), rule, found, nearest));
    }
  }

  void addAll(Collection<Fault> more) {
    count += more.size();
    more.stream().limit(ReadLimits.FAULTS - faults.size()).forEach(faults::add);
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
}
