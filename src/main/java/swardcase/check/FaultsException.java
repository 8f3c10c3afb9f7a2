package swardcase.check;

import java.util.List;
import java.util.stream.Collectors;

/** Says that what was read cannot be used, and gives every fault at once. */
public final class FaultsException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<Fault> faults;

  /** At least one fault; they are sorted by file, line and column. */
  public FaultsException(List<Fault> faults) {
    super(faults.stream().sorted().map(Fault::message).collect(Collectors.joining("\n")));
    Check.that(!faults.isEmpty(), "there must be a fault");
    this.faults = faults.stream().sorted().toList();
  }

  /** Throws these faults, if there are any. */
  public static void throwIfAny(List<Fault> faults) {
    if (!faults.isEmpty()) {
      throw new FaultsException(faults);
    }
  }

  /** The faults in order of place. */
  public List<Fault> faults() {
    return faults;
  }
}
