package swardcase.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import swardcase.chance.SideBySide;
import swardcase.check.Fault;
import swardcase.check.FaultsException;
import swardcase.decision.Decision;
import swardcase.decision.HowSure;
import swardcase.intake.FarmDocument;
import swardcase.intake.FarmFolder;
import swardcase.intake.LoadedFarm;
import swardcase.outcome.FarmModel;
import swardcase.report.BatchResult;
import swardcase.report.ComparisonReport.Decided;
import swardcase.report.ReportBuilder;
import swardcase.tables.Tables;
import swardcase.view.JsonView;

/** Decides about many farms, one line each. */
@Command(
    name = "batch",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Decides about many farms: reads one a line from standard input, prints one line of JSON for"
          + " each, in the same order.",
      "A line is a farm folder, or a JSON document {\"farm\": {...}, \"paddocks\": [...],"
          + " \"plants\": [...]}. A farm with faults gives a line that says which, and the rest"
          + " goes on."
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:every line has its answer or its faults",
      ExitCodes.FAULT_LINE,
      "2:wrong use, or the answers could not be printed"
    },
    footer = {
      "%nTo go on after an interruption, skip the lines that have their answer:",
      "  swardcase batch --skip $(wc -l < answers.jsonl) < farms.txt >> answers.jsonl"
    })
final class BatchCommand implements Callable<Integer> {

  /** Farms read ahead of the one to be printed, for each worker. */
  private static final int AHEAD = 4;

  private static final int MOST_WORKERS = 256;

  private final BufferedReader in;

  @Spec private CommandSpec spec;
  @Mixin private SheetOptions sheet;
  @Mixin private DrawOptions draws;

  @Option(
      names = "--tables",
      paramLabel = "DIR",
      description = "Folder with rows of your own that replace rows of the program's tables.")
  private Path ownTables;

  @Option(
      names = "--skip",
      paramLabel = "N",
      defaultValue = "0",
      description = "Lines to pass over at the beginning. Default: ${DEFAULT-VALUE}.")
  private long skip;

  @Option(
      names = "--workers",
      paramLabel = "N",
      description = "Farms worked on at a time. Default: one for each processor.")
  private Integer workers;

  @Option(
      names = "--whole",
      description = "Put the whole result document of each farm in its line.")
  private boolean whole;

  /** The command, which reads lines from {@code in}. */
  BatchCommand(BufferedReader in) {
    this.in = in;
  }

  @Override
  public Integer call() throws IOException {
    draws.check();
    int threads = workers == null ? Runtime.getRuntime().availableProcessors() : workers;
    if (threads < 1 || threads > MOST_WORKERS || skip < 0) {
      throw new ParameterException(
          spec.commandLine(),
          "--workers must be from 1 to " + MOST_WORKERS + ", and --skip not below 0");
    }
    Tables tables = TablesOption.loader(ownTables).load();
    LocalDate day = sheet.date();
    FarmLines lines = new FarmLines(in);
    for (long passed = 0; passed < skip && lines.next().isPresent(); passed++) {
      // What was passed over has its answer already.
    }
    ExecutorService pool = Executors.newFixedThreadPool(threads, SideBySide.Worker::new);
    try {
      long failed = run(lines, pool, threads, tables, day);
      spec.commandLine()
          .getErr()
          .println(
              (lines.read() - Math.min(skip, lines.read()))
                  + " lines read, "
                  + failed
                  + " of them with faults.");
      return printed();
    } finally {
      pool.shutdownNow();
    }
  }

  /** Whoever stops reading has not got every answer, and a list is read to be answered. */
  private int printed() {
    if (!spec.commandLine().getOut().checkError()) {
      return ExitCodes.DONE;
    }
    spec.commandLine()
        .getErr()
        .println(
            "Cannot print all of the answers: the disk may be full, or the reader has gone. Go on"
                + " with --skip.");
    return ExitCodes.BAD_INPUT;
  }

  /** Answers come in the order of the lines, and no more lines are held than are worked on. */
  private long run(FarmLines lines, ExecutorService pool, int threads, Tables tables, LocalDate day)
      throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    Deque<Line> waiting = new ArrayDeque<>();
    long failed = 0;
    boolean more = true;
    while (more || !waiting.isEmpty()) {
      while (more && waiting.size() < threads * AHEAD) {
        Optional<String> line = lines.next();
        long number = lines.read();
        line.ifPresent(
            text -> {
              Callable<Answer> work = () -> answer(number, text, tables, day);
              waiting.add(new Line(number, text, work, pool.submit(work)));
            });
        more = line.isPresent();
      }
      if (!waiting.isEmpty()) {
        Answer answer = get(waiting.remove(), waiting, pool);
        failed += answer.failed() ? 1 : 0;
        out.print(answer.json() + "\n");
        if (out.checkError()) {
          return failed;
        }
      }
    }
    return failed;
  }

  /** A line that is worked on. */
  private record Line(long number, String text, Callable<Answer> work, Future<Answer> answer) {

    Answer failed(String message) {
      return Answer.of(BatchResult.failed(number, folder(text), List.of(message)));
    }
  }

  /** What is printed for a line, and whether it had faults. */
  private record Answer(String json, boolean failed) {

    static Answer of(BatchResult line) {
      return new Answer(JsonView.line(line), !line.faults().isEmpty());
    }
  }

  /**
   * The answer of a line. Where the memory ran out, the farms beside it may be to blame: the line
   * is worked on again when they are done, and only if it is too much alone that is its answer.
   */
  private static Answer get(Line line, Deque<Line> beside, ExecutorService pool) {
    Optional<Answer> answer = await(line.answer());
    if (answer.isPresent()) {
      return answer.get();
    }
    beside.forEach(other -> await(other.answer()));
    return await(pool.submit(line.work()))
        .orElseGet(
            () ->
                line.failed(
                    "line "
                        + line.number()
                        + ": needs more memory than the program has; give it more, such as java"
                        + " -Xmx2g, or fewer --draws"));
  }

  /** A class that found no memory when it was first used cannot be used any more either. */
  private static boolean isOfMemory(Throwable failure) {
    return failure instanceof OutOfMemoryError
        || failure instanceof LinkageError
        || failure.getCause() != null && isOfMemory(failure.getCause());
  }

  /** The answer, or empty where the memory ran out. */
  private static Optional<Answer> await(Future<Answer> answer) {
    try {
      return Optional.of(answer.get());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("stopped while working on a farm", stopped);
    } catch (ExecutionException failure) {
      if (isOfMemory(failure)) {
        return Optional.empty();
      }
      throw new IllegalStateException("a farm could not be worked on", failure.getCause());
    }
  }

  private static Optional<String> folder(String text) {
    return text.startsWith("{") ? Optional.empty() : Optional.of(text);
  }

  private Answer answer(long number, String text, Tables tables, LocalDate day) {
    return Answer.of(worked(number, text, tables, day));
  }

  private BatchResult worked(long number, String text, Tables tables, LocalDate day) {
    Optional<String> folder = folder(text);
    boolean document = folder.isEmpty();
    try {
      String name = "line " + number;
      if (text.isEmpty() || text.equals(FarmLines.TOO_LONG)) {
        String rule = text.isEmpty() ? "must be a farm folder or a JSON document" : text;
        return BatchResult.failed(number, Optional.empty(), List.of(name + ": " + rule));
      }
      LoadedFarm farm =
          document ? FarmDocument.read(name, text, tables) : FarmFolder.read(Path.of(text), tables);
      return BatchResult.of(
          number, folder, decide(document ? name : text, farm, tables, day), whole);
    } catch (FaultsException faults) {
      List<String> messages = faults.faults().stream().map(Fault::message).toList();
      return BatchResult.failed(number, folder, messages);
    } catch (RuntimeException | StackOverflowError failure) {
      String message = "Swardcase has a fault of its own, please report it: " + failure;
      return BatchResult.failed(number, folder, List.of(message));
    }
  }

  private Decided decide(String folder, LoadedFarm loaded, Tables tables, LocalDate day) {
    FarmModel model = new FarmModel(sheet.signed(loaded.farm()), tables);
    Decision decision = Decision.of(draws.of(model), List.of(), done -> {});
    return new Decided(
        folder,
        Optional.empty(),
        decision,
        ReportBuilder.build(
            decision, HowSure.of(decision), Version.text(), day, loaded.on(day).remarks()));
  }
}
