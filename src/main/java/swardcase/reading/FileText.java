package swardcase.reading;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import swardcase.check.ReadLimits;
import swardcase.reading.Node.Spot;

/** Reads a file of the user as text: UTF-8, with or without a byte order mark. */
public final class FileText {

  private FileText() {}

  /**
   * The text without byte order mark, or empty and a fault that says what to do. No more is read
   * than may be, even if the file grows meanwhile.
   *
   * @param name what the file is called in faults
   */
  public static Optional<String> find(Path file, String name, Faults faults) {
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      faults.add(name, "must be there");
      return Optional.empty();
    }
    try {
      Optional<String> refusal = refusal(file, ReadLimits.TEXT_BYTES);
      if (refusal.isPresent()) {
        faults.add(name, refusal.get());
        return Optional.empty();
      }
      try (InputStream in = Files.newInputStream(file)) {
        byte[] bytes = in.readNBytes(ReadLimits.TEXT_BYTES + 1);
        if (bytes.length <= ReadLimits.TEXT_BYTES) {
          return decode(bytes, name, faults);
        }
        faults.add(name, tooLarge(ReadLimits.TEXT_BYTES));
      }
    } catch (IOException unreadable) {
      faults.add(name, "must be readable");
    }
    return Optional.empty();
  }

  /** Why a file cannot be read, as the rule it breaks: a device and a pipe are no files. */
  public static Optional<String> refusal(Path file, int mostBytes) throws IOException {
    if (!Files.isRegularFile(file)) {
      return Optional.of("must be a file");
    }
    return Files.size(file) > mostBytes ? Optional.of(tooLarge(mostBytes)) : Optional.empty();
  }

  private static String tooLarge(int mostBytes) {
    return "must not be larger than " + mostBytes / 1_000_000 + " MB";
  }

  /** The text of bytes, or empty and a fault in the line that is none. */
  public static Optional<String> decode(byte[] bytes, String name, Faults faults) {
    ByteBuffer input = ByteBuffer.wrap(bytes);
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(input).toString();
      return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
    } catch (CharacterCodingException notUtf8) {
      String before = new String(bytes, 0, input.position(), StandardCharsets.ISO_8859_1);
      int line = 1 + (int) before.chars().filter(sign -> sign == '\n').count();
      String rule = "must be UTF-8 text: save it again as UTF-8 (in a spreadsheet, 'CSV UTF-8')";
      faults.add(new Spot(name, line), "", rule, "");
      return Optional.empty();
    }
  }
}
