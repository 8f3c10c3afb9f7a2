package swardcase.bench;

import com.sun.management.OperatingSystemMXBean;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import swardcase.decision.Decision;
import swardcase.decision.HowSure;
import swardcase.draws.Draws;
import swardcase.intake.FarmFolder;
import swardcase.intake.LoadedFarm;
import swardcase.joining.JoiningPlan;
import swardcase.outcome.FarmModel;
import swardcase.report.JoiningReportBuilder;
import swardcase.report.Report;
import swardcase.report.ReportBuilder;
import swardcase.search.Found;
import swardcase.search.PlanSearch;
import swardcase.sheet.DecisionSheet;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/**
 * Prints what a decision costs on farms of 12, 40, 100 and 400 paddocks, or of the sizes given as
 * arguments, and how it grows. Each farm has a process of its own, which starts cold, runs with the
 * launcher's options and may use 512 MB.
 */
public final class Scale {

  private static final List<String> SIZES = List.of("12", "40", "100", "400");
  private static final List<String> STAGES =
      List.of("start", "read", "decide", "how sure", "report", "joining", "sheet", "search");
  private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  private static final String ONE = "--one";

  private final List<Double> clock = new ArrayList<>();
  private final List<Double> processor = new ArrayList<>();

  private Scale() {}

  /** One line of figures for one farm. */
  private record Figures(
      int paddocks, double[] clock, double[] processor, double couldBeFound, double peakMb) {

    /** Reads the last line; a library may have said something before it. */
    static Figures parse(String printed) {
      String line = printed.lines().reduce("", (before, last) -> last);
      double[] all = Arrays.stream(line.split(" ")).mapToDouble(Double::parseDouble).toArray();
      int n = STAGES.size();
      return new Figures(
          (int) all[0],
          Arrays.copyOfRange(all, 1, 1 + n),
          Arrays.copyOfRange(all, 1 + n, 1 + 2 * n),
          all[1 + 2 * n],
          all[2 + 2 * n]);
    }
  }

  /** Measures the sizes, or one folder in this process. */
  public static void main(String[] arguments) throws Exception {
    if (arguments.length == 2 && arguments[0].equals(ONE)) {
      System.out.println(new Scale().measure(Path.of(arguments[1])));
      return;
    }
    List<Figures> figures = new ArrayList<>();
    heading();
    for (String size : arguments.length == 0 ? SIZES : List.of(arguments)) {
      Path folder = Path.of("target", "scale", "farm-" + size);
      GrownFarm.write(Integer.parseInt(size), folder);
      Figures farm = Figures.parse(run(Scale.class.getName(), ONE, folder.toString()));
      times(farm);
      figures.add(farm);
    }
    powers(figures);
    found(figures);
    line("Start-up (--version, no class archive): %.2f s on the clock, least of five", startUp());
  }

  private static double startUp() throws IOException, InterruptedException {
    double least = Double.POSITIVE_INFINITY;
    for (int turn = 0; turn < 5; turn++) {
      long start = System.nanoTime();
      run("swardcase.cli.Main", "--version");
      least = Math.min(least, (System.nanoTime() - start) / 1e9);
    }
    return least;
  }

  /** Runs a class as the launcher would, and gives what it prints. */
  private static String run(String... what) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx512m"));
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.addAll(List.of(what));
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    if (process.waitFor() != 0) {
      throw new IllegalStateException("failed: " + String.join(" ", what));
    }
    return out;
  }

  private String measure(Path folder) throws Exception {
    clock.add((System.currentTimeMillis() - startMillis()) / 1000.0);
    processor.add(processorSeconds());
    Tables tables = TablesLoader.standard().load();
    LoadedFarm loaded = FarmFolder.read(folder, tables);
    FarmModel model = timed(() -> new FarmModel(FarmFolder.read(folder, tables).farm(), tables));
    Decision decision = timed(() -> Decision.of(model));
    HowSure howSure = timed(() -> HowSure.of(decision));
    Report report =
        timed(() -> ReportBuilder.build(decision, howSure, "scale", DAY, loaded.remarks()));
    timed(
        () ->
            JoiningPlan.of(decision.simulation().draws(), decision.plan())
                .map(plan -> JoiningReportBuilder.build(plan, "scale", DAY, List.of())));
    timed(
        () -> {
          DecisionSheet.write(report, Optional.empty(), new ByteArrayOutputStream());
          return report;
        });
    Draws draws = decision.simulation().draws();
    Found found = timed(() -> new PlanSearch(draws, List.of()).find().orElseThrow());
    double couldBeFound =
        100 * found.stillToFind().mean() / Math.max(1, found.plan().certaintyEquivalent());
    return Stream.of(
            Stream.of((double) model.farm().paddocks().size()),
            clock.stream(),
            processor.stream(),
            Stream.of(couldBeFound, peakMb()))
        .flatMap(part -> part)
        .map(String::valueOf)
        .reduce((a, b) -> a + " " + b)
        .orElseThrow();
  }

  private <T> T timed(Callable<T> stage) throws Exception {
    long start = System.nanoTime();
    double used = processorSeconds();
    T result = stage.call();
    clock.add((System.nanoTime() - start) / 1e9);
    processor.add(processorSeconds() - used);
    return result;
  }

  private static double processorSeconds() {
    return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
            .getProcessCpuTime()
        / 1e9;
  }

  private static long startMillis() {
    return ManagementFactory.getRuntimeMXBean().getStartTime();
  }

  /** The most memory this process has held, as Linux counts it; NaN elsewhere. */
  private static double peakMb() throws IOException {
    Path status = Path.of("/proc/self/status");
    if (!Files.exists(status)) {
      return Double.NaN;
    }
    return Files.readAllLines(status).stream()
        .filter(line -> line.startsWith("VmHWM:"))
        .mapToDouble(line -> Double.parseDouble(line.replaceAll("\\D", "")) / 1024)
        .findFirst()
        .orElse(Double.NaN);
  }

  private static void heading() {
    line("Seconds on the clock / of both processors; %d draws", Decision.USUAL_DRAWS);
    StringBuilder heading = new StringBuilder(String.format(Locale.ROOT, "%9s", "paddocks"));
    STAGES.forEach(stage -> heading.append(String.format(Locale.ROOT, "%16s", stage)));
    line("%s%16s", heading, "all of it");
  }

  private static void times(Figures farm) {
    StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "%9d", farm.paddocks()));
    for (int s = 0; s < STAGES.size(); s++) {
      row.append(pair(farm.clock()[s], farm.processor()[s]));
    }
    line("%s%s", row, pair(sum(farm.clock()), sum(farm.processor())));
  }

  private static void powers(List<Figures> figures) {
    for (int k = 1; k < figures.size(); k++) {
      Figures small = figures.get(k - 1);
      Figures large = figures.get(k);
      double growth = Math.log((double) large.paddocks() / small.paddocks());
      StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "%9s", "power"));
      for (int s = 0; s < STAGES.size(); s++) {
        double power = Math.log(large.processor()[s] / small.processor()[s]) / growth;
        row.append(String.format(Locale.ROOT, "%16.2f", power));
      }
      double power = Math.log(sum(large.processor()) / sum(small.processor())) / growth;
      line("%s%16.2f   %d to %d", row, power, small.paddocks(), large.paddocks());
    }
  }

  private static void found(List<Figures> figures) {
    line("%9s%20s%12s", "paddocks", "could be found, %", "peak MB");
    for (Figures farm : figures) {
      line("%9d%20.2f%12.0f", farm.paddocks(), farm.couldBeFound(), farm.peakMb());
    }
    line(
        "The search is part of decide; it was run once more, warm, and does not count in all of it.");
  }

  private static String pair(double clock, double processor) {
    return String.format(
        Locale.ROOT, "%16s", String.format(Locale.ROOT, "%.2f / %.2f", clock, processor));
  }

  /** Seconds of all stages but the second search. */
  private static double sum(double[] numbers) {
    return Arrays.stream(numbers, 0, STAGES.indexOf("search")).sum();
  }

  private static void line(String format, Object... arguments) {
    System.out.println(String.format(Locale.ROOT, format, arguments));
  }
}
