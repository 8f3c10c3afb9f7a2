package swardcase.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import swardcase.check.NearestName;
import swardcase.intake.FarmFolder;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/** Makes a new farm folder from answers. */
@Command(
    name = "start",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Makes a new farm folder: asks about the farm, or takes the answers as options.",
      "Write ? for help with a question, back for the one before. If you stop, run the command"
          + " again: it goes on where you were. Nothing that exists is overwritten."
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      ExitCodes.DONE_LINE,
      ExitCodes.FAULT_LINE,
      "2:wrong use, or stopped before the last question"
    })
final class StartCommand implements Callable<Integer> {

  private final BufferedReader in;

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "DIR", description = "The new farm folder.")
  private Path folder;

  @Option(
      names = "--answer",
      paramLabel = "KEY=ANSWER",
      description =
          "An answer given beforehand, such as --answer ewes=900; may be repeated. Keys: name,"
              + " currency, growth, ewes, joining-start, joining-weeks, in-lamb, scanned, marked,"
              + " figures, maidens, other-dse, supplement, supplement-energy, supplement-price,"
              + " lamb-value, budget, sow, paddocks. For maidens joined apart the keys of the mob"
              + " begin with maidens-, for further mobs (mob-3 to mob-6, their names; mob-3-ewes)"
              + " with mob-3- and so on.")
  private Map<String, String> given = new LinkedHashMap<>();

  @Option(
      names = "--no-questions",
      description = "Ask nothing: what is not answered is left out or takes its usual value.")
  private boolean silent;

  @Option(
      names = "--blank",
      description =
          "Ask nothing and write files with every key as a note, to be filled in by hand.")
  private boolean blank;

  @Option(
      names = "--date",
      paramLabel = "YYYY-MM-DD",
      converter = SheetDate.class,
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
        throw new ParameterException(
            spec.commandLine(), folder + " already holds " + name + ": nothing is overwritten");
      }
    }
    PrintWriter out = spec.commandLine().getOut();
    LocalDate day = date == null ? LocalDate.now() : date;
    if (blank) {
      write(FarmTemplate.blank(day));
      out.println("Fill in farm.yaml and paddocks.csv, then: swardcase check " + folder);
      return ExitCodes.DONE;
    }
    Tables tables = TablesLoader.standard().load();
    List<Question> questions = Questions.of(tables);
    AnswerCheck check = new AnswerCheck(tables);
    SavedAnswers saved = new SavedAnswers(folder);
    Map<String, String> answers = answers(questions, check, saved.read());
    if (silent) {
      takeUsual(questions, answers);
    } else {
      Interview interview = new Interview(questions, check, in, out);
      Interview.End end = interview.fill(answers, given.keySet(), saved::write);
      if (end != Interview.End.ANSWERED) {
        spec.commandLine().getErr().println(stopped(end));
        return ExitCodes.BAD_INPUT;
      }
    }
    Questions.dropUnasked(questions, answers);
    for (String key : given.keySet()) {
      if (!answers.containsKey(key)) {
        throw wrong("Answer '" + key + "' is to a question that the other answers leave out");
      }
    }
    String problem = check.problem(answers);
    if (!problem.isEmpty()) {
      throw wrong("These answers do not fit together: " + problem);
    }
    write(FarmTemplate.of(answers, day, AnswerCheck.joinings(tables)));
    saved.delete();
    out.println("Put the clover per cent into paddocks.csv and the counts of the walk into");
    out.println("plants.csv, then: swardcase decide " + folder + " --pdf sheet.pdf");
    return ExitCodes.DONE;
  }

  private String stopped(Interview.End end) {
    return end == Interview.End.NO_INPUT
        ? "Nothing was typed. Run it at a terminal, give answers with --answer, or take --blank."
        : "Stopped. To go on, run it again: swardcase start " + folder;
  }

  /** The answers of an earlier run and those given as options, which win. */
  private Map<String, String> answers(
      List<Question> questions, AnswerCheck check, Map<String, String> before) {
    List<String> keys = questions.stream().map(Question::key).toList();
    for (String key : given.keySet()) {
      if (!keys.contains(key)) {
        String hint =
            NearestName.find(key, keys).map(near -> "; did you mean '" + near + "'?").orElse("");
        throw wrong("There is no question '" + key + "'" + hint);
      }
    }
    Map<String, String> answers = new LinkedHashMap<>();
    for (Question question : questions) {
      boolean now = given.containsKey(question.key());
      String text = now ? given.get(question.key()) : before.get(question.key());
      if (text == null) {
        continue;
      }
      answers.put(question.key(), question.settled(PlainText.of(text).strip()));
      String problem = check.problem(answers);
      if (now && !problem.isEmpty()) {
        throw wrong("Answer '" + question.key() + "' " + problem);
      }
      if (!problem.isEmpty() || question.lacks(answers)) {
        answers.remove(question.key());
      }
    }
    return answers;
  }

  private void takeUsual(List<Question> questions, Map<String, String> answers) {
    List<String> missing = new ArrayList<>();
    for (Question question : questions) {
      if (question.asked().test(answers)) {
        answers.putIfAbsent(question.key(), question.usual());
        if (question.lacks(answers)) {
          missing.add(question.key());
        }
      }
    }
    if (!missing.isEmpty()) {
      throw wrong("These answers are needed: " + String.join(", ", missing));
    }
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }

  private void write(Map<String, String> texts) throws CannotWriteException {
    try (WholeFiles files = new WholeFiles(Inputs.none())) {
      for (Map.Entry<String, String> text : texts.entrySet()) {
        files.add(folder.resolve(text.getKey()), text.getValue());
      }
      files.commit();
    }
    PrintWriter out = spec.commandLine().getOut();
    out.println("Written: " + folder + " (" + String.join(", ", texts.keySet()) + ")");
  }
}
