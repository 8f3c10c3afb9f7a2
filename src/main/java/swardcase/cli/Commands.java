package swardcase.cli;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.IFactory;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/**
 * Makes the commands, and gives what is typed to those that ask questions, and lines to those that
 * read many farms. The build names it to picocli's generators of the completion script and the
 * manual pages.
 */
final class Commands implements IFactory {

  private final Function<Charset, BufferedReader> in;
  private final Supplier<Tables> tables;

  /** Commands that read from the terminal. */
  Commands() {
    this(TablesLoader.standard()::load);
  }

  /** The same, the program's tables being read already. */
  Commands(Supplier<Tables> tables) {
    this.in = charset -> new BufferedReader(new InputStreamReader(System.in, charset));
    this.tables = tables;
  }

  /** Commands that read from {@code in}. */
  Commands(BufferedReader in) {
    this.in = charset -> in;
    this.tables = TablesLoader.standard()::load;
  }

  /** The command of this name, if it is one of those that answer about one farm. */
  static Optional<Class<?>> find(String name) {
    return switch (name) {
      case "decide" -> Optional.of(DecideCommand.class);
      case "compare" -> Optional.of(CompareCommand.class);
      case "joining" -> Optional.of(JoiningCommand.class);
      case "check" -> Optional.of(CheckCommand.class);
      case "sampling" -> Optional.of(SamplingCommand.class);
      default -> Optional.empty();
    };
  }

  @Override
  public <K> K create(Class<K> type) throws Exception {
    if (type == BatchCommand.class) {
      return type.cast(new BatchCommand(in.apply(StandardCharsets.UTF_8)));
    }
    if (type == FarmOptions.class) {
      return type.cast(new FarmOptions(tables));
    }
    return type == StartCommand.class
        ? type.cast(new StartCommand(in.apply(Charset.defaultCharset())))
        : CommandLine.defaultFactory().create(type);
  }
}
