package swardcase.reading;

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
import swardcase.reading.Node.Spot;

/** Collects the faults of all files, so that the user sees them together. */
public final class Faults {

  private final Set<Fault> faults = new LinkedHashSet<>();
  private int count;

  /** The faults, each once, in the order they were met. */
  public List<Fault> all() {
    return List.copyOf(faults);
  }

  /** A fault of a file as a whole. */
  public void add(String file, String rule) {
    add(new Spot(file, 0), "", rule, "");
  }

  /** A fault at a place; a blank column is a whole line. */
  public void add(Spot at, String column, String rule, String found) {
    add(at, column, rule, found, List.of());
  }

  /** A fault about a name, which offers the nearest of {@code names}. */
  public void add(Spot at, String column, String rule, String found, Collection<String> names) {
    add(at, column, rule, found, () -> NearestName.find(found, names).orElse(""));
  }

  /** A fault with the word that was meant, which is looked for if the fault is among the first. */
  public void add(Spot at, String column, String rule, String found, Supplier<String> nearest) {
    count++;
    if (faults.size() < ReadLimits.FAULTS) {
      String near = faults.size() < ReadLimits.NEAREST ? nearest.get() : "";
      faults.add(new Fault(at.file(), at.line(), column, rule, found, near));
    }
  }

  /** How often a fault was added. */
  public int count() {
    return count;
  }

  /**
   * Makes something of what it reads meanwhile. After a fault, its own or one of its parts, reading
   * goes on with harmless values, and nothing is made; what a record itself refuses becomes a fault
   * at the place.
   */
  public <T> Optional<T> make(Spot at, String column, Supplier<T> maker) {
    int before = count;
    try {
      T made = maker.get();
      return count == before ? Optional.of(made) : Optional.empty();
    } catch (RuntimeException refused) {
      if (count > before) {
        return Optional.empty();
      }
      if (!(refused instanceof IllegalArgumentException)) {
        throw refused;
      }
      add(at, column, refused.getMessage(), "");
      return Optional.empty();
    }
  }

  /** Throws all of them, if there is one. */
  public void throwIfAny() {
    if (!faults.isEmpty()) {
      throw new FaultsException(all());
    }
  }
}
