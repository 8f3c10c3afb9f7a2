package swardcase.draws;

import swardcase.chance.CountedRandom;
import swardcase.outcome.Draw;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;

/**
 * A farm that takes the numbers of one draw after another: the workspace of one thread. What it
 * holds after {@link #set} hangs on the draw alone, not on what it held before.
 */
public final class DrawnFarm {

  private final OutcomeFunction run;
  private final CountedRandom random = new CountedRandom(0);
  private final Draw draw;

  /** A workspace for draws of this farm. */
  public DrawnFarm(FarmModel model) {
    run = model.newRun();
    draw = new Draw(model);
  }

  /** The farm in a draw, until the next call. Allocates nothing. */
  public OutcomeFunction set(Draws draws, int number) {
    draws.fill(number, random, draw);
    run.set(draw);
    return run;
  }

  /** What was drawn, until the next call. */
  Draw draw() {
    return draw;
  }
}
