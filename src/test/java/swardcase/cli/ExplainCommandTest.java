package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import picocli.CommandLine;
import swardcase.decision.ExplainTopic;

class ExplainCommandTest {

  @TempDir private static Path sowing;
  private static String farm;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeAll
  static void writeFarm() throws IOException {
    farm = SowingFarm.write(sowing.resolve("farm")).toString();
  }

  private int run(String... arguments) {
    CommandLine line = Main.commandLine();
    line.setOut(new PrintWriter(out));
    line.setErr(new PrintWriter(err));
    return line.execute(arguments);
  }

  @Test
  void explain_withoutWhat_listsEveryTopic() {
    assertThat(run("explain", farm)).isZero();
    assertThat(out.toString()).contains(ExplainTopic.keys());
  }

  @ParameterizedTest
  @EnumSource(ExplainTopic.class)
  void explain_ofEveryTopic_printsItsFormulaOrParts(ExplainTopic topic) {
    int code =
        topic.isOfPaddock()
            ? run("explain", farm, topic.key(), "--draws", "100", "--paddock", "flat")
            : run("explain", farm, topic.key(), "--draws", "100");

    assertThat(code).isZero();
    assertThat(out.toString()).contains("  = ");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void explain_atDepthZero_showsNoParts() {
    run("explain", farm, "growth-lost", "--paddock", "House", "--depth", "0", "--draws", "100");

    assertThat(out.toString())
        .contains("moved most in the draws by")
        .doesNotContain("  clover share");
  }

  @Test
  void explain_ofThePlanGain_printsYearsThatAddUpToTheLastDigit() {
    run("explain", farm, "plan-gain", "--seed", "2", "--draws", "100", "--depth", "1");

    assertThat(out.toString()).startsWith("Means of 100 draws (seed 2)");
    long gain = money("gain of the plan: [^:]*").get(0);
    List<Long> years = money("  year [0-9]+, discounted");
    assertThat(years).hasSizeGreaterThan(5);
    assertThat(years.stream().mapToLong(Long::longValue).sum()).isEqualTo(gain);
  }

  /** Money in lines that begin like this. */
  private List<Long> money(String begins) {
    return Pattern.compile("(?m)^" + begins + ": A\\$ (\u2212?[0-9,]+)")
        .matcher(out.toString())
        .results()
        .map(found -> found.group(1).replace(",", "").replace('\u2212', '-'))
        .map(Long::valueOf)
        .toList();
  }

  @Test
  void explain_ofDrawsThatCannotBe_saysWhich() {
    assertThat(run("explain", farm, "plan-gain", "--draws", "101")).isEqualTo(2);
    assertThat(err.toString()).contains("--draws must be a multiple of 20");
  }

  @Test
  void explain_ofWhatIsNotThere_namesTheNearest() {
    assertThat(run("explain", farm, "plan-gian")).isEqualTo(2);
    assertThat(err.toString()).contains("no number 'plan-gian'; did you mean 'plan-gain'?");

    assertThat(run("explain", farm, "gain", "--paddock", "Hous")).isEqualTo(2);
    assertThat(err.toString()).contains("no paddock 'Hous'; did you mean 'House'?");

    assertThat(run("explain", farm, "gain")).isEqualTo(2);
    assertThat(err.toString()).contains("give --paddock and one of: House, Flat");

    assertThat(run("explain", farm, "lambs", "--paddock", "House")).isEqualTo(2);
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

    assertThat(
            run("decide", farm, "--date", "2026-05-01", "--draws=100", "--xlsx", file.toString()))
        .isZero();
    assertThat(Files.readAllBytes(file)).startsWith('P', 'K');
    assertThat(out.toString()).contains("Written: " + file);
  }
}
