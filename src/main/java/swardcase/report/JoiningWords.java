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
import swardcase.wording.Texts;
import swardcase.wording.Words;

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
    return Texts.get(
        "joining.ramsIn",
        mob.joiningStart().getDayOfMonth(),
        mob.joiningStart().getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH),
        Words.exact(mob.joiningWeeks().likely()));
  }

  /** What makes a paddock what it is: leaf test or cultivar, clover share, wet ground. */
  String reason(int paddock) {
    Paddock place = farm.paddocks().get(paddock);
    String why;
    if (place.leafTest().isPresent()) {
      double tested = place.leafTest().get().formononetinPercentOfLeaf();
      why = Texts.get("joining.why.leafTest", Words.exact(tested));
    } else if (plan.isUnknown(paddock)) {
      why = Texts.get("joining.why.unknown");
    } else {
      why = strongest(plan.likely().composition(paddock));
    }
    return Texts.get(
        place.waterlogged() ? "joining.why.wet" : "joining.why.dry",
        why,
        Words.percent(place.cloverShare().likely()));
  }

  /** The cultivar that brings most formononetin, with its share of the clover. */
  private static String strongest(Composition composition) {
    int most = 0;
    for (int c = 1; c < composition.size(); c++) {
      most = brought(composition, c) > brought(composition, most) ? c : most;
    }
    return Texts.get(
        "joining.why.cultivar",
        composition.cultivar(most).name(),
        Words.percent(composition.likelyShare(most)));
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
      return Texts.get("joining.notHere");
    }
    boolean free =
        ewes
            ? isFree(group) || isAnywhere(group, p)
            : IntStream.range(0, farm.mobs().size()).allMatch(this::isFree);
    if (free) {
      return Texts.get(isDry(p) ? "joining.anyDry" : "joining.any");
    }
    List<Integer> order =
        IntStream.range(0, farm.paddocks().size())
            .boxed()
            .filter(i -> days(group, k, i) >= 1)
            .sorted(Comparator.comparing(i -> -plan.share(Policy.PLAN, group, k, i)))
            .toList();
    List<String> stays = new ArrayList<>();
    for (int i : order) {
      String name = farm.paddocks().get(i).name();
      String stay = order.size() == 1 ? name : Texts.get("joining.stay", name, days(group, k, i));
      boolean keptOff = ewes && plan.daysAllowed(group, p, i) == 0;
      stays.add(keptOff ? Texts.get("joining.stay.keptOff", stay) : stay);
    }
    return stays.isEmpty() ? Texts.get("joining.bareGround") : String.join(", ", stays);
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
    return mobs.size() == farm.mobs().size()
        ? Texts.get("joining.allEwes")
        : String.join(", ", mobs);
  }
}
