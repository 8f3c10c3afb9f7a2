package swardcase.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Says which file could not be written and why, in plain words. */
final class CannotWriteException extends IOException {

  private static final long serialVersionUID = 1L;

  CannotWriteException(Path file, IOException cause) {
    super(
        "Cannot write " + file + ": " + reason(cause) + ". What stood there before still stands.");
    initCause(cause);
  }

  private static String reason(IOException failure) {
    if (failure instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (failure instanceof NoSuchFileException) {
      return "its folder does not exist and cannot be made";
    }
    if (failure instanceof FileAlreadyExistsException) {
      return "a file stands where its folder should be";
    }
    if (failure instanceof FileSystemException file && file.getReason() != null) {
      return file.getReason();
    }
    return failure.getMessage();
  }
}
