package swardcase.outcome;

import java.util.Arrays;
import swardcase.reproduction.DryEweSale;
import swardcase.reproduction.FlockEffect;

/**
 * What a plan brings, the base, and what it brings with other choices for one or two places. Years
 * before a change are those of the base; in the others what the place adds is put in place of what
 * it added, so that the time taken does not grow with the paddocks. A change that changes nothing
 * gives the base to the last bit.
 */
final class PlanChanges {

  private static final int NONE = -1;

  private final ChoiceSums choices;
  private final YearMoney money;
  private final FlockEffect[] flock;
  private final DryEweSale[] dryEweSale;
  private final int years;
  private final int sums;
  private final int withoutBins;
  private final double[] discount;
  private final double[] baseSums;
  private final double[] baseNpv;
  private final double[] added;
  private final double[] exchanged;
  private final OwnYears own;
  private final OwnYears ownOfSecond;
  private final EndValues endValues;
  private final Outcome baseYears;
  private final Outcome scratch;
  private Plan plan;
  private double baseEnd;

  /** Value now of what a place is worth beyond the horizon for a choice. */
  interface EndValues {
    double now(int place, int action);
  }

  PlanChanges(
      FarmModel model,
      ChoiceSums choices,
      YearMoney money,
      FlockEffect[] flock,
      DryEweSale[] dryEweSale,
      double[] discount,
      EndValues endValues) {
    this.choices = choices;
    this.money = money;
    this.flock = flock;
    this.dryEweSale = dryEweSale;
    this.discount = discount;
    this.endValues = endValues;
    years = model.years();
    sums = choices.sums();
    withoutBins = YearSums.bins(flock.length);
    baseSums = new double[years * sums];
    baseNpv = new double[years + 1];
    added = new double[sums];
    exchanged = new double[sums];
    own = new OwnYears();
    ownOfSecond = new OwnYears();
    baseYears = model.newOutcome();
    scratch = model.newOutcome();
  }

  /** What the base's own choice for a place adds in every year, kept for the next change of it. */
  private final class OwnYears {

    private final double[] added = new double[years * sums];
    private int of = NONE;

    double[] of(int place) {
      if (of != place) {
        choices.fill(added, place, plan.action(place), plan.start(place));
        of = place;
      }
      return added;
    }
  }

  /** Forgets the base, whose run is over. */
  void forget() {
    plan = null;
  }

  /** Makes a plan the base, and returns its net present value. */
  double setBase(Plan of) {
    plan = of;
    own.of = NONE;
    ownOfSecond.of = NONE;
    fillSums(of);
    double end = 0;
    for (int i = 0; i < of.paddocks(); i++) {
      end += endValues.now(i, of.action(i));
    }
    baseEnd = end;
    for (int t = 0; t < years; t++) {
      money.evaluate(t, baseSums, t * sums, baseYears);
      baseNpv[t + 1] = baseNpv[t] + discount[t] * baseYears.net(t);
    }
    for (int g = 0; g < flock.length; g++) {
      flock[g].keepYears();
      dryEweSale[g].keepYears();
    }
    baseYears.setEnd(end / discount[years - 1], baseNpv[years] + end);
    return baseYears.npv();
  }

  /** Years before the first action are as if everything were kept. */
  private void fillSums(Plan of) {
    int first = years;
    for (int i = 0; i < of.places(); i++) {
      first = Math.min(first, choices.begins(i, of.action(i), of.start(i)));
    }
    for (int t = 0; t < first; t++) {
      System.arraycopy(choices.kept(), 0, baseSums, t * sums, sums);
    }
    Arrays.fill(baseSums, first * sums, baseSums.length, 0);
    for (int i = 0; i < of.places(); i++) {
      for (int t = first; t < years; t++) {
        choices.add(baseSums, t * sums, t, i, of.action(i), of.start(i), true);
      }
    }
  }

  /** What the base brings, shares of clover with nothing. */
  Outcome base() {
    return baseYears;
  }

  /** Net present value with another choice for one place, in money. */
  double npvWith(int place, int action, int start) {
    int first = firstChanged(place, action, start);
    return evaluate(first, place, action, start, scratch) + baseEnd + endValueChange(place, action);
  }

  /** The same, and fills {@code out} with what comes of it, shares of clover with nothing. */
  double evaluateWith(int place, int action, int start, Outcome out) {
    int first = firstChanged(place, action, start);
    out.copy(baseYears, first);
    out.clearShares();
    double end = baseEnd + endValueChange(place, action);
    double npv = evaluate(first, place, action, start, out) + end;
    out.setEnd(end / discount[years - 1], npv);
    return npv;
  }

  /** Present value of the years, of which those from the first changed one on are filled in. */
  private double evaluate(int first, int place, int action, int start, Outcome out) {
    double npv = resumeFrom(first);
    int used = used(choices.isRule(place));
    double[] ofOwn = own.of(place);
    for (int t = first; t < years; t++) {
      add(t, place, action, start, used);
      for (int k = 0, at = t * sums; k < used; k++, at++) {
        exchanged[k] = baseSums[at] + (added[k] - ofOwn[at]);
      }
      money.evaluate(t, exchanged, 0, out);
      npv += discount[t] * out.net(t);
    }
    return npv;
  }

  /** Net present value with other choices for two places, which must not be the same one. */
  double npvWith(int one, int actionOne, int startOne, int two, int actionTwo, int startTwo) {
    int first =
        Math.min(firstChanged(one, actionOne, startOne), firstChanged(two, actionTwo, startTwo));
    double npv = resumeFrom(first);
    int used = used(choices.isRule(Math.max(one, two)));
    double[] ofOne = own.of(one);
    double[] ofTwo = ownOfSecond.of(two);
    for (int t = first; t < years; t++) {
      add(t, one, actionOne, startOne, used);
      for (int k = 0, at = t * sums; k < used; k++, at++) {
        exchanged[k] = baseSums[at] + (added[k] - ofOne[at]);
      }
      add(t, two, actionTwo, startTwo, used);
      for (int k = 0, at = t * sums; k < used; k++, at++) {
        exchanged[k] += added[k] - ofTwo[at];
      }
      money.evaluate(t, exchanged, 0, scratch);
      npv += discount[t] * scratch.net(t);
    }
    return npv + baseEnd + endValueChange(one, actionOne) + endValueChange(two, actionTwo);
  }

  /**
   * Net present value with other yearly sums of one paddock, worth as kept at last.
   *
   * @param stage its sums, as {@link ChoiceSums#fill} has them
   * @param first no year before this differs from the base
   */
  double npvWith(int paddock, double[] stage, int first, int keep) {
    double npv = resumeFrom(first);
    int used = used(false);
    double[] ofOwn = own.of(paddock);
    for (int t = first; t < years; t++) {
      for (int k = 0, at = t * sums; k < used; k++, at++) {
        exchanged[k] = baseSums[at] + (stage[at] - ofOwn[at]);
      }
      money.evaluate(t, exchanged, 0, scratch);
      npv += discount[t] * scratch.net(t);
    }
    return npv + baseEnd + endValueChange(paddock, keep);
  }

  /** What a choice adds in a year. */
  private void add(int t, int place, int action, int start, int used) {
    Arrays.fill(added, 0, used, 0);
    choices.add(added, 0, t, place, action, start, used == sums);
  }

  /** The first year that another choice on a paddock may change. */
  int firstChanged(int place, int action, int start) {
    return Math.min(
        choices.begins(place, action, start),
        choices.begins(place, plan.action(place), plan.start(place)));
  }

  /** Goes to a year of the base, and gives the value of those before. */
  private double resumeFrom(int year) {
    for (int g = 0; g < flock.length; g++) {
      flock[g].resumeFrom(year);
      dryEweSale[g].resumeFrom(year);
    }
    return baseNpv[year];
  }

  /**
   * How many of a year's sums count for a change: the classes of strength, which stand last, do
   * only where mobs graze in order or may come to.
   */
  private int used(boolean changesARule) {
    return changesARule || isInOrder() ? sums : withoutBins;
  }

  /** Whether mobs graze in order in the base. */
  boolean isInOrder() {
    return plan.choice(FarmRule.IN_ORDER) > 0;
  }

  private double endValueChange(int place, int action) {
    return endValues.now(place, action) - endValues.now(place, plan.action(place));
  }
}
