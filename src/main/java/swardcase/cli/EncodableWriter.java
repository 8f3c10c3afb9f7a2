package swardcase.cli;

import java.io.BufferedOutputStream;
import java.io.FilterWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;

/**
 * Writes in the charset of a terminal. A minus sign that the charset does not have becomes a
 * hyphen, because a question mark in its place would read as a gain.
 */
final class EncodableWriter extends FilterWriter {

  private static final char MINUS = '\u2212';

  private final CharsetEncoder encoder;

  EncodableWriter(OutputStream to, Charset charset) {
    super(new OutputStreamWriter(to, charset));
    encoder = charset.newEncoder();
  }

  /** A printer that flushes at every line, in the charset the terminal is known to have. */
  static PrintWriter printer(OutputStream to) {
    String charset = System.getProperty("sun.stdout.encoding", Charset.defaultCharset().name());
    Writer writer = new EncodableWriter(new BufferedOutputStream(to), Charset.forName(charset));
    return new PrintWriter(writer, true);
  }

  @Override
  public void write(int character) throws IOException {
    out.write(character == MINUS && !encoder.canEncode(MINUS) ? '-' : character);
  }

  @Override
  public void write(char[] text, int from, int length) throws IOException {
    write(new String(text, from, length), 0, length);
  }

  @Override
  public void write(String text, int from, int length) throws IOException {
    String part = text.substring(from, from + length);
    out.write(encoder.canEncode(MINUS) ? part : part.replace(MINUS, '-'));
  }
}
