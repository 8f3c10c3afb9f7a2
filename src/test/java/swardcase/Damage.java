package swardcase;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

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
    "9999999999999999999",
    "<",
    ">",
    "&",
    "/"
  };

  /** How often a stretch is repeated at most. */
  private static final int MOST_TIMES = 300;

  private Damage() {}

  /** A workbook's archive with one of its parts changed: sound as an archive, whatever is in it. */
  public static byte[] toPartOf(byte[] archive, SplittableRandom random) throws IOException {
    Map<String, byte[]> parts = parts(archive);
    List<String> names = List.copyOf(parts.keySet());
    String damaged = names.get(random.nextInt(names.size()));
    parts.put(damaged, to(parts.get(damaged), random));
    return archive(parts);
  }

  /** The parts of an archive in their order. */
  public static Map<String, byte[]> parts(byte[] archive) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(archive))) {
      for (ZipEntry part = in.getNextEntry(); part != null; part = in.getNextEntry()) {
        parts.put(part.getName(), in.readAllBytes());
      }
    }
    return parts;
  }

  /** An archive without the time of day. */
  public static byte[] archive(Map<String, byte[]> parts) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        ZipEntry entry = new ZipEntry(part.getKey());
        entry.setTimeLocal(LocalDateTime.of(1980, 1, 1, 0, 0));
        out.putNextEntry(entry);
        out.write(part.getValue());
      }
    }
    return bytes.toByteArray();
  }

  /** The bytes, changed at one to three places, now and then by no more than another digit. */
  public static byte[] to(byte[] bytes, SplittableRandom random) throws IOException {
    byte[] changed = bytes;
    for (int times = 1 + random.nextInt(3); times > 0; times--) {
      int at = random.nextInt(changed.length + 1);
      if (random.nextInt(3) == 0) {
        changed = withDigit(changed, at, (byte) ('0' + random.nextInt(10)));
        continue;
      }
      int to = Math.min(changed.length, at + random.nextInt(8));
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      out.write(changed, 0, at);
      switch (random.nextInt(7)) {
        case 0 -> out.write(random.nextInt(256));
        case 1 -> out.write(changed, Math.max(0, at - 40), Math.min(40, at));
        case 2 -> to = random.nextInt(4) == 0 ? changed.length : to;
        case 3 -> {
          int length = Math.min(at, 1 + random.nextInt(40));
          for (int more = random.nextInt(MOST_TIMES); more > 0; more--) {
            out.write(changed, at - length, length);
          }
        }
        default ->
            out.write(PIECES[random.nextInt(PIECES.length)].getBytes(StandardCharsets.UTF_8));
      }
      out.write(changed, to, changed.length - to);
      changed = Arrays.copyOf(out.toByteArray(), out.size());
    }
    return changed;
  }

  /** The bytes with another digit in the place of the next one. */
  private static byte[] withDigit(byte[] bytes, int from, byte digit) {
    byte[] changed = bytes.clone();
    for (int i = from; i < changed.length; i++) {
      if (changed[i] >= '0' && changed[i] <= '9') {
        changed[i] = digit;
        return changed;
      }
    }
    return changed;
  }
}
