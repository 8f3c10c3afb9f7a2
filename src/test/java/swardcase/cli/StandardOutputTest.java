package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is printed, in a process of its own. */
class StandardOutputTest {

  @TempDir private Path folder;
  private Path farm;

  @BeforeEach
  void writeFarm() throws IOException {
    farm = SmallFarm.write(folder.resolve("farm"));
  }

  /** A run whose reader goes at once: what it says on standard error, after its exit code. */
  private static String withoutReader(List<String> arguments) throws Exception {
    Process run = OwnProcess.of(List.of(), arguments).start();
    run.getOutputStream().close();
    run.getInputStream().close();
    String err = new String(run.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(run.waitFor(1, TimeUnit.MINUTES)).isTrue();
    return run.exitValue() + " " + err;
  }

  @Test
  void decide_whoseReaderHasReadEnough_isDoneAndItsFilesAreWritten() throws Exception {
    Path json = folder.resolve("result.json");

    String said =
        withoutReader(List.of("decide", farm.toString(), "--draws=100", "--json", json.toString()));

    assertThat(said).isEqualTo("0 ");
    assertThat(json).isNotEmptyFile();
  }

  @Test
  void help_whoseReaderHasReadEnough_isDone() throws Exception {
    assertThat(withoutReader(List.of("decide", "--help"))).isEqualTo("0 ");
  }

  @Test
  void faults_whoseReaderHasGone_areStillFaults() throws Exception {
    assertThat(withoutReader(List.of("decide", folder.resolve("none").toString())))
        .startsWith("2 ")
        .contains("1 fault. Nothing was written.");
  }

  @Test
  void answer_ontoAFullDisk_isNotCalledDone() throws Exception {
    Path full = Path.of("/dev/full");
    assumeThat(full).exists();
    Path err = folder.resolve("err.txt");

    int code =
        OwnProcess.of(List.of(), List.of("tables"))
            .redirectOutput(full.toFile())
            .redirectError(err.toFile())
            .start()
            .waitFor();

    assertThat(code).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(Files.readString(err))
        .startsWith("Cannot print all of the answer: the disk may be full.");
  }

  @Test
  void helpAndTables_withColumnsTold_areThatWide() throws Exception {
    for (int columns : new int[] {70, 80, 132}) {
      for (List<String> command :
          List.of(List.of("decide", "--help"), List.of("decide", farm.toString(), "--draws=100"))) {
        ProcessBuilder builder = OwnProcess.of(List.of("-Dfile.encoding=UTF-8"), command);
        builder.environment().put("COLUMNS", Integer.toString(columns));
        builder.environment().put("LC_ALL", "C.UTF-8");
        Process run = builder.start();
        String out = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

        assertThat(run.waitFor()).isZero();
        int widest = Ran.widest(out);
        assertThat(widest).as(columns + ", " + command).isBetween(columns - 32, columns);
      }
    }
  }
}
