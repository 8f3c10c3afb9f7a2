package swardcase.chance;

import java.util.stream.BaseStream;

/**
 * Work that processors share. What comes of it does not depend on how many there are.
 *
 * <p>Only a {@link Worker} does all of its own: where several farms are worked on at a time, more
 * threads would gain nothing, and one that runs out of memory could keep all others waiting.
 */
public final class SideBySide {

  private SideBySide() {}

  /** A thread that works on one farm of several. */
  public static final class Worker extends Thread {

    /** A thread for this work. */
    public Worker(Runnable work) {
      super(work);
    }
  }

  /** The same stream, shared among processors unless a worker asks. */
  public static <S extends BaseStream<?, S>> S of(S stream) {
    return Thread.currentThread() instanceof Worker ? stream : stream.parallel();
  }
}
