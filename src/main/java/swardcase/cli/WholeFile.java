package swardcase.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * Writes a file whole or not at all: into a temporary file beside it, which then takes its place.
 * If anything fails, what stood there before still stands.
 */
final class WholeFile {

  /** Writes the content. */
  interface Content {
    void write(OutputStream to) throws IOException;
  }

  private WholeFile() {}

  static void write(Path file, String text) throws IOException {
    write(file, to -> to.write(text.getBytes(StandardCharsets.UTF_8)));
  }

  static void write(Path file, Content content) throws IOException {
    Path target = file.toAbsolutePath();
    Path temporary = target.resolveSibling("." + target.getFileName() + ".part");
    try {
      Files.createDirectories(target.getParent());
      try (OutputStream to = Files.newOutputStream(temporary)) {
        content.write(to);
      }
      Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException failure) {
      deleteQuietly(temporary);
      throw new CannotWriteException(file, failure);
    }
  }

  /** What could not be cleaned up must not hide why the writing failed. */
  private static void deleteQuietly(Path temporary) {
    try {
      Files.deleteIfExists(temporary);
    } catch (IOException ignored) {
      // The failure that led here is the one to report.
    }
  }
}
