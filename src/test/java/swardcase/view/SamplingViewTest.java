package swardcase.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import swardcase.intake.FarmFolder;
import swardcase.report.SamplingReportBuilder;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

class SamplingViewTest {

  private final Tables tables = TablesLoader.standard().load();
  private final List<String> lines =
      SamplingView.of(
          SamplingReportBuilder.build(
              FarmFolder.read(Path.of("demo-data", "mixed-farm"), tables).farm(), tables),
          130);

  private String line(String start) {
    return lines.stream().filter(each -> each.startsWith(start)).findFirst().orElseThrow();
  }

  @Test
  void of_paddocks_saysTheCallAndHowOftenItIsWrong() {
    assertThat(line("House")).contains("yes").endsWith("settled");
    assertThat(line("Creek")).contains("no").contains("under 1");
    assertThat(line("Far East")).endsWith("more will not settle it");
  }

  /** A paddock without plants is never called safe, and a first walk is asked for. */
  @Test
  void of_paddockNobodyWalked_asksForAWalk() {
    assertThat(line("Corner")).contains("nobody looked").contains("?").endsWith("50");
  }

  @Test
  void of_anyFarm_namesTheSampleSizes() {
    // 62 and 59: our arithmetic, see the method page of composition.
    assertThat(String.join(" ", lines)).contains("62 plants").contains("59 show");
  }
}
