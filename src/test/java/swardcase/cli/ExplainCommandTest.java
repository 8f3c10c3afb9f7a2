package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import picocli.CommandLine;

class ExplainCommandTest {

  private static final String FARM = "src/test/resources/farms/sowing";

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... arguments) {
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out));
    line.setErr(new PrintWriter(err));
    return line.execute(arguments);
  }

  @Test
  void explain_withoutWhat_listsEveryTopic() {
    assertThat(run("explain", FARM)).isZero();
    assertThat(out.toString()).contains(ExplainTopic.keys());
  }

  @ParameterizedTest
  @EnumSource(ExplainTopic.class)
  void explain_ofEveryTopic_printsItsFormulaOrParts(ExplainTopic topic) {
    int code =
        topic.isOfPaddock()
            ? run("explain", FARM, topic.key(), "--paddock", "flat")
            : run("explain", FARM, topic.key());

    assertThat(code).isZero();
    assertThat(out.toString()).contains("  = ");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void explain_atDepthZero_showsNoParts() {
    run("explain", FARM, "growth-lost", "--paddock", "House", "--depth", "0");

    assertThat(out.toString()).contains("moved most by").doesNotContain("  clover share");
  }

  @Test
  void explain_ofWhatIsNotThere_namesTheNearest() {
    assertThat(run("explain", FARM, "plan-gian")).isEqualTo(2);
    assertThat(err.toString()).contains("no number 'plan-gian'; did you mean 'plan-gain'?");

    assertThat(run("explain", FARM, "gain", "--paddock", "Hous")).isEqualTo(2);
    assertThat(err.toString()).contains("no paddock 'Hous'; did you mean 'House'?");

    assertThat(run("explain", FARM, "gain")).isEqualTo(2);
    assertThat(err.toString()).contains("give --paddock and one of: House, Flat");

    assertThat(run("explain", FARM, "lambs", "--paddock", "House")).isEqualTo(2);
    assertThat(err.toString()).contains("of the whole farm");
  }

  @Test
  void check_withDoubts_printsThemApartAndIsDone() {
    assertThat(run("check", "demo-data/mixed-farm")).isZero();
    assertThat(out.toString()).contains("no faults", "Doubts", "Gravel", "Left out");
  }

  @Test
  void check_withFaults_printsThemUnderTheirHeading() {
    assertThat(run("check", "src/test/resources/farms/faulty")).isEqualTo(2);
    assertThat(err.toString()).startsWith("Faults").contains("farm.yaml:3");
  }

  @Test
  void decide_withXlsx_writesTheWorkbookAndSaysSo(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("budget.xlsx");

    assertThat(run("decide", FARM, "--date", "2026-05-01", "--xlsx", file.toString())).isZero();
    assertThat(Files.readAllBytes(file)).startsWith('P', 'K');
    assertThat(out.toString()).contains("Written: " + file);
  }
}
