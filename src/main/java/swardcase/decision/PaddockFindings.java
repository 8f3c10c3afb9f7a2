package swardcase.decision;

import java.util.List;
import java.util.Optional;
import swardcase.sward.StandGate;

/**
 * How sure the answer for a paddock is.
 *
 * @param verdict what to do
 * @param sure whether the plan's change is sure; empty where it changes nothing
 * @param notSure why it is not sure; empty where it is, or where nothing changes
 * @param lookFirst what to look at before the paddock is sown; empty where the plan does not sow it
 * @param nearLine whether the draws lie so near to a line that others may fall on its other side
 * @param courses every choice, keeping first, then the planned one if it is another
 * @param weighed place of the choice that the verdict is about: the planned one, or the one with
 *     most to say against keeping; 0 if nothing else can be done
 * @param sureInstead where the change is not sure, the place of the best choice that is; empty if
 *     that is keeping
 * @param enquiries what can be found out about it: plants, a leaf test, and where neither would
 *     settle whether to make the change the one number that would
 */
public record PaddockFindings(
    Verdict verdict,
    Optional<Boolean> sure,
    Optional<NotSure> notSure,
    List<StandGate.LookFirst> lookFirst,
    boolean nearLine,
    List<CourseFindings> courses,
    int weighed,
    Optional<Integer> sureInstead,
    List<Enquiry> enquiries) {

  /** The choice that the plan makes. */
  public CourseFindings planned() {
    return courses.get(sure.isPresent() ? 1 : 0);
  }
}
