package swardcase.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine;

/** What a command gave: its exit code and what it printed. */
record Ran(int code, String out, String err) {

  /** Runs the program in this process with its output caught. */
  static Ran command(Object... arguments) {
    return typing("", arguments);
  }

  /** The same with lines typed by the user. */
  static Ran typing(String typed, Object... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line = Main.commandLine(new BufferedReader(new StringReader(typed)));
    line.setUsageHelpAutoWidth(false).setUsageHelpWidth(80);
    line.setOut(new PrintWriter(out, true));
    line.setErr(new PrintWriter(err, true));
    int code = line.execute(Stream.of(arguments).map(String::valueOf).toArray(String[]::new));
    return new Ran(code, out.toString(), err.toString());
  }

  /** Signs of the longest line of a text. */
  static int widest(String text) {
    return text.lines().mapToInt(line -> line.codePointCount(0, line.length())).max().orElse(0);
  }

  /** Paths of all files and folders below a folder, relative to it, sorted. */
  static List<String> below(Path folder) {
    try (Stream<Path> paths = Files.walk(folder)) {
      return paths.skip(1).map(path -> folder.relativize(path).toString()).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
