package swardcase.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;
import swardcase.decision.Decision;
import swardcase.decision.HowSure;

/** How the uncertain numbers are drawn. */
final class DrawOptions {

  private static final int MOST_DRAWS = 100_000;

  @Spec(Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--draws",
      paramLabel = "N",
      defaultValue = "" + HowSure.USUAL_DRAWS,
      description = "Draws of the uncertain numbers, a multiple of 20. Default: ${DEFAULT-VALUE}.")
  private int draws;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "" + HowSure.USUAL_SEED,
      description =
          "Where the draws start: the same seed, the same sheet. Default: ${DEFAULT-VALUE}.")
  private long seed;

  /** Refuses a number of draws that cannot be used. */
  void check() {
    if (draws < MOST_DRAWS / 1000 || draws > MOST_DRAWS || draws % HowSure.BLOCKS != 0) {
      throw new ParameterException(
          spec.commandLine(),
          "--draws must be a multiple of %d from %d to %d, but was %d"
              .formatted(HowSure.BLOCKS, MOST_DRAWS / 1000, MOST_DRAWS, draws));
    }
  }

  /** Draws them for a decision without saying how far it is. */
  HowSure quietly(Decision decision) {
    return HowSure.of(decision, seed, draws, done -> {});
  }

  /** Draws them for a decision. */
  HowSure of(Decision decision) {
    Progress progress = new Progress(spec.commandLine().getErr());
    HowSure howSure = HowSure.of(decision, seed, draws, progress);
    progress.end();
    return howSure;
  }
}
