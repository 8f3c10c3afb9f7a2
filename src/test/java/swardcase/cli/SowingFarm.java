package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Stream;

/** A farm that sows; the actions it would not choose are left out, to be quick. */
final class SowingFarm {

  private static final Path SOWING = Path.of("src/test/resources/farms/sowing");

  private SowingFarm() {}

  static Path write(Path folder) throws IOException {
    Files.createDirectories(folder);
    try (Stream<Path> files = Files.list(SOWING)) {
      for (Path file : files.toList()) {
        Files.copy(file, folder.resolve(file.getFileName()));
      }
    }
    StringBuilder actions = new StringBuilder();
    for (String action : List.of("broadcast", "oversow", "crop-1", "crop-2", "crop-3")) {
      actions.append("  ").append(action).append(":\n    considered: no\n");
    }
    Path yaml = folder.resolve("farm.yaml");
    Files.writeString(yaml, actions, StandardOpenOption.APPEND);
    edit(yaml, "oversow:\n    seed", "spray-fallow:\n    seed");
    return folder;
  }

  /** Writes other text into a file that must hold the one it replaces. */
  static void edit(Path file, String from, String to) throws IOException {
    String text = Files.readString(file);
    assertThat(text).contains(from);
    Files.writeString(file, text.replace(from, to));
  }
}
