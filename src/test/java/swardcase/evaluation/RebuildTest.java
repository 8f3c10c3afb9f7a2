package swardcase.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import swardcase.farm.Action;
import swardcase.farm.SeasonType;
import swardcase.farm.UseRule;
import swardcase.feed.FeedResult;
import swardcase.intake.FarmFolder;
import swardcase.outcome.FarmModel;
import swardcase.outcome.Outcome;
import swardcase.outcome.OutcomeFunction;
import swardcase.outcome.Plan;
import swardcase.sward.Composition;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/**
 * A farm of two paddocks at likely inputs, against src/test/scripts/rebuild.py, which works it out
 * from the method pages and the tables alone.
 */
class RebuildTest {

  private static final Path FARM = Path.of("src/test/resources/farms/two-paddocks");
  private static final Path REBUILT = Path.of("src/test/resources/rebuild/two-paddocks.csv");

  private static final double EXACT = 1e-9;

  /** A feed year of the search repeats itself within 0.01 MJ of thousands. */
  private static final double NEAR = 1e-6;

  private static final List<String> READ_FROM_FEED_YEARS =
      List.of("supplement saved, money", "net present value");

  /** Rounding where a pool is empty or nothing is bought. */
  private static final double NOTHING = 1e-9;

  private static final int ONLY_MOB = 0;

  private final FarmModel model;
  private final OutcomeFunction run;
  private final Outcome ruled;
  private final Plan resow;
  private final Outcome resown;

  RebuildTest() {
    Tables tables = TablesLoader.standard().load();
    model = new FarmModel(FarmFolder.read(FARM, tables).farm(), tables);
    run = model.newRun();
    ruled = model.newOutcome();
    run.evaluate(model.keepAll().with(paddock("Old"), rule(), 0), ruled);
    resow = model.keepAll().with(paddock("Old"), action("spray-fallow"), 0);
    resown = model.newOutcome();
    run.evaluate(resow, resown);
  }

  @TestFactory
  List<DynamicTest> rebuiltFromThePages() {
    return PublishedRows.rows(REBUILT).stream()
        .map(
            row ->
                DynamicTest.dynamicTest(row.get("what") + " " + row.get("of"), () -> compare(row)))
        .toList();
  }

  @Test
  void effectsAreLargeEnoughToTell() {
    assertThat(run.lambsLost(ONLY_MOB)).isGreaterThan(1);
    assertThat(ruled.lambs(0)).isGreaterThan(1);
    assertThat(boughtMjPerHa("average")).isGreaterThan(100);
  }

  private void compare(Map<String, String> row) {
    double rebuilt = Double.parseDouble(row.get("value"));
    double ours = ofProgram(row.get("what"), row.get("of"));
    boolean near = READ_FROM_FEED_YEARS.stream().anyMatch(row.get("what")::endsWith);
    double relative = near ? NEAR : EXACT;
    assertThat(ours)
        .as("src/test/scripts/rebuild.py writes the rows anew")
        .isCloseTo(rebuilt, within(NOTHING + relative * Math.abs(rebuilt)));
  }

  private double ofProgram(String what, String of) {
    return switch (what) {
      case "share of clover" -> share(of);
      case "winter growth lost, kg DM/ha" -> run.winterLossKgDmPerHa(paddock(of));
      case "lost for thin stand, kg DM/ha" -> run.thinLossKgDmPerHa(paddock(of));
      case "strength, % of green intake" -> run.greenDose(paddock(of));
      case "feed, ha of ordinary growth" -> run.feedWeight(paddock(of));
      case "winter growth of farm" -> run.winterGrowthNow();
      case "clover of what is eaten" -> run.legumeShareNow();
      case "dose, % of intake" -> run.dose(Integer.parseInt(of));
      case "ewes in lamb, unaffected" -> run.flock(ONLY_MOB).unaffectedShare();
      case "ewes in lamb now" -> run.flock(ONLY_MOB).shareNow();
      case "ewes barren for good" -> run.flock(ONLY_MOB).sterileNow();
      case "lambs lost" -> run.lambsLost(ONLY_MOB);
      case "money lost with lambs" -> run.lambCost(ONLY_MOB);
      case "supplement, MJ/ha" -> boughtMjPerHa(of);
      case "supplement, t of farm" -> boughtMj(of) * run.tonnesPerMj();
      case "supplement, money of farm" -> boughtMj(of) * run.pricePerMj();
      case "green at end, kg DM/ha" -> average().greenKgDmPerHa[Integer.parseInt(of)];
      case "dry at end, kg DM/ha" -> average().dryKgDmPerHa[Integer.parseInt(of)];
      case "bought, MJ/ha" -> average().boughtMjPerHa[Integer.parseInt(of)];
      case "resown: clover share" -> run.cloverShare(resow, paddock("Old"), Integer.parseInt(of));
      case "resown: old cultivars, share of clover" ->
          run.oldShare(resow, paddock("Old"), Integer.parseInt(of));
      case "resown: strength, % of green intake" ->
          run.greenDose(paddock("Old"), resow.action(paddock("Old")), Integer.parseInt(of));
      default ->
          ofPlan(what.startsWith("rule: ") ? ruled : resown, what.replaceFirst(".*: ", ""), of);
    };
  }

  private static double ofPlan(Outcome plan, String what, String year) {
    return switch (what) {
      case "ewes more in lamb" -> plan.ewesInLamb(Integer.parseInt(year));
      case "lambs more" -> plan.lambs(Integer.parseInt(year));
      case "money of lambs" -> plan.lambsSaved(Integer.parseInt(year));
      case "supplement saved, money" -> plan.supplementSaved(Integer.parseInt(year));
      case "costs paid" -> plan.actionCost(Integer.parseInt(year));
      case "own time, money" -> plan.labourCost(Integer.parseInt(year));
      case "net present value" -> plan.npv();
      default -> throw new IllegalArgumentException("no number of the program for " + what);
    };
  }

  private double share(String paddockAndCultivar) {
    String[] names = paddockAndCultivar.split("/");
    Composition composition = run.composition(paddock(names[0]));
    double share = 0;
    for (int c = 0; c < composition.size(); c++) {
      share += composition.cultivar(c).name().equals(names[1]) ? composition.likelyShare(c) : 0;
    }
    return share;
  }

  private FeedResult average() {
    return run.feedNow(SeasonType.AVERAGE.ordinal());
  }

  private double boughtMjPerHa(String season) {
    SeasonType type =
        Arrays.stream(SeasonType.values())
            .filter(of -> of.label().equals(season))
            .findFirst()
            .orElseThrow();
    return Arrays.stream(run.feedNow(type.ordinal()).boughtMjPerHa).sum();
  }

  private double boughtMj(String season) {
    return boughtMjPerHa(season) * model.farm().areaHa();
  }

  private int paddock(String name) {
    for (int i = 0; i < model.farm().paddocks().size(); i++) {
      if (model.farm().paddocks().get(i).name().equals(name)) {
        return i;
      }
    }
    throw new IllegalArgumentException("no paddock " + name);
  }

  private int action(String key) {
    return place(model.actions().stream().filter(a -> a.use().isEmpty() && a.key().equals(key)));
  }

  private int rule() {
    return place(
        model.actions().stream()
            .filter(a -> !a.changesStand())
            .filter(
                a ->
                    a.use()
                        .map(UseRule::when)
                        .filter(UseRule.When.BEFORE_JOINING::equals)
                        .isPresent()));
  }

  private int place(Stream<Action> found) {
    return model.actions().indexOf(found.findFirst().orElseThrow());
  }
}
