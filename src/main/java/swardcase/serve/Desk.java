package swardcase.serve;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import swardcase.check.FaultsException;
import swardcase.decision.Decision;
import swardcase.decision.ExplainTopic;
import swardcase.decision.FarmDifference;
import swardcase.decision.PlanGain;
import swardcase.draws.Draws;
import swardcase.farm.Farm;
import swardcase.folder.WholeFiles.Content;
import swardcase.intake.LoadedFarm;
import swardcase.outcome.FarmModel;
import swardcase.page.AnswerView;
import swardcase.page.Change;
import swardcase.page.ChangeView;
import swardcase.page.ExplanationView;
import swardcase.page.FaultsView;
import swardcase.page.FilesView;
import swardcase.page.JoiningView;
import swardcase.page.Shell;
import swardcase.page.SureView;
import swardcase.report.ExplanationReport;
import swardcase.report.FarmMap;
import swardcase.report.Report;
import swardcase.report.ReportBuilder;
import swardcase.search.LikelySearch;
import swardcase.serve.Answers.Kept;
import swardcase.sheet.CaseHead;
import swardcase.sheet.JoiningSheet;

/** What each request is answered with. */
final class Desk implements Site {

  /** The files of the page itself. */
  private static final Set<String> RESOURCES =
      Set.of("/page.js", "/change.js", "/edit.js", "/page.css", "/icon.svg");

  private static final String FILE = "/file/";
  private static final String SCENARIO = "scenario.yaml";

  private final Setup setup;
  private final Disk disk;
  private final Answers answers;
  private final Edits edits;
  private final Runnable stop;

  /** A desk; {@code stop} is run when the user says so. */
  Desk(Setup setup, Runnable stop) {
    this.setup = setup;
    this.stop = stop;
    disk = new Disk(setup);
    answers = new Answers(setup, disk);
    edits = new Edits(setup, disk);
  }

  @Override
  public Reply get(String name) throws IOException {
    if (name.equals("/")) {
      return Reply.html(200, Shell.of(farmName()));
    }
    if (RESOURCES.contains(name)) {
      try (InputStream in = Shell.class.getResourceAsStream(name.substring(1))) {
        return Reply.of(200, name, in.readAllBytes());
      }
    }
    if (name.startsWith(FILE) && name.indexOf('/', FILE.length()) > 0) {
      int slash = name.indexOf('/', FILE.length());
      Optional<Kept> kept = answers.find(name.substring(FILE.length(), slash));
      return kept.isPresent()
          ? file(kept.get(), name.substring(slash + 1))
          : Reply.text(404, "This answer is no longer kept: open the page's files again.");
    }
    return Reply.text(404, "There is nothing of this name.");
  }

  private String farmName() {
    try {
      return disk.base().farm().name();
    } catch (FaultsException faults) {
      return setup.folder().getFileName().toString();
    }
  }

  private static Reply file(Kept kept, String name) throws IOException {
    Content content = files(kept).get(name);
    if (content == null) {
      return Reply.text(404, "There is no such file.");
    }
    ByteArrayOutputStream to = new ByteArrayOutputStream();
    content.write(to);
    return Reply.of(200, name, to.toByteArray())
        .with("Content-Disposition", "attachment; filename=\"" + name + "\"");
  }

  /** The files of a full answer by name, byte for byte as the commands write them. */
  private static Map<String, Content> files(Kept kept) {
    LoadedFarm farm = kept.read().farm();
    Optional<FarmMap> map = FarmMap.of(farm.shapes());
    Map<String, Content> files = new LinkedHashMap<>();
    if (!kept.rough()) {
      files.putAll(AnswerFiles.of(kept.answer(), map, CaseHead.NONE));
      kept.answer()
          .joiningReport(farm.remarks())
          .ifPresent(
              report -> files.put("joining-sheet.pdf", to -> JoiningSheet.write(report, map, to)));
      Levers.scenario(kept.read().base().farm(), kept.asked())
          .ifPresent(text -> files.put(SCENARIO, AnswerFiles.text(text)));
      files.putAll(AnswerFiles.tables(kept.report()));
    }
    return files;
  }

  /** What would make the same files at a terminal. */
  private String command(Asked asked) {
    StringBuilder command = new StringBuilder("swardcase decide " + quoted(setup.folder() + ""));
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

  @Override
  public Reply post(String name, JsonNode request) throws Exception {
    Request asked = Request.of(request);
    try {
      return switch (name) {
        case "/view" -> Reply.html(200, view(asked));
        case "/edit" -> asked.answers().isEmpty() ? edits.edit(asked) : edits.begin(asked);
        case "/hand" -> hand(asked);
        case "/how" -> Reply.html(200, explanation(asked));
        case "/progress" -> Reply.text(200, Double.toString(answers.done()));
        case "/drop" -> done(answers::drop);
        case "/stop" -> done(stop);
        case "/alive" -> Reply.text(200, "");
        default -> Reply.text(404, "There is nothing of this name.");
      };
    } catch (FaultsException faults) {
      return Reply.html(422, FaultsView.of(faults.faults()));
    } catch (Worker.Dropped dropped) {
      return Reply.text(204, ""); // something newer was asked for
    }
  }

  private static Reply done(Runnable what) {
    what.run();
    return Reply.text(200, "");
  }

  private String view(Request question) throws Exception {
    if (setup.isEmpty()) {
      return edits.questions(question.answers());
    }
    Asked asked = question.asked();
    boolean rough = question.rough();
    return switch (Shell.View.find(question.view()).orElse(Shell.View.ANSWER)) {
      case PADDOCKS -> edits.tables();
      case FLOCK -> edits.keys();
      case JOINING -> {
        Kept kept = answers.get(asked, false);
        yield JoiningView.of(kept.answer().joiningReport(kept.read().farm().remarks()));
      }
      case SURE -> SureView.of(answers.get(asked, rough).report());
      case CHANGE -> changed(question, asked);
      case FILES -> {
        Kept kept = answers.get(asked, false);
        yield FilesView.of(kept.id(), files(kept).keySet(), command(asked));
      }
      case ANSWER -> AnswerView.of(change(asked, rough), FarmMap.of(disk.base().shapes()));
    };
  }

  /** An answer beside the one of the farm as its files have it, which is worked out first. */
  private Change change(Asked asked, boolean rough) throws Exception {
    Optional<Report> before =
        asked.isNothing()
            ? Optional.empty()
            : Optional.of(answers.get(Asked.NOTHING, false).report());
    Kept kept = answers.get(asked, rough);
    return new Change(kept.id(), kept.report(), before, rough);
  }

  private String changed(Request question, Asked asked) throws Exception {
    Change change = change(asked, question.rough());
    Optional<FarmDifference> difference =
        change.before().isEmpty() || change.rough() ? Optional.empty() : difference(asked);
    if (question.part()) {
      return ChangeView.part(change, difference);
    }
    int first = ReportBuilder.firstYear(setup.day());
    return ChangeView.of(
        change,
        Levers.of(disk.base().farm(), asked),
        asked.fixes(),
        IntStream.range(first, first + FarmModel.START_YEARS).boxed().toList(),
        difference);
  }

  /** What the changes bring, draw by draw, over the farm as its files have it. */
  private Optional<FarmDifference> difference(Asked asked) throws Exception {
    Decision before = answers.get(Asked.NOTHING, false).decision();
    return Optional.of(FarmDifference.of(before, answers.get(asked, false).decision()));
  }

  /** The plan of an answer that is kept, at the numbers as they are being moved. */
  private Reply hand(Request asked) {
    return answers
        .find(asked.id())
        .map(kept -> Reply.html(200, hand(kept, asked.asked())))
        .orElse(Reply.text(204, "")); // the page will ask anew
  }

  private String hand(Kept kept, Asked asked) {
    Farm farm = disk.read(asked).farm().farm();
    FarmModel model = new FarmModel(farm, setup.tables());
    Decision decision = kept.decision();
    Draws few = decision.simulation().draws().at(model, Decision.BLOCKS, Answers.HAND_DRAWS);
    boolean can = PlanGain.canBeDone(model, decision.plan());
    return ChangeView.inHand(
        kept.report(),
        kept.inHand(),
        can ? Optional.of(PlanGain.of(few, decision.plan())) : Optional.empty(),
        !can || new LikelySearch(model).feasible(decision.plan()),
        Levers.of(farm, asked).stream().filter(lever -> lever.to().isPresent()).toList());
  }

  private String explanation(Request asked) throws Exception {
    Kept kept = answers.get(asked.asked(), false);
    ExplainTopic topic = ExplainTopic.find(asked.what()).orElse(ExplainTopic.PLAN_GAIN);
    int paddocks = kept.report().paddocks().size();
    int paddock = Math.max(0, Math.min(paddocks - 1, asked.paddock()));
    return ExplanationView.of(ExplanationReport.of(kept.decision(), topic, paddock));
  }

  @Override
  public void close() {
    answers.close();
  }
}
