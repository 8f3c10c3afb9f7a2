package swardcase;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.SplittableRandom;

/** Damages files as slips of hand, spreadsheets and broken disks do. */
public final class Damage {

  private static final String[] PIECES = {
    "",
    "\n",
    "\"",
    "'",
    ":",
    "- ",
    "[",
    "]",
    "{",
    "}",
    "&a ",
    "*a",
    "!!int ",
    "---\n",
    "#",
    ",",
    ";",
    "\t",
    "-1",
    "1e400",
    "NaN",
    "null",
    "~",
    "yes",
    "0",
    "|",
    ">",
    "%",
    "@",
    "\u0000",
    "\u0085",
    "\uFEFF",
    "\uD83D\uDC11",
    "? ",
    "<<",
    "unidentified",
    "9999999999999999999"
  };

  private Damage() {}

  /** The bytes, changed at one to three places. */
  public static byte[] to(byte[] bytes, SplittableRandom random) throws IOException {
    byte[] changed = bytes;
    for (int times = 1 + random.nextInt(3); times > 0; times--) {
      int at = random.nextInt(changed.length + 1);
      int to = Math.min(changed.length, at + random.nextInt(8));
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      out.write(changed, 0, at);
      switch (random.nextInt(6)) {
        case 0 -> out.write(random.nextInt(256));
        case 1 -> out.write(changed, Math.max(0, at - 40), Math.min(40, at));
        case 2 -> to = random.nextInt(4) == 0 ? changed.length : to;
        default ->
            out.write(PIECES[random.nextInt(PIECES.length)].getBytes(StandardCharsets.UTF_8));
      }
      out.write(changed, to, changed.length - to);
      changed = Arrays.copyOf(out.toByteArray(), out.size());
    }
    return changed;
  }
}
