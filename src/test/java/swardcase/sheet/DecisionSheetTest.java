package swardcase.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import swardcase.report.Report;

class DecisionSheetTest {
  static byte[] bytes(Report report) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    DecisionSheet.write(report, out);
    return out.toByteArray();
  }

  @Test
  void dump() throws IOException {
    Files.createDirectories(Path.of("target/sheets"));
    Files.write(Path.of("target/sheets/twelve.pdf"), bytes(SampleReports.twelvePaddocks()));
    Files.write(Path.of("target/sheets/long.pdf"), bytes(SampleReports.longNames()));
    Files.write(Path.of("target/sheets/many.pdf"), bytes(SampleReports.fourHundredPaddocks()));
    Files.write(Path.of("target/sheets/empty.pdf"), bytes(SampleReports.empty()));
    assertThat(true).isTrue();
  }
}
