package swardcase.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** Name and version of the program, which the build writes into a resource. */
final class Version implements IVersionProvider {

  @Override
  public String[] getVersion() {
    return new String[] {text()};
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
