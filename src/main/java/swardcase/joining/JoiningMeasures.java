package swardcase.joining;

import java.util.Arrays;
import java.util.List;
import swardcase.draws.Measures;
import swardcase.outcome.OutcomeFunction;

/** Every number of the joining plan that is read in each draw, in one flat order. */
final class JoiningMeasures implements Measures {

  private final JoiningCase setting;
  private final List<Grazing> policies;
  private final int mobs;
  private final int paddocks;
  private final GrazingProblem needs;

  JoiningMeasures(JoiningCase setting, List<Grazing> policies) {
    this.setting = setting;
    this.policies = List.copyOf(policies);
    mobs = setting.mobs();
    paddocks = setting.paddocks();
    needs = setting.problem(setting.strength);
  }

  /**
   * Points lost if a mob spends a half-month of the coming year in a paddock: in a year whose break
   * is early the half-month may be green that is dry in most years.
   */
  int points(int mob, int halfMonth, int paddock) {
    return (mob * setting.halfMonths.size() + setting.halfMonths.indexOf(halfMonth)) * paddocks
        + paddock;
  }

  /** Young ewes barren per 100 after a season in a paddock. */
  int barren(int paddock) {
    return mobs * setting.halfMonths.size() * paddocks + paddock;
  }

  /** Formononetin of a paddock's green feed. */
  int greenDose(int paddock) {
    return barren(paddocks) + paddock;
  }

  /** Lambs not marked under a policy. */
  int lambs(int policy) {
    return greenDose(paddocks) + 3 * policy;
  }

  /** Their worth. */
  int money(int policy) {
    return lambs(policy) + 1;
  }

  /** Worth of what a policy saves against the first one, supplement counted. */
  int saved(int policy) {
    return lambs(policy) + 2;
  }

  @Override
  public int size() {
    return lambs(policies.size());
  }

  @Override
  public void read(OutcomeFunction run, double[] numbers, double[] into) {
    double[] strength = new double[paddocks];
    for (int i = 0; i < paddocks; i++) {
      strength[i] = run.greenDose(i);
      into[greenDose(i)] = strength[i];
      into[barren(i)] = YoungEwes.barrenPercent(run, i);
    }
    for (int g = 0; g < mobs; g++) {
      readPoints(run, g, strength, into);
    }
    Losses losses = new Losses(run, setting.halfMonths, setting.joiningDay, setting.ewes, strength);
    double first = 0;
    for (int k = 0; k < policies.size(); k++) {
      Grazing grazing = policies.get(k);
      double money = losses.money(grazing);
      double all = money + needs.boughtMj(grazing) * run.pricePerMj();
      first = k == 0 ? all : first;
      into[lambs(k)] = losses.lambs(grazing);
      into[money(k)] = money;
      into[saved(k)] = first - all;
    }
  }

  private void readPoints(OutcomeFunction run, int mob, double[] strength, double[] into) {
    double[] power = Arrays.stream(strength).map(each -> run.flock(mob).power(each)).toArray();
    for (int p : setting.halfMonths) {
      if (setting.matters(mob, p)) {
        double[] left = run.flock(mob).leftAfterStay(p, setting.joiningDay[mob]);
        double green = run.greenShareOfComingYear(p);
        for (int i = 0; i < paddocks; i++) {
          into[points(mob, p, i)] = 100 * run.flock(mob).lossOfStay(green, power[i], left);
        }
      }
    }
  }
}
