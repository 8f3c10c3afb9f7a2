package swardcase.intake;

import java.util.List;
import swardcase.check.Check;
import swardcase.farm.Farm;

/**
 * A farm and what its reader should tell the user about it.
 *
 * @param farm the farm, every number filled in
 * @param notices what was left out, taken as a default or looks odd, in plain sentences and in a
 *     fixed order
 */
public record LoadedFarm(Farm farm, List<String> notices) {

  /** Checks that nothing is missing. */
  public LoadedFarm {
    Check.notNull(farm, "farm");
    notices = List.copyOf(notices);
  }
}
