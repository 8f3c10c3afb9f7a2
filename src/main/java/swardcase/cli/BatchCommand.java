package swardcase.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import swardcase.chance.SideBySide;
import swardcase.check.Fault;
import swardcase.check.FaultsException;
import swardcase.decision.Decision;
import swardcase.intake.FarmDocument;
import swardcase.intake.FarmFolder;
import swardcase.intake.LoadedFarm;
import swardcase.outcome.FarmModel;
import swardcase.report.Answer;
import swardcase.report.BatchResult;
import swardcase.report.ComparisonReport.Decided;
import swardcase.tables.Tables;
import swardcase.view.JsonView;

/** Decides about many farms, one line each. */
@Command(
    name = "batch",
    description = {
      "Decides about many farms: reads one a line from standard input, prints one line of JSON for"
          + " each, in the same order.",
      "A line is a farm folder, or a JSON document {\"farm\": {...}, \"paddocks\": [...],"
          + " \"plants\": [...]}. A farm with faults gives a line that says which, and the rest"
          + " goes on."
    },
    exitCodeList = {
      "0:every line has its answer or its faults",
      ExitCodes.FAULT_LINE,
      "2:wrong use, or the answers could not be printed"
    },
    footer = {
      "%nTo go on after an interruption, skip the lines that have their answer:",
      "  swardcase batch --skip $(wc -l < answers.jsonl) < farms.txt >> answers.jsonl"
    })
final class BatchCommand extends Task {

  /** Farms read ahead of the one to be printed, for each worker. */
  private static final int AHEAD = 4;

  private static final int MOST_WORKERS = 256;

  private final BufferedReader in;

  @Mixin private SheetOptions sheet;
  @Mixin private TablesOption ownTables;

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

  private Tables tables;
  private ExecutorService pool;

  /** The command, which reads lines from {@code in}. */
  BatchCommand(BufferedReader in) {
    this.in = in;
  }

  @Override
  public Integer call() throws IOException {
    int threads = workers == null ? Runtime.getRuntime().availableProcessors() : workers;
    if (threads < 1 || threads > MOST_WORKERS || skip < 0) {
      throw wrong("--workers must be from 1 to " + MOST_WORKERS + ", and --skip not below 0");
    }
    tables = ownTables.loader().load();
    FarmLines lines = new FarmLines(in);
    for (long passed = 0; passed < skip && lines.next().isPresent(); passed++) {
      // What was passed over has its answer already.
    }
    long passed = lines.read();
    pool = Executors.newFixedThreadPool(threads, SideBySide.Worker::new);
    try {
      long failed = run(lines, threads * AHEAD);
      err().println(lines.read() - passed + " lines read, " + failed + " of them with faults.");
    } finally {
      pool.shutdownNow();
    }
    if (!out().checkError()) {
      return ExitCodes.DONE;
    }
    // Whoever stops reading has not got every answer, and a list is read to be answered.
    err()
        .println(
            "Cannot print all of the answers: the disk may be full, or the reader has gone. Go on"
                + " with --skip.");
    return ExitCodes.BAD_INPUT;
  }

  /** Answers come in the order of the lines, and no more lines are held than are worked on. */
  private long run(FarmLines lines, int mostWaiting) throws IOException {
    Deque<Line> waiting = new ArrayDeque<>();
    long failed = 0;
    Optional<String> next = lines.next();
    while (next.isPresent() || !waiting.isEmpty()) {
      while (next.isPresent() && waiting.size() < mostWaiting) {
        waiting.add(new Line(lines.read(), next.get()));
        next = lines.next();
      }
      Answer answer = get(waiting.remove(), waiting);
      failed += answer.failed() ? 1 : 0;
      out().print(answer.json() + "\n");
      if (out().checkError()) {
        return failed;
      }
    }
    return failed;
  }

  /** What is printed for a line, and whether it had faults. */
  private record Answer(String json, boolean failed) {

    static Answer of(BatchResult line) {
      return new Answer(JsonView.line(line), !line.faults().isEmpty());
    }
  }

  /** A line that is worked on. */
  private final class Line {

    private final long number;
    private final String text;
    private final Optional<String> folder;
    private final Future<Answer> answer;

    Line(long number, String text) {
      this.number = number;
      this.text = text;
      folder = text.startsWith("{") ? Optional.empty() : Optional.of(text);
      answer = pool.submit(this::work);
    }

    Answer work() {
      try {
        return Answer.of(result());
      } catch (FaultsException faults) {
        return failed(faults.faults().stream().map(Fault::message).toList());
      } catch (RuntimeException | StackOverflowError failure) {
        return failed(List.of("Swardcase has a fault of its own, please report it: " + failure));
      }
    }

    private BatchResult result() {
      String name = "line " + number;
      if (text.isEmpty() || text.equals(FarmLines.TOO_LONG)) {
        String rule = text.isEmpty() ? "must be a farm folder or a JSON document" : text;
        return BatchResult.failed(number, Optional.empty(), List.of(name + ": " + rule));
      }
      LoadedFarm farm =
          folder.isEmpty()
              ? FarmDocument.read(name, text, tables)
              : FarmFolder.read(Path.of(text), tables);
      FarmModel model = new FarmModel(sheet.signed(farm.farm()), tables);
      Decision decision = Decision.of(sheet.of(model), List.of(), done -> {});
      Decided decided = sheet.decided(folder.orElse(name), Optional.empty(), farm, decision);
      return BatchResult.of(number, folder, decided, whole);
    }

    Answer failed(List<String> messages) {
      return Answer.of(BatchResult.failed(number, folder, messages));
    }
  }

  /**
   * The answer of a line. Where the memory ran out, the farms beside it may be to blame: the line
   * is worked on again when they are done, and only if it is too much alone that is its answer.
   */
  private Answer get(Line line, Deque<Line> beside) {
    Optional<Answer> answer = await(line.answer);
    if (answer.isPresent()) {
      return answer.get();
    }
    beside.forEach(other -> await(other.answer));
    String tooMuch =
        "line "
            + line.number
            + ": needs more memory than the program has; give it more, such as java -Xmx2g, or fewer"
            + " --draws";
    return await(pool.submit(line::work)).orElseGet(() -> line.failed(List.of(tooMuch)));
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

  /** A class that found no memory when it was first used cannot be used any more either. */
  private static boolean isOfMemory(Throwable failure) {
    return failure instanceof OutOfMemoryError
        || failure instanceof LinkageError
        || failure.getCause() != null && isOfMemory(failure.getCause());
  }
}
