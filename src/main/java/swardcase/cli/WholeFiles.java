package swardcase.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;

/**
 * Files that are written all together or not at all. Each goes into a temporary file beside its
 * place; only when all of them are whole do they take their places.
 */
final class WholeFiles implements AutoCloseable {

  /** Writes the content. */
  interface Content {
    void write(OutputStream to) throws IOException;
  }

  private record Staged(Path file, Path target, Path temporary) {}

  private final List<Path> inputs;
  private final List<Staged> staged = new ArrayList<>();

  /** Files to come, none of which may replace one of {@code inputs}. */
  WholeFiles(List<Path> inputs) {
    this.inputs = List.copyOf(inputs);
  }

  void add(Path file, String text) throws CannotWriteException {
    add(file, to -> to.write(text.getBytes(StandardCharsets.UTF_8)));
  }

  void add(Path file, Content content) throws CannotWriteException {
    try {
      Path target = target(file);
      refuseBadPlace(file, target);
      Files.createDirectories(target.getParent());
      Path temporary = target.resolveSibling("." + target.getFileName() + ".part");
      staged.add(new Staged(file, target, temporary));
      try (OutputStream to = new BufferedOutputStream(Files.newOutputStream(temporary))) {
        content.write(to);
      }
    } catch (CannotWriteException refused) {
      throw refused;
    } catch (IOException failure) {
      throw new CannotWriteException(file, failure);
    } catch (UncheckedIOException failure) {
      throw new CannotWriteException(file, failure.getCause());
    }
  }

  /** The file itself where a link leads to it, so that the link stays. */
  private static Path target(Path file) throws IOException {
    Path target = file.toAbsolutePath().normalize();
    return Files.exists(target) ? target.toRealPath() : target;
  }

  private void refuseBadPlace(Path file, Path target) throws IOException {
    if (Files.isDirectory(target)) {
      throw new CannotWriteException(file, "a folder stands there");
    }
    if (Files.exists(target) && !Files.isRegularFile(target)) {
      throw new CannotWriteException(file, "it is a device or a pipe, not a file");
    }
    for (Path above = target.getParent(); above != null; above = above.getParent()) {
      if (Files.exists(above) && !Files.isDirectory(above)) {
        throw new CannotWriteException(file, "a file stands where its folder should be");
      }
    }
    for (Staged other : staged) {
      if (other.target().equals(target)) {
        throw new CannotWriteException(file, "two results would go into this one file");
      }
    }
    for (Path input : inputs) {
      if (Files.exists(target) && Files.exists(input) && Files.isSameFile(target, input)) {
        throw new CannotWriteException(file, "it is one of the files that were read");
      }
    }
  }

  /** Moves all files to their places. */
  void commit() throws CannotWriteException {
    for (Staged one : staged) {
      try {
        Files.move(one.temporary(), one.target(), StandardCopyOption.REPLACE_EXISTING);
      } catch (IOException failure) {
        throw new CannotWriteException(one.file(), failure);
      }
    }
  }

  /** Removes what was not moved. */
  @Override
  public void close() {
    for (Staged one : staged) {
      try {
        Files.deleteIfExists(one.temporary());
      } catch (IOException ignored) {
        // What could not be cleaned up must not hide why the writing failed.
      }
    }
  }
}
