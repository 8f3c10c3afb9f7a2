package swardcase.report;

import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.Mob;
import swardcase.farm.Paddock;
import swardcase.joining.JoiningPlan;
import swardcase.joining.JoiningPlan.Policy;
import swardcase.report.JoiningReport.HalfMonth;
import swardcase.sward.Composition;
import swardcase.tables.Cultivar;

/** Words of the joining plan: dates, reasons, moves. */
final class JoiningWords {

  private static final double DRY_SHARE = 0.1;
  private static final double LITTLE = 0.1;

  private final JoiningPlan plan;
  private final Farm farm;

  JoiningWords(JoiningPlan plan) {
    this.plan = plan;
    farm = plan.farm();
  }

  /** First and last day of half-month {@code p}. */
  HalfMonth halfMonth(int p) {
    String month = HalfMonths.month(p).getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    boolean firstHalf = p % 2 == 0;
    int half = plan.daysIn(firstHalf ? p : p - 1);
    int from = firstHalf ? 1 : 1 + half;
    int to = firstHalf ? half : half + plan.daysIn(p);
    return new HalfMonth(from + " " + month, to + " " + month);
  }

  String joining(Mob mob) {
    double weeks = mob.joiningWeeks().likely();
    return "rams in "
        + mob.joiningStart().getDayOfMonth()
        + " "
        + mob.joiningStart().getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH)
        + " for "
        + Words.exact(weeks)
        + " weeks";
  }

  /** What makes a paddock what it is: leaf test or cultivar, clover share, wet ground. */
  String reason(int paddock) {
    Paddock place = farm.paddocks().get(paddock);
    String clover = Words.percent(place.cloverShare().likely()) + " clover";
    String wet = place.waterlogged() ? ", wet ground" : "";
    if (place.leafTest().isPresent()) {
      double tested = place.leafTest().get().formononetinPercentOfLeaf();
      return "leaf test " + Words.exact(tested) + " %, " + clover + wet;
    }
    if (plan.isUnknown(paddock)) {
      return "unknown clover: get a leaf test, " + clover + wet;
    }
    return strongest(plan.likely().composition(paddock)) + ", " + clover + wet;
  }

  /** The cultivar that brings most formononetin, with its share of the clover. */
  private static String strongest(Composition composition) {
    int most = 0;
    for (int c = 1; c < composition.size(); c++) {
      most = brought(composition, c) > brought(composition, most) ? c : most;
    }
    return composition.cultivar(most).name()
        + " "
        + Words.percent(composition.likelyShare(most))
        + " of it";
  }

  private static double brought(Composition composition, int c) {
    Cultivar cultivar = composition.cultivar(c);
    double leaf = cultivar.formononetin().map(value -> value.likely()).orElse(0.0);
    return leaf * composition.likelyShare(c);
  }

  /**
   * Whether a mob can be left to graze as it likes: no paddock is limited to it, and as it grazes
   * now it loses under one ewe in lamb per 100.
   */
  boolean isFree(int mob) {
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
      if (plan.points(mob, p, i).likely() >= LITTLE || !isOpen(mob, p, i)) {
        return false;
      }
    }
    return true;
  }

  /** Whether the feed of a half-month is dry. */
  boolean isDry(int p) {
    return plan.likely().greenShare(p) < DRY_SHARE;
  }

  boolean isOpen(int mob, int p, int paddock) {
    return plan.daysAllowed(mob, p, paddock) == plan.daysIn(p);
  }

  /** Paddocks a group is in, the longest stay first, with days; stays under a day are left out. */
  String where(int group, int k) {
    int p = plan.halfMonths().get(k);
    boolean ewes = group < farm.mobs().size();
    if (!plan.isThere(group, k)) {
      return "not here";
    }
    boolean free =
        ewes
            ? isFree(group) || isAnywhere(group, p)
            : IntStream.range(0, farm.mobs().size()).allMatch(this::isFree);
    if (free) {
      return isDry(p) ? "any paddock (dry feed)" : "any paddock";
    }
    List<Integer> order =
        IntStream.range(0, farm.paddocks().size())
            .boxed()
            .filter(i -> days(group, k, i) >= 1)
            .sorted(Comparator.comparing(i -> -plan.share(Policy.PLAN, group, k, i)))
            .toList();
    List<String> stays = new ArrayList<>();
    for (int i : order) {
      String keptOff = ewes && plan.daysAllowed(group, p, i) == 0 ? ", rated keep off" : "";
      boolean only = order.size() == 1;
      stays.add(
          farm.paddocks().get(i).name()
              + (only ? "" : " " + days(group, k, i) + " d")
              + (keptOff.isEmpty() ? "" : " (" + keptOff.substring(2) + ")"));
    }
    return stays.isEmpty() ? "hold on bare ground" : String.join(", ", stays);
  }

  private long days(int group, int k, int paddock) {
    return Math.round(plan.share(Policy.PLAN, group, k, paddock) * plan.days(k));
  }

  /** The mobs that are kept off a paddock in a half-month: all ewes, names, or nothing. */
  String shutTo(int paddock, int p) {
    List<String> mobs =
        IntStream.range(0, farm.mobs().size())
            .filter(g -> plan.isRated(g, p) && plan.daysAllowed(g, p, paddock) == 0)
            .mapToObj(g -> farm.mobs().get(g).name())
            .toList();
    return mobs.size() == farm.mobs().size() ? "all ewes" : String.join(", ", mobs);
  }
}
