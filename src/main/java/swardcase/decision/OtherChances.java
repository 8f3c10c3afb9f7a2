package swardcase.decision;

import java.util.List;
import java.util.Optional;

/**
 * What is said of the paddocks where the stories of the response have other chances.
 *
 * @param none chance that doses at pasture do nothing, 0 to 1
 * @param trial chance of the dosed trial
 * @param outbreaks chance of the outbreaks
 * @param changed paddocks of which something else is said
 */
public record OtherChances(double none, double trial, double outbreaks, List<Changed> changed) {

  /**
   * A paddock of which something else is said.
   *
   * @param paddock its place
   * @param verdict what to do
   * @param sure whether the plan's change is sure; empty where it changes nothing
   */
  public record Changed(int paddock, Verdict verdict, Optional<Boolean> sure) {}
}
