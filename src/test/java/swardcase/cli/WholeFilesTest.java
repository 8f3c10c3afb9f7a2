package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class WholeFilesTest {

  @TempDir private Path folder;

  @Test
  void files_beforeTheyAreCommitted_leaveTheOldOnes() throws IOException {
    Path old = Files.writeString(folder.resolve("a.txt"), "old");

    try (WholeFiles files = new WholeFiles(List.of())) {
      files.add(old, "new");
      assertThat(old).hasContent("old");
    }

    assertThat(old).hasContent("old");
    assertThat(Ran.below(folder)).containsExactly("a.txt");
  }

  @Test
  void files_committed_replaceTheOldOnes() throws IOException {
    Path old = Files.writeString(folder.resolve("a.txt"), "old");

    try (WholeFiles files = new WholeFiles(List.of())) {
      files.add(old, "new");
      files.add(folder.resolve("b/c.txt"), "other");
      files.commit();
    }

    assertThat(old).hasContent("new");
    assertThat(Ran.below(folder)).containsExactly("a.txt", "b", "b/c.txt");
  }

  @Test
  void file_whoseContentFailsHalfway_leavesNoTrace() throws IOException {
    Path old = Files.writeString(folder.resolve("a.txt"), "old");

    assertThatThrownBy(
            () -> {
              try (WholeFiles files = new WholeFiles(List.of())) {
                files.add(
                    old,
                    to -> {
                      to.write(new byte[100_000]);
                      throw new IllegalStateException("half written");
                    });
                files.commit();
              }
            })
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("half written");

    assertThat(old).hasContent("old");
    assertThat(Ran.below(folder)).containsExactly("a.txt");
  }

  @Test
  void file_onAFullDisk_isRefusedInPlainWordsAndTheOldOneStays() throws IOException {
    Path full = Path.of("/dev/full");
    assumeThat(full).exists();
    Path old = Files.writeString(folder.resolve("a.txt"), "old");

    assertThatThrownBy(
            () ->
                write(
                    old,
                    to -> {
                      to.write(1);
                      try (OutputStream disk = Files.newOutputStream(full)) {
                        disk.write(1);
                      }
                    }))
        .isInstanceOf(CannotWriteException.class)
        .hasMessage(
            "Cannot write "
                + old
                + ": No space left on device. What stood there before still stands.");

    assertThat(old).hasContent("old");
    assertThat(Ran.below(folder)).containsExactly("a.txt");
  }

  /** Libraries hand a failing stream on wrapped. */
  @Test
  void file_whoseStreamFailsInsideALibrary_isRefusedLikeAnyOther() throws IOException {
    Path old = Files.writeString(folder.resolve("a.txt"), "old");
    IOException failure = new IOException("Input/output error");

    assertThatThrownBy(
            () ->
                write(
                    old,
                    to -> {
                      throw new UncheckedIOException(failure);
                    }))
        .isInstanceOf(CannotWriteException.class)
        .hasMessageContaining(old + ": Input/output error. What stood there");

    assertThat(old).hasContent("old");
    assertThat(Ran.below(folder)).containsExactly("a.txt");
  }

  @Test
  void files_whoseSecondFails_leaveTheFirstUnwrittenToo() throws IOException {
    Path first = folder.resolve("first.txt");

    assertThatThrownBy(
            () -> {
              try (WholeFiles files = new WholeFiles(List.of())) {
                files.add(first, "new");
                files.add(
                    folder.resolve("second.txt"),
                    to -> {
                      throw new IOException("No space left on device");
                    });
                files.commit();
              }
            })
        .hasMessageContaining("second.txt: No space left on device");

    assertThat(Ran.below(folder)).isEmpty();
  }

  @Test
  void file_inAFolderThatNobodyMayWrite_isRefused() {
    Path nobody = Path.of("/proc");
    assumeThat(nobody).isDirectory();

    assertThatThrownBy(() -> write(nobody.resolve("sheet.pdf"), to -> to.write(1)))
        .isInstanceOf(CannotWriteException.class)
        .hasMessageStartingWith(
            "Cannot write /proc/sheet.pdf: no file can be made in that folder.");
  }

  /** The superuser may write everywhere, so this is seen by others only. */
  @Test
  void file_inAFolderWithoutWriteRight_isRefusedAndTheOldOneStays() throws IOException {
    Path old = Files.writeString(folder.resolve("a.txt"), "old");
    File closed = folder.toFile();
    assumeThat(closed.setWritable(false) && !Files.isWritable(folder)).isTrue();

    try {
      assertThatThrownBy(() -> write(old, to -> to.write(1)))
          .hasMessage(
              "Cannot write " + old + ": permission denied. What stood there before still stands.");
      assertThat(old).hasContent("old");
    } finally {
      assertThat(closed.setWritable(true)).isTrue();
    }
  }

  @Test
  void file_belowAFile_isRefused() throws IOException {
    Path file = Files.writeString(folder.resolve("a.txt"), "old");

    assertThatThrownBy(() -> write(file.resolve("sheet.pdf"), to -> to.write(1)))
        .hasMessageContaining("a file stands where its folder should be");

    assertThat(file).hasContent("old");
  }

  @Test
  void device_isNotReplacedByAFile() throws IOException {
    Path device = Path.of("/dev/null");
    assumeThat(device).exists();

    assertThatThrownBy(() -> write(device, to -> to.write(1)))
        .hasMessageContaining("/dev/null: it is a device or a pipe, not a file");

    assertThat(Files.isRegularFile(device)).isFalse();
  }

  @Test
  void link_toAFile_staysALink() throws IOException {
    Path file = Files.writeString(folder.resolve("a.txt"), "old");
    Path link = Files.createSymbolicLink(folder.resolve("link.txt"), file);

    write(link, to -> to.write('n'));

    assertThat(link).isSymbolicLink();
    assertThat(file).hasContent("n");
  }

  @Test
  void answer_thatCannotBePrinted_isNotCalledDone() {
    CommandLine line = Main.commandLine();
    StringWriter err = new StringWriter();
    line.setErr(new PrintWriter(err, true));
    line.setOut(
        new PrintWriter(
            new Writer() {
              @Override
              public void write(char[] text, int from, int length) throws IOException {
                throw new IOException("No space left on device");
              }

              @Override
              public void flush() {}

              @Override
              public void close() {}
            },
            true));

    int code = Main.heard(line, line.execute("tables"));

    assertThat(code).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(err.toString()).startsWith("Cannot print all of the answer: the disk may be full");
  }

  private static void write(Path file, WholeFiles.Content content) throws IOException {
    try (WholeFiles files = new WholeFiles(List.of())) {
      files.add(file, content);
      files.commit();
    }
  }

  @Test
  void file_reachedThroughALink_isStillAnInput() throws IOException {
    Path input = Files.writeString(folder.resolve("input.csv"), "mine");
    Path link = Files.createSymbolicLink(folder.resolve("link.csv"), input);

    try (WholeFiles files = new WholeFiles(List.of(input))) {
      assertThatThrownBy(() -> files.add(link, "new"))
          .isInstanceOf(CannotWriteException.class)
          .hasMessageContaining("one of the files that were read");
    }

    assertThat(input).hasContent("mine");
  }
}
