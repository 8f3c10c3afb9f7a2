package swardcase.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import swardcase.chance.Drawn;
import swardcase.chance.Sample;
import swardcase.draws.Alternatives;
import swardcase.draws.Simulation;
import swardcase.tables.ResponseStory;

/**
 * What each story of the response would mean, from the draws that took it, and what is said of each
 * paddock where the stories have other chances: the same draws, each weighed by the new chance of
 * its story over the old.
 */
final class Stories {

  private final double[] chances;
  private final ResponseStory[] ofDraw;
  private final Simulation simulation;

  Stories(Simulation simulation) {
    this.simulation = simulation;
    ofDraw = simulation.stories();
    chances = ResponseStory.chances(simulation.draws().model().tables());
  }

  /** The stories that any draw took, in their order; none for a farm without ewes. */
  List<StoryMeaning> meanings() {
    List<StoryMeaning> meanings = new ArrayList<>();
    if (simulation.draws().model().farm().mobs().isEmpty()) {
      return meanings;
    }
    double[] npv = simulation.npv(Alternatives.PLAN);
    for (ResponseStory story : ResponseStory.values()) {
      double[] gain =
          IntStream.range(0, npv.length)
              .filter(d -> ofDraw[d] == story)
              .mapToDouble(d -> npv[d])
              .toArray();
      if (gain.length > 0) {
        meanings.add(meaning(story, gain));
      }
    }
    return meanings;
  }

  private StoryMeaning meaning(ResponseStory story, double[] gain) {
    double[] sorted = gain.clone();
    Arrays.sort(sorted);
    return new StoryMeaning(
        story,
        simulation.draws().weighing().isPresent()
            ? (double) gain.length / ofDraw.length
            : chances[story.ordinal()],
        gain.length,
        Drawn.of(Sample.mean(gain), Sample.quantile(sorted, 0.05), Sample.quantile(sorted, 0.95)),
        Sample.standardDeviation(gain) / Math.sqrt(gain.length),
        Sample.share(gain, value -> value > 0));
  }

  /**
   * Weight of each draw, 1 on average, with other chances of the stories in their order. A draw of
   * a story that had no chance, because no other could have been, counts as it did.
   */
  double[] weights(double[] otherChances) {
    double[] weight = new double[ofDraw.length];
    Arrays.setAll(
        weight,
        d -> {
          int story = ofDraw[d].ordinal();
          return chances[story] > 0 ? otherChances[story] / chances[story] : 1;
        });
    double mean = Sample.mean(weight);
    Arrays.setAll(weight, d -> weight[d] / mean);
    return weight;
  }
}
