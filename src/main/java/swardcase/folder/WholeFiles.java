package swardcase.folder;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Files that are written all together or not at all. Each goes into a {@linkplain Temporary
 * temporary file} beside its place; only when all of them are whole and on the disk do they take
 * their places, one after the other, each in one step: whoever looks finds the old file or the new
 * one, whole, at any moment and after any crash.
 */
public final class WholeFiles implements AutoCloseable {

  /** Writes the content; what it is given stays open when it closes it. */
  public interface Content {
    void write(OutputStream to) throws IOException;
  }

  private record Staged(Path file, Path target, Temporary temporary) {}

  private final Inputs inputs;
  private final List<Staged> staged = new ArrayList<>();
  private final Set<Path> folders = new LinkedHashSet<>();

  /** Files to come, none of which may stand where {@code inputs} are read. */
  public WholeFiles(Inputs inputs) {
    this.inputs = inputs;
  }

  /** Writes texts into a folder, by the names of their files. */
  public static void write(Path folder, Map<String, String> texts) throws CannotWriteException {
    try (WholeFiles files = new WholeFiles(Inputs.NONE)) {
      for (Map.Entry<String, String> text : texts.entrySet()) {
        files.add(folder.resolve(text.getKey()), text::getValue);
      }
      files.commit();
    }
  }

  /** Adds a text. */
  public void add(Path file, Supplier<String> text) throws CannotWriteException {
    add(file, to -> to.write(text.get().getBytes(StandardCharsets.UTF_8)));
  }

  /** Adds a file; null is none. */
  public void add(Path file, Content content) throws CannotWriteException {
    if (file == null) {
      return;
    }
    try {
      if (Files.exists(file) && !Files.isRegularFile(file)) {
        boolean folder = Files.isDirectory(file);
        throw new CannotWriteException(
            file, folder ? "a folder stands there" : "it is a device or a pipe, not a file");
      }
      // Where a link leads to the file, the link stays.
      Path target = RealPath.of(file);
      refuseBadPlace(file, target);
      Path folder = Files.createDirectories(target.getParent());
      if (folders.add(folder)) {
        Temporary.removeDead(folder);
      }
      Temporary temporary = Temporary.in(folder);
      staged.add(new Staged(file, target, temporary));
      temporary.write(content);
    } catch (CannotWriteException refused) {
      throw refused;
    } catch (IOException failure) {
      throw new CannotWriteException(file, failure);
    } catch (UncheckedIOException failure) {
      throw new CannotWriteException(file, failure.getCause());
    }
  }

  private void refuseBadPlace(Path file, Path target) throws IOException {
    for (Path above = target.getParent(); above != null; above = above.getParent()) {
      if (Files.exists(above) && !Files.isDirectory(above)) {
        throw new CannotWriteException(file, "a file stands where its folder should be");
      }
    }
    for (Staged other : staged) {
      if (other.target().equals(target)) {
        throw new CannotWriteException(file, "two results would go into this one file");
      }
      if (target.startsWith(other.target())) {
        throw new CannotWriteException(
            file, "another result would stand where its folder should be");
      }
    }
    Optional<String> refusal = inputs.refusal(target);
    if (refusal.isPresent()) {
      throw new CannotWriteException(file, refusal.get());
    }
  }

  /**
   * Moves all files to their places. If one cannot be moved, says which were and which were not.
   */
  public void commit() throws CannotWriteException {
    for (int i = 0; i < staged.size(); i++) {
      Staged one = staged.get(i);
      try {
        one.temporary().moveTo(one.target());
      } catch (IOException failure) {
        List<Path> files = staged.stream().map(Staged::file).toList();
        throw new CannotWriteException(
            one.file(), failure, files.subList(0, i), files.subList(i + 1, files.size()));
      }
    }
    folders.forEach(Temporary::keepMoves);
  }

  /** Removes what was not moved. */
  @Override
  public void close() {
    staged.forEach(one -> one.temporary().close());
  }
}
