package swardcase.outcome;

import java.util.Arrays;
import java.util.List;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.farm.SeasonType;
import swardcase.tables.Tables;

/**
 * How often a sowing fails before it takes, in one draw, by paddock and by the year it is begun.
 *
 * <p>A sowing takes if the luck of its paddock and year, a uniform number, lies below its chance.
 * With p the chance of a poor season, r what is left of the chance to take in one, and c the chance
 * of the action as the mean over seasons,
 *
 * <pre>
 *   other seasons  c / (1 - p (1 - r))        poor seasons  r times that, both at most 1
 * </pre>
 *
 * <p>c = 0.8, p = 0.2, r = 0.8: 0.833 in other seasons, 0.667 in poor ones.
 */
final class Sowings {

  private static final String POOR_SEASON = "establishment.poor-season";

  private static final int POOR = SeasonType.POOR.ordinal();

  private final List<Action> actions;
  private final ActionPaths paths;
  private final int years;
  private final int paddocks;
  private final int types;
  private final int poorSeason;
  private final double chanceOfPoor;
  private final int[] failures;

  /** Enters the uncertain number that only a farm with a sowing among its actions has. */
  static void enter(UncertainNumbers.Builder numbers, Farm farm, Tables tables) {
    if (farm.actions().stream().anyMatch(Action::sows)) {
      numbers.add(POOR_SEASON, tables.parameter(POOR_SEASON));
    }
  }

  Sowings(Farm farm, UncertainNumbers numbers, ActionPaths paths) {
    this.paths = paths;
    actions = farm.actions();
    years = farm.finance().horizonYears();
    paddocks = farm.paddocks().size();
    poorSeason = numbers.find(POOR_SEASON).orElse(-1);
    types = farm.feedYear().seasons().size();
    chanceOfPoor = farm.feedYear().seasons().get(POOR).chance().likely();
    failures = new int[paddocks * actions.size() * years];
  }

  /** Every path is a mean over failures. */
  void setMean() {
    Arrays.fill(failures, 0);
  }

  /** Takes a draw. */
  void set(Draw draw) {
    double[] x = draw.numbers;
    for (int a = 0; a < actions.size(); a++) {
      if (!actions.get(a).sows()) {
        continue;
      }
      double mean = paths.establishmentChance(x, a);
      double other = mean / (1 - chanceOfPoor * (1 - x[poorSeason]));
      for (int i = 0; i < paddocks; i++) {
        for (int start = 0; start < years; start++) {
          int year = start + actions.get(a).runDownYears();
          int failed = 0;
          while (failed < ActionPaths.MOST_FAILURES && year + failed < years) {
            int season = draw.seasons[year + failed];
            double chance = season == types ? mean : season == POOR ? x[poorSeason] * other : other;
            if (draw.luck[i][year + failed] < chance) {
              break;
            }
            failed++;
          }
          failures[(i * actions.size() + a) * years + start] = failed;
        }
      }
    }
  }

  /** How often the sowing of an action begun in a year fails; 0 where paths are means. */
  int failures(int paddock, int action, int start) {
    return failures[(paddock * actions.size() + action) * years + start];
  }
}
