package swardcase.serve;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import swardcase.check.FaultsException;
import swardcase.decision.Decision;
import swardcase.decision.ExplainTopic;
import swardcase.decision.FarmDifference;
import swardcase.decision.PlanGain;
import swardcase.draws.Draws;
import swardcase.farm.Farm;
import swardcase.intake.FarmFolder;
import swardcase.outcome.FarmModel;
import swardcase.page.AnswerView;
import swardcase.page.Change;
import swardcase.page.ChangeView;
import swardcase.page.EditViews;
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

/** What each request is answered with. */
final class Desk implements Site, AutoCloseable {

  /** The files of the page itself, by name. */
  private static final Map<String, String> RESOURCES =
      Map.of(
          "/page.js", "text/javascript; charset=utf-8",
          "/change.js", "text/javascript; charset=utf-8",
          "/edit.js", "text/javascript; charset=utf-8",
          "/page.css", "text/css; charset=utf-8",
          "/icon.svg", "image/svg+xml");

  private static final String FILE = "/file/";

  /** Draws in each block for the plan in hand: few, since it is shown while a slider moves. */
  static final int HAND_DRAWS = 5;

  private final Setup setup;
  private final Answers answers;
  private final Edits edits;
  private final Runnable stop;

  /** A desk; {@code stop} is run when the user says so. */
  Desk(Setup setup, Runnable stop) {
    this.setup = setup;
    this.stop = stop;
    answers = new Answers(setup);
    edits = new Edits(setup);
  }

  @Override
  public Reply get(String name) throws IOException {
    if (name.equals("/")) {
      return Reply.html(200, Shell.of(farmName()));
    }
    if (RESOURCES.containsKey(name)) {
      try (InputStream in = Shell.class.getResourceAsStream(name.substring(1))) {
        return new Reply(200, RESOURCES.get(name), in.readAllBytes(), "");
      }
    }
    if (name.startsWith(FILE) && name.indexOf('/', FILE.length()) > 0) {
      int slash = name.indexOf('/', FILE.length());
      Optional<Kept> kept = answers.find(name.substring(FILE.length(), slash));
      return kept.isPresent()
          ? FarmFiles.get(kept.get(), name.substring(slash + 1))
          : Reply.text(404, "This answer is no longer kept: open the page's files again.");
    }
    return Reply.text(404, "There is nothing of this name.");
  }

  private String farmName() {
    try {
      return answers.read(Asked.NOTHING).base().farm().name();
    } catch (FaultsException faults) {
      return setup.folder().getFileName().toString();
    }
  }

  @Override
  public Reply post(String name, JsonNode request) throws Exception {
    try {
      Asked asked = Asked.of(request);
      return switch (name) {
        case "/view" -> Reply.html(200, view(request, asked));
        case "/edit" -> request.has("answers") ? edits.begin(request) : edits.edit(request);
        case "/hand" -> hand(request, asked);
        case "/how" -> Reply.html(200, explanation(request, asked));
        case "/progress" -> Reply.text(200, Double.toString(answers.done()));
        case "/drop" -> {
          answers.drop();
          yield Reply.text(200, "");
        }
        case "/alive" -> Reply.text(200, "");
        case "/stop" -> {
          stop.run();
          yield Reply.text(200, "");
        }
        default -> Reply.text(404, "There is nothing of this name.");
      };
    } catch (FaultsException faults) {
      return Reply.html(422, FaultsView.of(faults.faults()));
    } catch (Worker.Dropped dropped) {
      return Reply.text(204, ""); // something newer was asked for
    }
  }

  private String view(JsonNode request, Asked asked) throws Exception {
    Shell.View view = Shell.View.find(request.path("view").asText()).orElse(Shell.View.ANSWER);
    boolean rough = request.path("rough").asBoolean();
    if (FarmFolder.FILES.stream().map(setup.folder()::resolve).noneMatch(Files::exists)) {
      return EditViews.begin(setup.store().questions(Edits.answers(request)));
    }
    return switch (view) {
      case PADDOCKS ->
          EditViews.tables(
              edits.tables(), answers.print(), List.copyOf(setup.tables().cultivars().keySet()));
      case FLOCK -> {
        Disk.Read read = answers.read(Asked.NOTHING);
        List<Keys.Placed> keys = Keys.of(read.base().farm(), edits.text("farm.yaml", ""));
        yield EditViews.keys(keys.stream().map(Keys.Placed::key).toList(), read.print());
      }
      case JOINING -> {
        Kept kept = answers.get(asked, false);
        yield JoiningView.of(kept.answer().joiningReport(kept.read().farm().remarks()));
      }
      case SURE -> SureView.of(change(asked, rough));
      case CHANGE -> changed(asked, rough, request.path("part").asBoolean());
      case FILES ->
          FilesView.of(
              change(asked, false),
              FarmFiles.names(answers.get(asked, false)),
              FarmFiles.command(setup.folder(), asked));
      case ANSWER ->
          AnswerView.of(change(asked, rough), FarmMap.of(answers.read(asked).base().shapes()));
    };
  }

  /** An answer beside the one of the farm as its files have it, which is worked out first. */
  private Change change(Asked asked, boolean rough) throws Exception {
    Optional<Report> before =
        asked.isNothing()
            ? Optional.empty()
            : Optional.of(answers.get(Asked.NOTHING, false).answer().report());
    Kept kept = answers.get(asked, rough);
    return new Change(kept.id(), kept.answer().report(), before, rough);
  }

  private String changed(Asked asked, boolean rough, boolean part) throws Exception {
    Change change = change(asked, rough);
    Optional<FarmDifference> difference =
        change.before().isEmpty() || rough ? Optional.empty() : difference(asked);
    if (part) {
      return ChangeView.part(change, difference);
    }
    int first = ReportBuilder.firstYear(setup.day());
    return ChangeView.of(
        change,
        Levers.of(answers.read(asked).base().farm(), asked),
        asked.fixes(),
        IntStream.range(first, first + FarmModel.START_YEARS).boxed().toList(),
        difference);
  }

  /** What the changes bring, draw by draw, over the farm as its files have it. */
  private Optional<FarmDifference> difference(Asked asked) throws Exception {
    Decision before = answers.get(Asked.NOTHING, false).answer().decision();
    return Optional.of(FarmDifference.of(before, answers.get(asked, false).answer().decision()));
  }

  /** The plan of an answer that is kept, at the numbers as they are being moved. */
  private Reply hand(JsonNode request, Asked asked) {
    Optional<Kept> kept = answers.find(request.path("id").asText());
    return kept.isEmpty()
        ? Reply.text(204, "") // the page will ask anew
        : Reply.html(200, hand(kept.get(), asked));
  }

  private String hand(Kept kept, Asked asked) {
    Farm farm = answers.read(asked).farm().farm();
    FarmModel model = new FarmModel(farm, setup.tables());
    Decision decision = kept.answer().decision();
    Draws few = decision.simulation().draws().at(model, Decision.BLOCKS, HAND_DRAWS);
    boolean can = PlanGain.canBeDone(model, decision.plan());
    return ChangeView.inHand(
        kept.answer().report(),
        kept.inHand(),
        can ? Optional.of(PlanGain.of(few, decision.plan())) : Optional.empty(),
        !can || new LikelySearch(model).feasible(decision.plan()),
        Levers.of(farm, asked).stream().filter(lever -> lever.to().isPresent()).toList());
  }

  private String explanation(JsonNode request, Asked asked) throws Exception {
    Kept kept = answers.get(asked, false);
    ExplainTopic topic =
        ExplainTopic.find(request.path("what").asText()).orElse(ExplainTopic.PLAN_GAIN);
    int paddocks = kept.answer().report().paddocks().size();
    int paddock = Math.max(0, Math.min(paddocks - 1, request.path("paddock").asInt()));
    return ExplanationView.of(ExplanationReport.of(kept.answer().decision(), topic, paddock));
  }

  @Override
  public void close() {
    answers.close();
  }
}
