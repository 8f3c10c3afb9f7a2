package swardcase.intake;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import swardcase.intake.FaultList.Place;

/** Reads a file of the user as text: UTF-8, with or without a byte order mark. */
final class FileText {

  private static final long MOST_BYTES = 1_000_000;

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
    try {
      if (!Files.isRegularFile(file)) {
        faults.add(new Place(name, 0, ""), "must be in the farm folder", "");
        return Optional.empty();
      }
      if (Files.size(file) > MOST_BYTES) {
        faults.add(new Place(name, 0, ""), "must not be larger than 1 MB", "");
        return Optional.empty();
      }
      return decode(Files.readAllBytes(file), name, faults);
    } catch (IOException unreadable) {
      faults.add(new Place(name, 0, ""), "must be readable", "");
      return Optional.empty();
    }
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
