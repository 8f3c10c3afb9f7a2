package swardcase.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Says which file could not be written and why, in plain words. */
final class CannotWriteException extends IOException {

  private static final long serialVersionUID = 1L;

  CannotWriteException(Path file, String reason) {
    super("Cannot write " + file + ": " + reason + ". What stood there before still stands.");
  }

  CannotWriteException(Path file, IOException cause) {
    this(file, reason(file, cause));
    initCause(cause);
  }

  private static String reason(Path file, IOException failure) {
    if (failure instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (failure instanceof NoSuchFileException) {
      return Files.isDirectory(file.toAbsolutePath().getParent())
          ? "no file can be made in that folder"
          : "its folder does not exist and cannot be made";
    }
    if (failure instanceof FileSystemException other && other.getReason() != null) {
      return other.getReason();
    }
    return failure.getMessage();
  }
}
