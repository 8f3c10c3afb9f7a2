package swardcase.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;
import swardcase.decision.Decision;
import swardcase.report.ComparisonReport;
import swardcase.report.ReportBuilder;

/**
 * Name and version of the program, which the build writes into a resource, and what else decides
 * about the bytes of a result.
 */
final class Version implements IVersionProvider {

  @Override
  public String[] getVersion() {
    return new String[] {
      text(),
      "Result document "
          + ReportBuilder.SCHEMA_VERSION
          + ", comparison "
          + ComparisonReport.SCHEMA_VERSION,
      "Default draws " + Decision.USUAL_DRAWS + ", default seed " + Decision.USUAL_SEED,
      "Java " + System.getProperty("java.version")
    };
  }

  static String text() {
    try (InputStream in = Version.class.getResourceAsStream("version.properties")) {
      Properties properties = new Properties();
      properties.load(in);
      return "Swardcase " + properties.getProperty("version");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
