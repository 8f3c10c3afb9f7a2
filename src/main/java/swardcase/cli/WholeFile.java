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
    Files.createDirectories(target.getParent());
    Path temporary = Files.createTempFile(target.getParent(), ".swardcase", ".part");
    try {
      try (OutputStream to = Files.newOutputStream(temporary)) {
        content.write(to);
      }
      Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(temporary);
    }
  }
}
