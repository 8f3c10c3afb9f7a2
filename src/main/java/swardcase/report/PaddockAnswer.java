package swardcase.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import swardcase.chance.Spread;

/**
 * What to do with a paddock, in short.
 *
 * @param number its place in the farm's file, from 1
 * @param name the paddock
 * @param areaHa hectares
 * @param call what to do
 * @param sure whether the plan's change is sure; empty where the plan changes nothing
 * @param action key of the chosen action
 * @param actionName its name
 * @param start calendar year it starts; empty for keeping
 * @param gain what the plan would lose without its choice here
 */
public record PaddockAnswer(
    int number,
    String name,
    double areaHa,
    Call call,
    Optional<Boolean> sure,
    String action,
    String actionName,
    OptionalInt start,
    Spread gain) {

  static List<PaddockAnswer> of(Report report) {
    return IntStream.range(0, report.paddocks().size())
        .mapToObj(i -> of(i + 1, report.paddocks().get(i)))
        .toList();
  }

  private static PaddockAnswer of(int number, PaddockResult of) {
    return new PaddockAnswer(
        number,
        of.name(),
        of.areaHa(),
        of.call(),
        of.sure(),
        of.action(),
        of.actionName(),
        of.start(),
        of.gain());
  }

  /** Whether the same is to be done, as surely: the action where there is one to do. */
  boolean isLike(PaddockAnswer other) {
    boolean acts = call == Call.ACT || call == Call.KEEP_OFF;
    return call == other.call
        && sure.equals(other.sure)
        && (!acts || actionName.equals(other.actionName));
  }
}
