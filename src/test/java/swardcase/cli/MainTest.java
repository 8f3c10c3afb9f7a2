package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** What the program says when it cannot go on. */
class MainTest {

  @Command
  private record Exhausted(Error error) implements Callable<Integer> {

    @Override
    public Integer call() {
      throw error;
    }
  }

  @Test
  void run_outOfMemory_saysSoWithoutATrace() {
    for (Error error : List.of(new OutOfMemoryError("heap"), new StackOverflowError())) {
      StringWriter err = new StringWriter();
      CommandLine line = new CommandLine(new Exhausted(error));
      line.setErr(new PrintWriter(err, true));

      int code = Main.run(line);

      assertThat(code).isEqualTo(ExitCodes.INTERNAL_FAULT);
      assertThat(err.toString()).startsWith("Swardcase ran out of memory (").hasLineCount(1);
    }
  }
}
