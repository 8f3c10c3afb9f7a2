package swardcase.farm;

import java.time.Month;
import java.util.List;
import java.util.Optional;
import swardcase.check.Check;
import swardcase.evidence.Assumption;

/**
 * Stock other than joined ewes, by dry sheep equivalents.
 *
 * @param name such as {@code wethers} or {@code steers}
 * @param head how many
 * @param dsePerHead dry sheep equivalents a head
 * @param mostRiskyDays days they may spend on risky green feed within one joining plan, because it
 *     harms them too; empty if they are not limited
 * @param months the months they are on the farm
 * @param mayMove whether they may be put on paddocks that ewes are kept off
 */
public record OtherStock(
    String name,
    int head,
    Assumption dsePerHead,
    Optional<Assumption> mostRiskyDays,
    List<Month> months,
    boolean mayMove) {

  /** Checks ranges. */
  public OtherStock {
    Check.notBlank(name, "name of other stock");
    Check.that(head >= 0, "head of %s must be zero or more, but was %s", name, head);
    Check.inRange(dsePerHead.likely(), 0, 40, "dry sheep equivalents a head of " + name);
    mostRiskyDays.ifPresent(
        days -> Check.inRange(days.likely(), 0, 366, "days on risky green feed of " + name));
    months = List.copyOf(months);
  }
}
