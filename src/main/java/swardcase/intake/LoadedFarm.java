package swardcase.intake;

import java.util.List;
import java.util.stream.Stream;
import swardcase.check.Check;
import swardcase.farm.Farm;

/**
 * A farm and what its reader should tell the user about it.
 *
 * @param farm the farm, every number filled in
 * @param doubts what is allowed but odd, in a fixed order
 * @param notices what was left out or taken as a default, in plain sentences and in a fixed order
 */
public record LoadedFarm(Farm farm, List<Doubt> doubts, List<String> notices) {

  /** Checks that nothing is missing. */
  public LoadedFarm {
    Check.notNull(farm, "farm");
    doubts = List.copyOf(doubts);
    notices = List.copyOf(notices);
  }

  /** All of it in sentences, doubts first. */
  public List<String> remarks() {
    return Stream.concat(doubts.stream().map(Doubt::sentence), notices.stream()).toList();
  }
}
