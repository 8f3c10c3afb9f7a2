package swardcase.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Runs commands one after the other in a program of its own, so that its memory can be bounded. */
final class HostileRun {

  private HostileRun() {}

  /**
   * Reads a file with a command a line, its words between tabs, and prints for each a line: the
   * exit code, milliseconds of the processor, and what the command printed.
   */
  public static void main(String[] file) throws IOException {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    for (String command : Files.readAllLines(Path.of(file[0]))) {
      long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      int code = -1;
      String printed;
      try {
        Ran ran = Ran.command((Object[]) command.split("\t"));
        code = ran.code();
        printed = ran.out() + ran.err();
      } catch (Throwable broken) {
        printed = broken.toString();
      }
      long spent = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
      out.println(code + "\t" + spent / 1_000_000 + "\t" + printed.replaceAll("\\R", " | "));
    }
  }
}
