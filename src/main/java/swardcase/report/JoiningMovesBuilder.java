package swardcase.report;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import swardcase.farm.Farm;
import swardcase.joining.JoiningPlan;
import swardcase.joining.JoiningPlan.Policy;
import swardcase.report.JoiningReport.GroupMoves;
import swardcase.report.JoiningReport.Move;
import swardcase.report.JoiningReport.Stay;
import swardcase.report.JoiningReport.Where;

/** Where each group goes in each half-month of a joining plan, as far as it has to be told. */
final class JoiningMovesBuilder {

  /** Share of green in the feed below which it is called dry. */
  private static final double DRY_SHARE = 0.1;

  /** Ewes in lamb per 100 joined that are not worth speaking of. */
  private static final double LITTLE = 0.1;

  private final JoiningPlan plan;
  private final Farm farm;

  JoiningMovesBuilder(JoiningPlan plan) {
    this.plan = plan;
    farm = plan.farm();
  }

  List<GroupMoves> all() {
    return IntStream.range(0, plan.groups()).mapToObj(this::moves).toList();
  }

  private GroupMoves moves(int group) {
    String name =
        isMob(group)
            ? farm.mobs().get(group).name()
            : farm.otherStock().get(group - farm.mobs().size()).name();
    return new GroupMoves(
        name,
        isMob(group),
        IntStream.range(0, plan.halfMonths().size()).mapToObj(k -> move(group, k)).toList());
  }

  private boolean isMob(int group) {
    return group < farm.mobs().size();
  }

  private Move move(int group, int k) {
    Where where = where(group, k);
    List<Stay> stays = where == Where.PADDOCKS ? stays(group, k) : List.of();
    double tonnes = plan.boughtMj(group, k) * plan.likely().tonnesPerMj();
    return new Move(
        where == Where.PADDOCKS && stays.isEmpty() ? Where.BARE_GROUND : where,
        stays,
        JoiningReportBuilder.negligible(tonnes));
  }

  private Where where(int group, int k) {
    int p = plan.halfMonths().get(k);
    if (!plan.isThere(group, k)) {
      return Where.NOT_HERE;
    }
    boolean free =
        isMob(group)
            ? isFree(group) || isAnywhere(group, p)
            : IntStream.range(0, farm.mobs().size()).allMatch(this::isFree);
    boolean isClosedSomewhere =
        IntStream.range(0, farm.paddocks().size()).anyMatch(i -> plan.isClosed(group, p, i));
    if (!free || isClosedSomewhere) {
      return Where.PADDOCKS;
    }
    return plan.likely().greenShare(p) < DRY_SHARE ? Where.ANY_DRY_PADDOCK : Where.ANY_PADDOCK;
  }

  /** Paddocks a group is in, the longest stay first; stays under a day are left out. */
  private List<Stay> stays(int group, int k) {
    int p = plan.halfMonths().get(k);
    return IntStream.range(0, farm.paddocks().size())
        .boxed()
        .filter(i -> days(group, k, i) >= 1)
        .sorted(Comparator.comparing(i -> -plan.share(Policy.PLAN, group, k, i)))
        .map(
            i ->
                new Stay(
                    farm.paddocks().get(i).name(),
                    days(group, k, i),
                    isMob(group) && plan.daysAllowed(group, p, i) == 0))
        .toList();
  }

  private long days(int group, int k, int paddock) {
    return Math.round(plan.share(Policy.PLAN, group, k, paddock) * plan.days(k));
  }

  /**
   * Whether a mob can be left to graze as it likes: no paddock is limited to it, and as it grazes
   * now it loses under one ewe in lamb per 100.
   */
  private boolean isFree(int mob) {
    double lost = 100 * plan.ewesNotInLamb(Policy.AS_NOW, mob) / farm.mobs().get(mob).ewes();
    for (int p : plan.halfMonths()) {
      for (int i = 0; i < farm.paddocks().size(); i++) {
        if (plan.isRated(mob, p) && !isOpen(mob, p, i)) {
          return false;
        }
      }
    }
    return lost < 1;
  }

  /** Whether no paddock would cost a mob anything to speak of in a half-month. */
  boolean isAnywhere(int mob, int p) {
    for (int i = 0; i < farm.paddocks().size(); i++) {
      if (plan.points(mob, p, i).mean() >= LITTLE || !isOpen(mob, p, i)) {
        return false;
      }
    }
    return true;
  }

  private boolean isOpen(int mob, int p, int paddock) {
    return plan.daysAllowed(mob, p, paddock) == plan.daysIn(p);
  }
}
