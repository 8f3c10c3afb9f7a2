package swardcase.serve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(20)
class WorkerTest {

  private static CompletableFuture<String> start(
      Worker<String> worker, String key, Worker.Job<String> job) {
    return CompletableFuture.supplyAsync(
        () -> {
          try {
            return worker.newest(key, job);
          } catch (Worker.Dropped dropped) {
            return "dropped";
          } catch (Exception failure) {
            return failure.getMessage();
          }
        },
        task -> new Thread(task, key).start());
  }

  @Test
  void newest_whileAnOlderOneRuns_dropsTheOlderWhereItTellsItsProgress() throws Exception {
    try (Worker<String> worker = new Worker<>()) {
      CountDownLatch running = new CountDownLatch(1);
      CountDownLatch goOn = new CountDownLatch(1);
      CompletableFuture<String> old =
          start(
              worker,
              "old",
              progress -> {
                running.countDown();
                goOn.await();
                progress.accept(0.5);
                return "old";
              });
      running.await();
      CompletableFuture<String> never = start(worker, "between", progress -> "between");
      while (waiting("between") < 1) {
        Thread.onSpinWait();
      }
      CompletableFuture<String> next = start(worker, "new", progress -> "new");
      while (waiting("new") < 1) {
        Thread.onSpinWait();
      }
      goOn.countDown();

      assertThat(old.get()).isEqualTo("dropped");
      assertThat(never.get()).isEqualTo("dropped");
      assertThat(next.get()).isEqualTo("new");
    }
  }

  @Test
  void newest_ofTheSameKeyWhileItRuns_isWorkedOutOnce() throws Exception {
    try (Worker<String> worker = new Worker<>()) {
      AtomicInteger runs = new AtomicInteger();
      CountDownLatch goOn = new CountDownLatch(1);
      Worker.Job<String> job =
          progress -> {
            runs.incrementAndGet();
            progress.accept(0.25);
            goOn.await();
            return "done";
          };
      CompletableFuture<String> first = start(worker, "key", job);
      while (worker.done() != 0.25) {
        Thread.onSpinWait();
      }
      CompletableFuture<String> second = start(worker, "key", job);
      while (waiting("key") < 2) {
        Thread.onSpinWait();
      }
      goOn.countDown();

      assertThat(first.get()).isEqualTo("done");
      assertThat(second.get()).isEqualTo("done");
      assertThat(runs.get()).isEqualTo(1);
    }
  }

  @Test
  void newest_ofAJobThatFails_failsAsItDid() {
    try (Worker<String> worker = new Worker<>()) {
      assertThatThrownBy(
              () ->
                  worker.newest(
                      "key",
                      progress -> {
                        throw new IllegalArgumentException("as told");
                      }))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessage("as told");
    }
  }

  /** Threads of this name that wait for a result. */
  private static long waiting(String name) {
    return Thread.getAllStackTraces().keySet().stream()
        .filter(thread -> thread.getName().equals(name))
        .filter(thread -> thread.getState() == Thread.State.WAITING)
        .count();
  }
}
