package swardcase.outcome;

import java.util.Arrays;
import java.util.List;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.SeasonGrowth;
import swardcase.feed.FeedResult;
import swardcase.feed.FeedSurface;

/** What stock eat in each half-month as the farm states it, and how green it is, in one run. */
final class EatenYear {

  private final List<SeasonGrowth> seasons;
  private final double[][] greenShareOf;
  final double[] greenShare = new double[HalfMonths.COUNT];
  final double[] onOffer = new double[HalfMonths.COUNT];
  final double[] growth = new double[HalfMonths.COUNT];
  final double[] eaten = new double[HalfMonths.COUNT];
  final double[] eatenByEwes = new double[HalfMonths.COUNT];

  EatenYear(Farm farm) {
    seasons = farm.feedYear().seasons();
    greenShareOf = new double[seasons.size()][HalfMonths.COUNT];
  }

  /** Takes the feed of a run: strength of intake counts green whole, dry by its own factor. */
  void set(FeedSurface feed, double dryFactor) {
    for (double[] sum : List.of(greenShare, onOffer, growth, eaten, eatenByEwes)) {
      Arrays.fill(sum, 0);
    }
    for (int season = 0; season < greenShareOf.length; season++) {
      FeedResult now = feed.asStated(season);
      double chance = seasons.get(season).chance().likely();
      for (int p = 0; p < HalfMonths.COUNT; p++) {
        double green = now.eatenGreenKgDmPerHa[p];
        double dry = now.eatenDryKgDmPerHa[p];
        double all = green + dry;
        greenShareOf[season][p] = all > 0 ? (green + dryFactor * dry) / all : 0;
        greenShare[p] += chance * greenShareOf[season][p];
        onOffer[p] += chance * (now.greenKgDmPerHa[p] + now.dryKgDmPerHa[p]);
        growth[p] += chance * now.growthKgDmPerHa[p];
        eaten[p] += chance * all;
        eatenByEwes[p] += chance * all * feed.eweShareOfAppetite(p);
      }
    }
  }

  /** Strength of intake in a half-month of a season type; beyond the last one of their mean. */
  double greenShare(int season, int halfMonth) {
    return season < greenShareOf.length ? greenShareOf[season][halfMonth] : greenShare[halfMonth];
  }
}
