package swardcase.cli;

import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;
import swardcase.decision.Decision;
import swardcase.draws.Draws;
import swardcase.outcome.FarmModel;
import swardcase.search.FixedChoice;

/** How the uncertain numbers are drawn. */
final class DrawOptions {

  private static final int MOST_DRAWS = 100_000;

  @Spec(Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--draws",
      paramLabel = "N",
      defaultValue = "" + Decision.USUAL_DRAWS,
      description = "Draws of the uncertain numbers, a multiple of 20. Default: ${DEFAULT-VALUE}.")
  private int draws;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "" + Decision.USUAL_SEED,
      description =
          "Where the draws start: the same seed, the same sheet. Default: ${DEFAULT-VALUE}.")
  private long seed;

  /** Refuses a number of draws that cannot be used. */
  void check() {
    if (draws < MOST_DRAWS / 1000 || draws > MOST_DRAWS || draws % Decision.BLOCKS != 0) {
      throw new ParameterException(
          spec.commandLine(),
          "--draws must be a multiple of %d from %d to %d, but was %d"
              .formatted(Decision.BLOCKS, MOST_DRAWS / 1000, MOST_DRAWS, draws));
    }
  }

  int count() {
    return draws;
  }

  long seed() {
    return seed;
  }

  /** The draws of a farm. */
  Draws of(FarmModel model) {
    return Decision.draws(model, seed, draws);
  }

  /** Decides by these draws, and says how far it is. */
  Decision decide(Draws of, List<FixedChoice> fixed) {
    Progress progress = new Progress(spec.commandLine().getErr());
    Decision decision = Decision.of(of, fixed, progress);
    progress.end();
    return decision;
  }
}
