package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No file can fill the memory, stop the program or take its time: a limit refuses it in words. */
class HostileFilesTest {

  /** Of the processor, for a file of up to 5 MB. */
  private static final long MOST_MILLISECONDS = 1000;

  @TempDir private Path folder;

  @Test
  void files_madeToDoHarm_areRefusedInASecondAndAHundredMegabytes() throws Exception {
    List<HostileFiles.Case> cases = HostileFiles.write(folder);

    List<String> answers = answers(cases);

    assertThat(answers).hasSameSizeAs(cases);
    SoftAssertions softly = new SoftAssertions();
    for (int i = 0; i < cases.size(); i++) {
      HostileFiles.Case each = cases.get(i);
      String[] answer = answers.get(i).split("\t", 3);
      int code = each.says().equals("no faults") ? ExitCodes.DONE : ExitCodes.BAD_INPUT;
      softly.assertThat(answer[0]).as(each.name()).isEqualTo(String.valueOf(code));
      softly
          .assertThat(Long.parseLong(answer[1]))
          .as("milliseconds of " + each.name())
          .isLessThan(MOST_MILLISECONDS);
      softly
          .assertThat(answer[2])
          .as(each.name())
          .contains(each.says())
          .hasSizeLessThan(200_000)
          .doesNotContain("Exception", "Error", "\tat ", "fault of its own");
    }
    softly.assertAll();
  }

  /** What a program with 100 MB answers to each; lines are missing if it stood still. */
  private List<String> answers(List<HostileFiles.Case> cases)
      throws IOException, InterruptedException {
    Path commands = folder.resolve("commands");
    Files.write(commands, cases.stream().map(each -> String.join("\t", each.arguments())).toList());
    Path answers = folder.resolve("answers");
    Process program =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx100m",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                HostileRun.class.getName(),
                commands.toString())
            .redirectOutput(answers.toFile())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    try {
      program.waitFor(300, TimeUnit.SECONDS);
    } finally {
      program.destroyForcibly();
      // JUnit takes the links to a device and to nothing away with the folder, but warns of them.
      for (String tables : List.of("tables device", "tables link to nothing")) {
        Files.deleteIfExists(folder.resolve(tables).resolve("feed-parameters.csv"));
      }
    }
    return Files.readAllLines(answers);
  }
}
