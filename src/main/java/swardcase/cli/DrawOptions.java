package swardcase.cli;

import java.util.List;
import picocli.CommandLine.Option;
import swardcase.decision.Decision;
import swardcase.draws.Draws;
import swardcase.outcome.FarmModel;
import swardcase.search.FixedChoice;

/** How the uncertain numbers are drawn. */
class DrawOptions extends Options {

  private static final int MOST_DRAWS = 100_000;

  private int draws;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "" + Decision.USUAL_SEED,
      description =
          "Where the draws start: the same seed, the same sheet. Default: ${DEFAULT-VALUE}.")
  private long seed;

  @Option(
      names = "--draws",
      paramLabel = "N",
      defaultValue = "" + Decision.USUAL_DRAWS,
      description = "Draws of the uncertain numbers, a multiple of 20. Default: ${DEFAULT-VALUE}.")
  private void setDraws(int draws) {
    if (draws < MOST_DRAWS / 1000 || draws > MOST_DRAWS || draws % Decision.BLOCKS != 0) {
      throw wrong(
          "--draws must be a multiple of %d from %d to %d, but was %d"
              .formatted(Decision.BLOCKS, MOST_DRAWS / 1000, MOST_DRAWS, draws));
    }
    this.draws = draws;
  }

  final int count() {
    return draws;
  }

  final long seed() {
    return seed;
  }

  /** The draws of a farm. */
  final Draws of(FarmModel model) {
    return Decision.draws(model, seed, draws);
  }

  /** Decides by these draws, and says how far it is. */
  final Decision decide(FarmModel model, List<FixedChoice> fixed) {
    Progress progress = new Progress(err());
    Decision decision = Decision.of(of(model), fixed, progress);
    progress.end();
    return decision;
  }
}
