package swardcase.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import swardcase.folder.WholeFiles;
import swardcase.folder.WholeFiles.Content;
import swardcase.intake.LoadedFarm;
import swardcase.outcome.FarmModel;
import swardcase.report.Answer;
import swardcase.report.FarmMap;
import swardcase.report.ReportBuilder;
import swardcase.search.FixedChoice;
import swardcase.serve.AnswerFiles;
import swardcase.sheet.CaseHead;
import swardcase.tables.Tables;
import swardcase.view.TerminalView;

/** The whole job: reads a farm folder, decides, prints and writes. */
@Command(
    name = "decide",
    description = {
      "Says for each paddock whether to resow or keep it, what that costs and brings, and writes the"
          + " decision sheet.",
      "Prints a summary; files are written only where an option asks for them."
    })
final class DecideCommand extends FarmTask {

  @Mixin private SheetOptions sheet;
  @Mixin private ScenarioOptions scenarios;
  @Mixin private FarmChanges changes;

  @Option(names = "--pdf", paramLabel = "FILE", description = "Write the decision sheet (A4, PDF).")
  private Path pdf;

  @Mixin private CaseOptions budgetCase;

  @Option(names = "--json", paramLabel = "FILE", description = "Write the result document (JSON).")
  private Path json;

  @Option(names = "--csv", paramLabel = "DIR", description = "Write tables for a spreadsheet.")
  private Path csv;

  @Option(
      names = "--xlsx",
      paramLabel = "FILE",
      description = "Write the budget as a workbook whose prices can be changed.")
  private Path xlsx;

  @Override
  public Integer call() throws IOException {
    CaseHead head = budgetCase.head();
    Tables tables = tables();
    LoadedFarm loaded = scenarios.one(this, tables);
    FarmModel model = new FarmModel(sheet.signed(changes.change(loaded.farm())), tables);
    List<FixedChoice> fixed = changes.fixed(model, ReportBuilder.firstYear(sheet.date()));
    Answer answer =
        Answer.of(
            sheet.decide(model, fixed),
            Version.text(),
            sheet.date(),
            loaded.on(sheet.date()).remarks(),
            budgetCase.file() != null);
    Map<String, Content> made = AnswerFiles.of(answer, FarmMap.of(loaded.shapes()), head);
    try (WholeFiles files = new WholeFiles(inputs().and(scenarios.file().stream().toList()))) {
      if (csv != null) {
        for (Map.Entry<String, Content> table : AnswerFiles.tables(answer.report()).entrySet()) {
          files.add(csv.resolve(table.getKey()), table.getValue());
        }
      }
      files.add(json, made.get(AnswerFiles.DOCUMENT));
      files.add(pdf, made.get(AnswerFiles.SHEET));
      files.add(budgetCase.file(), made.get(AnswerFiles.CASE));
      files.add(xlsx, made.get(AnswerFiles.WORKBOOK));
      files.commit();
    }
    print(TerminalView.of(answer.report(), width()));
    out().println();
    printWritten(csv, json, pdf, budgetCase.file(), xlsx);
    return ExitCodes.DONE;
  }
}
