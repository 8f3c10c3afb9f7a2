package swardcase.folder;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;

/** Says which file could not be written and why, in plain words. */
public final class CannotWriteException extends IOException {

  private static final long serialVersionUID = 1L;

  CannotWriteException(Path file, String reason) {
    super(message(file, reason));
  }

  CannotWriteException(Path file, IOException cause) {
    this(file, cause, List.of(), List.of());
  }

  /** The same, some files of the run being in their places already and some not. */
  CannotWriteException(Path file, IOException cause, List<Path> written, List<Path> left) {
    super(
        message(file, reason(file, cause))
            + names(" Written before it: ", written)
            + names(" Not written either: ", left),
        cause);
  }

  private static String message(Path file, String reason) {
    return "Cannot write " + file + ": " + reason + ". What stood there before still stands.";
  }

  private static String names(String before, List<Path> files) {
    return files.stream()
        .map(Path::toString)
        .reduce((all, next) -> all + ", " + next)
        .map(all -> before + all + ".")
        .orElse("");
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
    return failure instanceof FileSystemException other && other.getReason() != null
        ? other.getReason()
        : failure.getMessage();
  }
}
