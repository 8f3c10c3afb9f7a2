package swardcase.cli;

import java.io.PrintWriter;
import java.util.function.DoubleConsumer;

/** A line that counts up, on a terminal only and only for work of more than two seconds. */
final class Progress implements DoubleConsumer {

  private static final long SILENT_NANOS = 2_000_000_000L;

  private final PrintWriter out;
  private final boolean onTerminal = System.console() != null;
  private final long start = System.nanoTime();
  private long shown = -1;

  Progress(PrintWriter out) {
    this.out = out;
  }

  @Override
  public synchronized void accept(double done) {
    long percent = Math.round(100 * done);
    if (onTerminal && percent > shown && System.nanoTime() - start > SILENT_NANOS) {
      shown = percent;
      out.print("\rDrawing: " + percent + " %");
      out.flush();
    }
  }

  /** Clears the line. */
  synchronized void end() {
    if (shown >= 0) {
      out.print("\r" + " ".repeat(20) + "\r");
      out.flush();
    }
  }
}
