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
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import swardcase.folder.CannotWriteException;
import swardcase.folder.Inputs;
import swardcase.folder.WholeFiles;

class WholeFilesTest {

  private static final int SIZE = 50_000;

  /** The number of no process. */
  private static final long NOBODY = 999_999_999_999L;

  @TempDir private Path folder;

  @Test
  void files_beforeTheyAreCommitted_leaveTheOldOnes() throws IOException {
    Path old = Files.writeString(folder.resolve("a.txt"), "old");

    try (WholeFiles files = new WholeFiles(Inputs.NONE)) {
      files.add(old, () -> "new");
      assertThat(old).hasContent("old");
    }

    assertThat(old).hasContent("old");
    assertThat(Ran.below(folder)).containsExactly("a.txt");
  }

  @Test
  void files_committed_replaceTheOldOnes() throws IOException {
    Path old = Files.writeString(folder.resolve("a.txt"), "old");

    try (WholeFiles files = new WholeFiles(Inputs.NONE)) {
      files.add(old, () -> "new");
      files.add(folder.resolve("b/c.txt"), () -> "other");
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
              try (WholeFiles files = new WholeFiles(Inputs.NONE)) {
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
              try (WholeFiles files = new WholeFiles(Inputs.NONE)) {
                files.add(first, () -> "new");
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

    int code = Main.heard(line, line.execute("tables"), () -> false);

    assertThat(code).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(err.toString()).startsWith("Cannot print all of the answer: the disk may be full");
  }

  private static void write(Path file, WholeFiles.Content content) throws IOException {
    try (WholeFiles files = new WholeFiles(Inputs.NONE)) {
      files.add(file, content);
      files.commit();
    }
  }

  @Test
  void file_reachedThroughALink_isStillAnInput() throws IOException {
    Path input = Files.writeString(folder.resolve("input.csv"), "mine");
    Path link = Files.createSymbolicLink(folder.resolve("link.csv"), input);

    try (WholeFiles files = new WholeFiles(new Inputs(List.of(input), List.of()))) {
      assertThatThrownBy(() -> files.add(link, () -> "new"))
          .isInstanceOf(CannotWriteException.class)
          .hasMessageContaining("one of the files that were read");
    }

    assertThat(input).hasContent("mine");
  }

  /** Who looks while a file is replaced finds the old one or the new one. */
  @Test
  void file_replacedManyTimes_isThereAndWholeAtEveryMoment() throws Exception {
    Path file = Files.writeString(folder.resolve("a.txt"), "0".repeat(SIZE));
    AtomicBoolean done = new AtomicBoolean();
    CompletableFuture<Long> looks =
        CompletableFuture.supplyAsync(
            () -> {
              long count = 0;
              for (; !done.get(); count++) {
                assertThat(read(file)).hasSize(SIZE).matches("(.)\\1*");
              }
              return count;
            });

    try {
      for (int i = 1; i <= 500; i++) {
        String text = Integer.toString(i % 10).repeat(SIZE);
        write(file, to -> to.write(text.getBytes(StandardCharsets.UTF_8)));
      }
    } finally {
      done.set(true);
    }

    assertThat(looks.get()).isGreaterThan(100);
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  @Test
  void runs_writingOneFileAtATime_leaveTheFileOfOneOfThem() throws IOException {
    Path file = folder.resolve("a.txt");

    write(
        file,
        to -> {
          to.write("first".getBytes(StandardCharsets.UTF_8));
          to.flush();
          write(file, other -> other.write("second, longer".getBytes(StandardCharsets.UTF_8)));
          assertThat(file).hasContent("second, longer");
          to.write(" whole".getBytes(StandardCharsets.UTF_8));
        });

    assertThat(file).hasContent("first whole");
    assertThat(Ran.below(folder)).containsExactly("a.txt");
  }

  @Test
  void filesOfOthers_besideTheTarget_areNeitherRemovedNorWrittenThroughLinks() throws IOException {
    Path mine = Files.writeString(folder.resolve("mine.txt"), "mine");
    Path own = Files.writeString(folder.resolve(".a.txt.part"), "download");
    Path notes = Files.writeString(folder.resolve(".swardcase-notes.part"), "notes");
    String first = ".swardcase-" + ProcessHandle.current().pid() + "-1.part";
    Files.createSymbolicLink(folder.resolve(first), mine);
    Files.createSymbolicLink(folder.resolve(".swardcase-" + NOBODY + "-1.part"), mine);
    List<String> before = Ran.below(folder);

    write(folder.resolve("a.txt"), to -> to.write('n'));

    assertThat(mine).hasContent("mine");
    assertThat(own).hasContent("download");
    assertThat(notes).hasContent("notes");
    assertThat(Ran.below(folder)).containsAll(before).contains("a.txt").hasSize(before.size() + 1);
  }

  @Test
  void temporaries_ofRunsThatAreOver_areRemovedByTheNextOne() throws Exception {
    Process over = OwnProcess.of(List.of(), List.of("--version")).start();
    over.getInputStream().readAllBytes();
    assertThat(over.waitFor()).isZero();
    Files.writeString(folder.resolve(".swardcase-" + over.pid() + "-1.part"), "half");
    Files.writeString(folder.resolve(".swardcase-" + NOBODY + "-2.part"), "half");
    Path reused = folder.resolve(".swardcase-" + ProcessHandle.current().pid() + "-9.part");
    Files.setLastModifiedTime(Files.writeString(reused, "half"), FileTime.fromMillis(0));

    write(folder.resolve("a.txt"), to -> to.write('n'));

    assertThat(Ran.below(folder)).containsExactly("a.txt");
  }

  @Test
  void temporaries_ofRunsThatWork_areLeft() throws IOException {
    Path alive = folder.resolve(".swardcase-" + ProcessHandle.current().pid() + "-9.part");
    Files.writeString(alive, "half");

    write(folder.resolve("a.txt"), to -> to.write('n'));

    assertThat(alive).hasContent("half");
  }

  /** A process of another machine or container has a number that means nothing here. */
  @Test
  void temporary_lockedByARunElsewhere_isLeft() throws Exception {
    Path elsewhere = Files.writeString(folder.resolve(".swardcase-" + NOBODY + "-1.part"), "half");
    Process holder = OwnProcess.of(Holder.class, List.of(), List.of(elsewhere.toString())).start();
    try {
      assertThat(holder.getInputStream().read()).isEqualTo('L');
      write(folder.resolve("a.txt"), to -> to.write('n'));
      assertThat(elsewhere).hasContent("half");
    } finally {
      holder.destroyForcibly().waitFor();
    }
    write(folder.resolve("a.txt"), to -> to.write('n'));

    assertThat(elsewhere).doesNotExist();
  }

  /** Keeps a file locked until it is killed. */
  static final class Holder {

    private Holder() {}

    /** Takes the file's path, prints a letter when the lock is held. */
    public static void main(String[] arguments) throws IOException {
      try (FileChannel file = FileChannel.open(Path.of(arguments[0]), StandardOpenOption.WRITE);
          FileLock lock = file.lock()) {
        System.out.print(lock.isValid() ? "L" : "-");
        System.out.flush();
        System.in.read();
      }
    }
  }

  @Test
  void files_ofWhichOneCannotBeMoved_areNamedAsWrittenOrNot() throws IOException {
    Path first = folder.resolve("first.txt");
    Path second = folder.resolve("second.txt");
    Path third = Files.writeString(folder.resolve("third.txt"), "old");

    try (WholeFiles files = new WholeFiles(Inputs.NONE)) {
      files.add(first, () -> "new");
      files.add(second, () -> "new");
      files.add(third, () -> "new");
      Files.createDirectory(second);
      assertThatThrownBy(files::commit)
          .isInstanceOf(CannotWriteException.class)
          .hasMessageStartingWith("Cannot write " + second + ": ")
          .hasMessageEndingWith(
              " Written before it: " + first + ". Not written either: " + third + ".");
    }

    assertThat(first).hasContent("new");
    assertThat(third).hasContent("old");
    assertThat(Ran.below(folder)).containsExactly("first.txt", "second.txt", "third.txt");
  }

  @Test
  void file_whereTheFolderOfAnotherShouldBe_isRefused() throws IOException {
    try (WholeFiles files = new WholeFiles(Inputs.NONE)) {
      files.add(folder.resolve("out"), () -> "new");
      assertThatThrownBy(() -> files.add(folder.resolve("out/b.csv"), () -> "new"))
          .hasMessageContaining("another result would stand where its folder should be");
    }
    assertThat(Ran.below(folder)).isEmpty();
  }

  @Test
  void link_toAFileThatIsNotThereYet_leadsToIt() throws IOException {
    Path file = folder.resolve("a.txt");
    Path link = Files.createSymbolicLink(folder.resolve("link.txt"), Path.of("a.txt"));

    write(link, to -> to.write('n'));

    assertThat(link).isSymbolicLink();
    assertThat(file).isRegularFile().hasContent("n");
  }

  @Test
  void link_toItself_isRefused() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("link.txt"), Path.of("link.txt"));

    assertThatThrownBy(() -> write(link, to -> to.write('n')))
        .isInstanceOf(CannotWriteException.class)
        .hasMessageContaining("Cannot write " + link);
  }
}
