package swardcase.cli;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
import picocli.CommandLine;
import picocli.CommandLine.IFactory;

/**
 * Makes the commands, and gives those that ask questions what is typed. The build names it to
 * picocli's generators of the completion script and the manual pages.
 */
final class Commands implements IFactory {

  private final BufferedReader in;

  /** Commands that read from the terminal. */
  Commands() {
    this(new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset())));
  }

  /** Commands that read from {@code in}. */
  Commands(BufferedReader in) {
    this.in = in;
  }

  @Override
  public <K> K create(Class<K> type) throws Exception {
    return type == StartCommand.class
        ? type.cast(new StartCommand(in))
        : CommandLine.defaultFactory().create(type);
  }
}
