package swardcase.serve;

import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import swardcase.chance.Spread;
import swardcase.decision.Decision;
import swardcase.decision.PlanGain;
import swardcase.draws.Draws;
import swardcase.outcome.FarmModel;
import swardcase.report.Answer;
import swardcase.report.Report;
import swardcase.report.ReportBuilder;
import swardcase.search.FixedChoice;
import swardcase.search.FixedChoices;

/** Answers, each worked out once and kept for a while. */
final class Answers implements AutoCloseable {

  /** Draws of a rough answer, which is shown while the full one is worked out. */
  static final int ROUGH_DRAWS = 100;

  /** Draws in each block for the plan in hand: few, since it is shown while a slider moves. */
  static final int HAND_DRAWS = 5;

  private static final int MOST_KEPT = 8;

  private final Setup setup;
  private final Disk disk;
  private final Worker<Kept> worker = new Worker<>();
  private final Map<String, Kept> kept =
      Collections.synchronizedMap(
          new LinkedHashMap<>(MOST_KEPT, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<String, Kept> eldest) {
              return size() > MOST_KEPT;
            }
          });

  Answers(Setup setup, Disk disk) {
    this.setup = setup;
    this.disk = disk;
  }

  /**
   * An answer that is kept.
   *
   * @param id names it in requests
   * @param asked the changes it was made with
   * @param read the farm it was made of
   * @param answer the answer
   * @param rough whether it was made with few draws
   * @param inHand its plan in the draws in which it is shown while numbers move
   */
  record Kept(String id, Asked asked, Disk.Read read, Answer answer, boolean rough, Spread inHand) {

    Decision decision() {
      return answer.decision();
    }

    Report report() {
      return answer.report();
    }
  }

  /** An answer by its name, if it is still kept. */
  Optional<Kept> find(String id) {
    return Optional.ofNullable(kept.get(id));
  }

  /** The full answer with these changes, or a rough one. */
  Kept get(Asked asked, boolean rough) throws Exception {
    Disk.Read read = disk.read(asked);
    String id =
        Disk.hash((read.print() + asked + rough).getBytes(StandardCharsets.UTF_8)).substring(0, 16);
    Optional<Kept> ready = find(id);
    return ready.isPresent()
        ? ready.get()
        : worker.newest(
            id,
            progress -> {
              Kept done = decide(id, asked, read, rough, progress);
              kept.put(id, done);
              return done;
            });
  }

  private Kept decide(
      String id, Asked asked, Disk.Read read, boolean rough, DoubleConsumer progress) {
    FarmModel model = new FarmModel(setup.signed().apply(read.farm().farm()), setup.tables());
    List<FixedChoice> fixed =
        FixedChoices.read(asked.typedFixes(), model, ReportBuilder.firstYear(setup.day()));
    Draws draws = Decision.draws(model, setup.seed(), rough ? ROUGH_DRAWS : setup.draws());
    Decision decision =
        rough ? Decision.rough(draws, fixed, progress) : Decision.of(draws, fixed, progress);
    progress.accept(1);
    Answer answer =
        Answer.of(decision, setup.program(), setup.day(), read.farm().remarks(), !rough);
    Draws few = draws.at(model, Decision.BLOCKS, HAND_DRAWS);
    return new Kept(id, asked, read, answer, rough, PlanGain.of(few, decision.plan()));
  }

  /** How far the newest answer is, 0 to 1. */
  double done() {
    return worker.done();
  }

  /** Drops the answer that is being worked out. */
  void drop() {
    worker.drop();
  }

  @Override
  public void close() {
    worker.close();
  }
}
