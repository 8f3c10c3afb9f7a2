package swardcase.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import swardcase.folder.CannotWriteException;
import swardcase.folder.FarmTemplate;
import swardcase.folder.NewFarm;
import swardcase.folder.WholeFiles;
import swardcase.intake.FarmFolder;
import swardcase.tables.TablesLoader;

/** Makes a new farm folder from answers. */
@Command(
    name = "start",
    description = {
      "Makes a new farm folder: asks about the farm.",
      "Write ? for help with a question, back for the one before. If you stop, run the command"
          + " again: it goes on where you were. Nothing that exists is overwritten."
    },
    exitCodeList = {
      "0:done",
      ExitCodes.FAULT_LINE,
      "2:wrong use, or stopped before the last question"
    })
final class StartCommand extends Task {

  private final BufferedReader in;

  @Parameters(index = "0", paramLabel = "DIR", description = "The new farm folder.")
  private Path folder;

  @Option(
      names = "--blank",
      description =
          "Ask nothing and write files with every key as a note, to be filled in by hand.")
  private boolean blank;

  @Option(
      names = "--date",
      paramLabel = "YYYY-MM-DD",
      defaultValue = SheetOptions.TODAY,
      description = "Day on which the prices you give were taken. Default: today.")
  private LocalDate date;

  /** The command, which reads what is typed from {@code in}. */
  StartCommand(BufferedReader in) {
    this.in = in;
  }

  @Override
  public Integer call() throws IOException {
    for (String name : FarmFolder.FILES) {
      if (Files.exists(folder.resolve(name))) {
        throw wrong(folder + " already holds " + name + ": nothing is overwritten");
      }
    }
    if (blank) {
      write(FarmTemplate.blank(date));
      print("Fill in farm.yaml and paddocks.csv, then: swardcase check " + folder);
      return ExitCodes.DONE;
    }
    NewFarm farm = new NewFarm(TablesLoader.standard().load());
    Interview interview = new Interview(farm, folder, in, out());
    Map<String, String> answers = interview.kept();
    Optional<String> stopped = interview.fill(answers);
    if (stopped.isPresent()) {
      err().println(stopped.get());
      return ExitCodes.BAD_INPUT;
    }
    write(farm.files(farm.withoutUnasked(answers), date));
    Files.deleteIfExists(folder.resolve(Interview.FILE));
    print("Put the clover per cent into paddocks.csv and the counts of the walk into");
    print("plants.csv, then: swardcase decide " + folder + " --pdf sheet.pdf");
    return ExitCodes.DONE;
  }

  private void write(Map<String, String> texts) throws CannotWriteException {
    WholeFiles.write(folder, texts);
    print("Written: " + folder + " (" + String.join(", ", texts.keySet()) + ")");
  }
}
