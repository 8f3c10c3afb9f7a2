package swardcase.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/** Says which file could not be written and why, in plain words. */
final class CannotWriteException extends IOException {

  private static final long serialVersionUID = 1L;

  CannotWriteException(Path file, String reason) {
    this(file, reason, List.of(), List.of());
  }

  CannotWriteException(Path file, IOException cause) {
    this(file, cause, List.of(), List.of());
  }

  /** The same, some files of the run being in their places already and some not. */
  CannotWriteException(Path file, IOException cause, List<Path> written, List<Path> left) {
    this(file, reason(file, cause), written, left);
    initCause(cause);
  }

  private CannotWriteException(Path file, String reason, List<Path> written, List<Path> left) {
    super(
        "Cannot write "
            + file
            + ": "
            + reason
            + ". What stood there before still stands."
            + (written.isEmpty() ? "" : " Written before it: " + names(written) + ".")
            + (left.isEmpty() ? "" : " Not written either: " + names(left) + "."));
  }

  private static String names(List<Path> files) {
    return files.stream().map(Path::toString).collect(Collectors.joining(", "));
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
