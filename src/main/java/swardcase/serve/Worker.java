package swardcase.serve;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.DoubleConsumer;

/**
 * Does one job at a time, and only the newest: what was asked before is dropped. Whoever asks for
 * what is being done already waits for it.
 */
final class Worker<T> implements AutoCloseable {

  /** A job, which tells how far it is, and lets itself be stopped where it does. */
  interface Job<T> {
    T run(DoubleConsumer progress) throws Exception;
  }

  /** The job was dropped for a newer one, or because somebody said so. */
  static final class Dropped extends RuntimeException {
    private static final long serialVersionUID = 1L;
  }

  private final ExecutorService thread =
      Executors.newSingleThreadExecutor(work -> LocalServer.daemon(work));
  private Task newest = new Task("");

  /** A job with its result, and how far it is. */
  private final class Task extends CompletableFuture<T> {

    private final String key;
    private volatile boolean dropped;
    private volatile double done;

    private Task(String key) {
      this.key = key;
    }

    private void run(Job<T> job) {
      try {
        tell(0);
        complete(job.run(this::tell));
      } catch (Exception | StackOverflowError | OutOfMemoryError failed) {
        completeExceptionally(failed);
      }
    }

    private void tell(double share) {
      if (dropped) {
        throw new Dropped();
      }
      done = share;
    }
  }

  /**
   * The result of a job.
   *
   * @param key jobs of one key have one result
   * @throws Dropped if a newer one came before it was done
   */
  T newest(String key, Job<T> job) throws Exception {
    try {
      return task(key, job).get();
    } catch (ExecutionException failed) {
      throw failed.getCause() instanceof Exception cause ? cause : failed;
    }
  }

  private synchronized Task task(String key, Job<T> job) {
    if (!newest.key.equals(key) || newest.dropped || newest.isDone()) {
      drop();
      Task next = new Task(key);
      newest = next;
      thread.execute(() -> next.run(job));
    }
    return newest;
  }

  /** Drops what is being done. */
  synchronized void drop() {
    newest.dropped = true;
  }

  /** How far the newest job is, 0 to 1. */
  synchronized double done() {
    return newest.done;
  }

  @Override
  public void close() {
    drop();
    thread.shutdownNow();
  }
}
