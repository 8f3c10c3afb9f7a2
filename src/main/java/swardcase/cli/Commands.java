package swardcase.cli;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.IFactory;

/**
 * Makes the commands, and gives what is typed to those that ask questions, and lines to those that
 * read many farms. The build names it to picocli's generators of the completion script and the
 * manual pages.
 */
final class Commands implements IFactory {

  private final Function<Charset, BufferedReader> in;

  /** Commands that read from the terminal. */
  Commands() {
    in = charset -> new BufferedReader(new InputStreamReader(System.in, charset));
  }

  /** Commands that read from {@code in}. */
  Commands(BufferedReader in) {
    this.in = charset -> in;
  }

  @Override
  public <K> K create(Class<K> type) throws Exception {
    if (type == BatchCommand.class) {
      return type.cast(new BatchCommand(in.apply(StandardCharsets.UTF_8)));
    }
    return type == StartCommand.class
        ? type.cast(new StartCommand(in.apply(Charset.defaultCharset())))
        : CommandLine.defaultFactory().create(type);
  }
}
