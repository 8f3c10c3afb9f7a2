package swardcase.cli;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;

/**
 * Work begun before its result is needed, so that a second core has something to do. What comes of
 * it does not depend on when it is asked for, and neither does the failure.
 */
final class BackgroundWork<T> implements Supplier<T> {

  private final CompletableFuture<T> work;

  private BackgroundWork(CompletableFuture<T> work) {
    this.work = work;
  }

  /** Begins {@code work}, which must not hang on anything that changes meanwhile. */
  static <T> BackgroundWork<T> of(Supplier<T> work) {
    return new BackgroundWork<>(CompletableFuture.supplyAsync(work));
  }

  /** The result, or the failure as if the work had been done here. */
  @Override
  public T get() {
    try {
      return work.join();
    } catch (CompletionException failure) {
      if (failure.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      if (failure.getCause() instanceof Error cause) {
        throw cause;
      }
      throw failure;
    }
  }
}
