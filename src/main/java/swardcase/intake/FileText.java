package swardcase.intake;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import swardcase.check.ReadLimits;
import swardcase.check.SmallFile;
import swardcase.intake.FaultList.Place;

/** Reads a file of the user as text: UTF-8, with or without a byte order mark. */
final class FileText {

  private FileText() {}

  /** The text of a file of the farm folder, or empty and a fault that says what to do. */
  static Optional<String> find(Path file, FaultList faults) {
    return find(file, file.getFileName().toString(), faults);
  }

  /**
   * The text without byte order mark, or empty and a fault.
   *
   * @param name what the file is called in faults
   */
  static Optional<String> find(Path file, String name, FaultList faults) {
    Place whole = new Place(name, 0, "");
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      faults.add(whole, "must be in the farm folder", "");
      return Optional.empty();
    }
    return SmallFile.find(file, ReadLimits.TEXT_BYTES, rule -> faults.add(whole, rule, ""))
        .flatMap(bytes -> decode(bytes, name, faults));
  }

  private static Optional<String> decode(byte[] bytes, String name, FaultList faults) {
    ByteBuffer input = ByteBuffer.wrap(bytes);
    try {
      String text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(input)
              .toString();
      return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
    } catch (CharacterCodingException notUtf8) {
      int line = 1;
      for (int i = 0; i < input.position() && i < bytes.length; i++) {
        line += bytes[i] == '\n' ? 1 : 0;
      }
      faults.add(
          new Place(name, line, ""),
          "must be UTF-8 text: save it again as UTF-8 (in a spreadsheet, 'CSV UTF-8')",
          "");
      return Optional.empty();
    }
  }
}
