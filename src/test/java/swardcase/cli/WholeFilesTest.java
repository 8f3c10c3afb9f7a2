package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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
