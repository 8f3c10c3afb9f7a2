package swardcase.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The program in a Java machine of its own, which can run out of memory or be killed. */
final class OwnProcess {

  /** It runs for a second or two: a better compiler would cost more than its code brings in. */
  private static final List<String> QUICK =
      List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto");

  private OwnProcess() {}

  /** The program ready to be started with these options of Java and these arguments. */
  static ProcessBuilder of(List<String> java, List<String> arguments) {
    return of(Main.class, java, arguments);
  }

  /** The same for a main method of the tests. */
  static ProcessBuilder of(Class<?> main, List<String> java, List<String> arguments) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(QUICK);
    command.addAll(java);
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
    command.addAll(arguments);
    return new ProcessBuilder(command);
  }

  /** Runs the program on what is typed from a file. */
  static Ran run(Path typed, List<String> java, List<String> arguments)
      throws IOException, InterruptedException {
    Path out = Files.createTempFile("out", ".txt");
    Path err = Files.createTempFile("err", ".txt");
    try {
      Process process =
          of(java, arguments)
              .redirectInput(typed.toFile())
              .redirectOutput(out.toFile())
              .redirectError(err.toFile())
              .start();
      int code = process.waitFor();
      return new Ran(code, Files.readString(out), Files.readString(err));
    } finally {
      Files.delete(out);
      Files.delete(err);
    }
  }
}
