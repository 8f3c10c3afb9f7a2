package swardcase.draws;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import swardcase.intake.FarmFolder;
import swardcase.outcome.Course;
import swardcase.outcome.FarmModel;
import swardcase.outcome.FarmRule;
import swardcase.outcome.Plan;
import swardcase.search.LikelySearch;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/** The invented farms made ready, each with its plan and every option at its best start. */
public record Farms(FarmModel model, Plan plan, List<List<Course>> options) {

  public static Farms of(String name) {
    Tables tables = TablesLoader.standard().load();
    return of(new FarmModel(FarmFolder.read(Path.of("demo-data", name), tables).farm(), tables));
  }

  public static Farms of(FarmModel model) {
    LikelySearch search = new LikelySearch(model);
    var run = model.newRun();
    List<List<Course>> options = new ArrayList<>();
    for (int i = 0; i < model.farm().paddocks().size(); i++) {
      List<Course> ofPaddock = new ArrayList<>();
      for (int a = 0; a < model.actions().size(); a++) {
        if (a != model.keep() && run.allowed(i, a) && model.startYears(a) > model.firstStart(a)) {
          ofPaddock.add(new Course(a, model.firstStart(a)));
        }
      }
      options.add(ofPaddock);
    }
    for (FarmRule rule : FarmRule.values()) {
      options.add(
          IntStream.range(1, model.choices(rule))
              .mapToObj(choice -> new Course(choice, 0))
              .toList());
    }
    return new Farms(model, search.best(), options);
  }

  Alternatives alternatives() {
    return new Alternatives(model, plan, options, new LikelySearch(model)::feasible);
  }
}
