package swardcase.cli;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import swardcase.serve.LocalServer;
import swardcase.serve.Setup;
import swardcase.tables.Tables;

/** Opens a farm in the browser of the same machine. */
@Command(
    name = "page",
    description = {
      "Opens a farm in the browser of this machine: the answer, what moves it, and what would change"
          + " it. No other machine can reach it.",
      "Prints the address to open. The files of the farm change only when you save. Stop it on the"
          + " page or with Ctrl-C; it stops by itself when nobody looks at it for a while."
    })
final class PageCommand extends FarmTask {

  private static final int MOST_PORT = 65_535;

  @Mixin private SheetOptions sheet;

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "0",
      description = "Port of this machine, 1 to 65535. Default: any that is free.")
  private int port;

  @Option(names = "--open", description = "Open the address in the usual browser.")
  private boolean open;

  @Option(
      names = "--idle",
      paramLabel = "MINUTES",
      defaultValue = "30",
      description =
          "Stop when nobody has looked at the page for so long. Default: ${DEFAULT-VALUE}.")
  private int idleMinutes;

  @Override
  public Integer call() throws IOException {
    refuseUnless(port >= 0 && port <= MOST_PORT, "--port must be from 1 to 65535, but was " + port);
    refuseUnless(idleMinutes >= 1, "--idle must be 1 or more minutes, but was " + idleMinutes);
    Tables tables = tables();
    Setup setup =
        new Setup(
            folder(),
            tables,
            sheet::signed,
            sheet.date(),
            sheet.count(),
            sheet.seed(),
            Version.text());
    try (LocalServer page = open(setup)) {
      Runtime.getRuntime().addShutdownHook(new Thread(page::close));
      print("The page is open on this machine, at");
      print(page.address());
      print("Stop it there, or with Ctrl-C.");
      out().flush();
      if (open) {
        browse(page.address());
      }
      page.await(Duration.ofMinutes(idleMinutes));
      print("The page is closed.");
      return ExitCodes.DONE;
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return ExitCodes.DONE;
    }
  }

  private void refuseUnless(boolean holds, String message) {
    if (!holds) {
      throw wrong(message);
    }
  }

  private LocalServer open(Setup setup) {
    try {
      return new LocalServer(setup, port);
    } catch (IOException taken) {
      throw wrong("Port " + port + " cannot be used: " + taken.getMessage());
    }
  }

  /** Where there is no such program, the printed address is there all the same. */
  private void browse(String address) {
    String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
    List<String> command =
        system.contains("win")
            ? List.of("rundll32", "url.dll,FileProtocolHandler", address)
            : List.of(system.contains("mac") ? "open" : "xdg-open", address);
    try {
      new ProcessBuilder(command)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException none) {
      err().println("No browser could be opened: open the address yourself.");
    }
  }
}
