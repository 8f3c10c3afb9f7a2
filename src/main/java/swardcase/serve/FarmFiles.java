package swardcase.serve;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import swardcase.report.Answer;
import swardcase.report.BudgetCase;
import swardcase.report.FarmMap;
import swardcase.sheet.CaseHead;
import swardcase.sheet.CaseSheet;
import swardcase.sheet.DecisionSheet;
import swardcase.sheet.JoiningSheet;
import swardcase.view.CsvView;
import swardcase.view.JsonView;
import swardcase.workbook.BudgetWorkbook;

/** The files of an answer, byte for byte as the commands write them. */
final class FarmFiles {

  private static final String SCENARIO = "scenario.yaml";

  private interface Writing {
    void write(ByteArrayOutputStream to) throws IOException;
  }

  /** A file of an answer: its media type, and how its bytes are made. */
  private record Made(String type, Supplier<byte[]> bytes) {}

  private FarmFiles() {}

  /** The names of the files. */
  static List<String> names(Answers.Kept kept) {
    return List.copyOf(all(kept).keySet());
  }

  /** A file by its name; a reply that there is none of it otherwise. */
  static Reply get(Answers.Kept kept, String name) {
    Made made = all(kept).get(name);
    return made == null
        ? Reply.text(404, "There is no such file.")
        : new Reply(200, made.type(), made.bytes().get(), name);
  }

  /** What would make the same files at a terminal. */
  static String command(Path folder, Asked asked) {
    StringBuilder command = new StringBuilder("swardcase decide ").append(quoted(folder + ""));
    if (!asked.levers().isEmpty()) {
      command.append(" --scenario ").append(SCENARIO);
    }
    asked.typedFixes().forEach(fix -> command.append(" --fix ").append(quoted(fix)));
    return command
        .append(" --pdf decision-sheet.pdf --case budget-case.pdf --json result.json")
        .toString();
  }

  private static String quoted(String word) {
    return word.matches("[\\w./=@-]+") ? word : "'" + word.replace("'", "'\\''") + "'";
  }

  private static Map<String, Made> all(Answers.Kept kept) {
    Answer answer = kept.answer();
    Map<String, Made> files = new LinkedHashMap<>();
    if (kept.rough()) {
      return files;
    }
    Optional<FarmMap> map = FarmMap.of(kept.read().farm().shapes());
    pdf(files, "decision-sheet.pdf", to -> DecisionSheet.write(answer.report(), map, to));
    pdf(
        files,
        "budget-case.pdf",
        to ->
            CaseSheet.write(
                answer.report(),
                BudgetCase.of(answer.decision(), answer.report()),
                CaseHead.NONE,
                answer.joiningReport(List.of()),
                to));
    answer
        .joiningReport(kept.read().farm().remarks())
        .ifPresent(
            report -> pdf(files, "joining-sheet.pdf", to -> JoiningSheet.write(report, map, to)));
    files.put("result.json", text("application/json", () -> JsonView.of(answer.report())));
    files.put(
        "budget.xlsx",
        made(
            "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
            to -> BudgetWorkbook.write(answer.report(), answer.budget(), to)));
    Levers.scenario(kept.read().base().farm(), kept.asked())
        .ifPresent(text -> files.put(SCENARIO, text("application/yaml", () -> text)));
    CsvView.of(answer.report())
        .forEach((name, csv) -> files.put(name, text("text/csv", () -> csv)));
    return files;
  }

  private static void pdf(Map<String, Made> files, String name, Writing writing) {
    files.put(name, made("application/pdf", writing));
  }

  private static Made text(String type, Supplier<String> text) {
    return new Made(type + "; charset=utf-8", () -> text.get().getBytes(StandardCharsets.UTF_8));
  }

  private static Made made(String type, Writing writing) {
    return new Made(
        type,
        () -> {
          ByteArrayOutputStream to = new ByteArrayOutputStream();
          try {
            writing.write(to);
          } catch (IOException failure) {
            throw new UncheckedIOException(failure);
          }
          return to.toByteArray();
        });
  }
}
