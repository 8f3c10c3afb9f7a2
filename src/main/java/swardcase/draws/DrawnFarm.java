package swardcase.draws;

import swardcase.chance.CountedRandom;
import swardcase.outcome.Draw;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.tables.ResponseStory;

/**
 * A farm that takes the numbers of one draw after another: the workspace of one thread. What it
 * holds after {@link #set} hangs on the draw alone, not on what it held before.
 */
public final class DrawnFarm {

  /** Draws thrown away for one, at most. */
  static final int MOST = 100;

  private final OutcomeFunction run;
  private final CountedRandom random = new CountedRandom(0);
  private final Draw draw;
  private final int story;
  private int thrownAway;

  /** A workspace for draws of this farm. */
  public DrawnFarm(FarmModel model) {
    run = model.newRun();
    draw = new Draw(model);
    story = model.inputs().find(ResponseStory.KEY).orElse(-1);
  }

  /**
   * The farm in a draw, until the next call. A draw with which the figure of a mob could not have
   * come about is thrown away and drawn anew. If none of {@value #MOST} is possible, ewes do not
   * respond in this draw, for with that any figure can come about. Allocates nothing.
   */
  public OutcomeFunction set(Draws draws, int number) {
    thrownAway = 0;
    draws.fill(number, thrownAway, random, draw);
    run.set(draw);
    while (!run.isPossible() && thrownAway < MOST) {
      thrownAway++;
      draws.fill(number, thrownAway, random, draw);
      run.set(draw);
    }
    if (!run.isPossible()) {
      draw.numbers[story] = ResponseStory.NONE.ordinal();
      run.set(draw);
    }
    return run;
  }

  /** The farm in the same draw with some numbers held, until the next call. */
  public OutcomeFunction with(int[] inputs, double[] held) {
    for (int k = 0; k < inputs.length; k++) {
      draw.numbers[inputs[k]] = held[k];
    }
    run.set(draw);
    return run;
  }

  /** How many draws were thrown away for the last one; {@link #MOST} if none was possible. */
  int thrownAway() {
    return thrownAway;
  }

  /** What was drawn, until the next call. */
  Draw draw() {
    return draw;
  }
}
