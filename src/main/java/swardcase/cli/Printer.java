package swardcase.cli;

import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;

/**
 * Prints lines in the charset of a terminal. A minus sign that the charset does not have becomes a
 * hyphen, because a question mark in its place would read as a gain.
 */
final class Printer extends PrintWriter {

  private static final char MINUS = '\u2212';

  private final boolean hasMinus;

  /** A printer in the charset the terminal is known to have. */
  Printer(OutputStream to) {
    this(
        to,
        Charset.forName(
            System.getProperty("sun.stdout.encoding", Charset.defaultCharset().name())));
  }

  Printer(OutputStream to, Charset charset) {
    super(to, true, charset);
    hasMinus = charset.newEncoder().canEncode(MINUS);
  }

  @Override
  public void write(String text, int from, int length) {
    super.write(hasMinus ? text : text.replace(MINUS, '-'), from, length);
  }
}
