package swardcase.folder;

import java.io.IOException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The one path of a file, whatever links and spellings lead there and whether or not it exists. */
final class RealPath {

  private static final int MOST_LINKS = 40;

  private RealPath() {}

  /**
   * The path without links and dots. Where the file, or folders above it, do not exist, it is where
   * they would be made.
   */
  static Path of(Path file) throws IOException {
    return of(file.toAbsolutePath(), MOST_LINKS);
  }

  private static Path of(Path file, int links) throws IOException {
    if (Files.exists(file)) {
      return file.toRealPath();
    }
    if (file.getParent() == null) {
      return file;
    }
    Path above = of(file.getParent(), links);
    Path here = above.resolve(file.getFileName());
    if (!Files.isSymbolicLink(here)) {
      return here.normalize();
    }
    if (links == 0) {
      throw new FileSystemLoopException(file.toString());
    }
    return of(above.resolve(Files.readSymbolicLink(here)), links - 1);
  }
}
