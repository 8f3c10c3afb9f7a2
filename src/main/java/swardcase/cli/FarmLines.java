package swardcase.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.Optional;
import swardcase.check.ReadLimits;

/** Lines of standard input, counted, none of them longer than a farm can be. */
final class FarmLines {

  /** What stands in place of a line that is too long to be held. */
  static final String TOO_LONG = "must not be longer than 1,000,000 characters";

  private static final int MOST = ReadLimits.TEXT_BYTES;

  private final BufferedReader in;
  private long read;

  FarmLines(BufferedReader in) {
    this.in = in;
  }

  /** How many lines were read. */
  long read() {
    return read;
  }

  /** The next line without white space at its ends, or empty behind the last. */
  Optional<String> next() throws IOException {
    StringBuilder line = new StringBuilder();
    boolean tooLong = false;
    int character = in.read();
    if (character < 0) {
      return Optional.empty();
    }
    for (; character >= 0 && character != '\n'; character = in.read()) {
      tooLong |= line.length() == MOST;
      if (!tooLong) {
        line.append((char) character);
      }
    }
    read++;
    return Optional.of(tooLong ? TOO_LONG : line.toString().strip());
  }
}
