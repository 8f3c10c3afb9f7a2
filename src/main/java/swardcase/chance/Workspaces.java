package swardcase.chance;

import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Workspaces of one job that is done in many tasks at a time: a task borrows one and gives it back,
 * so that there are no more than tasks at a time. They go when the job goes. A thread that outlives
 * the job keeps none of them, as it would if they were its own.
 *
 * @param <W> what a task needs to work with, for one task at a time
 */
public final class Workspaces<W> {

  private final Supplier<W> maker;
  private final Queue<W> free = new ConcurrentLinkedQueue<>();

  /** Workspaces that {@code maker} makes as they are needed. */
  public Workspaces(Supplier<W> maker) {
    this.maker = maker;
  }

  /** What the work gives with a workspace that nobody else has meanwhile. */
  public <R> R with(Function<W, R> work) {
    W borrowed = free.poll();
    W workspace = borrowed == null ? maker.get() : borrowed;
    R result = work.apply(workspace);
    free.add(workspace);
    return result;
  }

  /** Does the work with a workspace that nobody else has meanwhile. */
  public void use(Consumer<W> work) {
    with(
        workspace -> {
          work.accept(workspace);
          return workspace;
        });
  }
}
