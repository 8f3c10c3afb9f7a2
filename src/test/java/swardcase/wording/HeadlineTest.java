package swardcase.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swardcase.Answers;
import swardcase.RandomFarms;
import swardcase.Records;
import swardcase.chance.Spread;
import swardcase.report.PaddockResult;
import swardcase.report.PlanResult;
import swardcase.report.PlanResult.Calls;
import swardcase.report.Report;

/** The answer in a sentence or three. */
class HeadlineTest {

  private static final Report FARM =
      Answers.of("northern-farm", RandomFarms.demo("northern-farm"), 1, 20).report();

  /** The farm with these calls, its first paddocks with work that is not sure. */
  private static Report with(Calls calls, List<Integer> startsOfUnsure) {
    List<PaddockResult> paddocks = new ArrayList<>(FARM.paddocks());
    for (int i = 0; i < paddocks.size(); i++) {
      boolean unsure = i < startsOfUnsure.size();
      PaddockResult one =
          Records.with(
              paddocks.get(i), "sure", unsure ? Optional.of(false) : Optional.<Boolean>empty());
      paddocks.set(
          i,
          Records.with(
              one, "start", unsure ? OptionalInt.of(startsOfUnsure.get(i)) : OptionalInt.empty()));
    }
    PlanResult plan = Records.with(FARM.plan(), "farmWide", List.of());
    plan = Records.with(plan, "gain", new Spread(20_000, -3_000, 50_000, 0.8, 500));
    Report report = Records.with(FARM, "plan", Records.with(plan, "calls", calls));
    return Records.with(report, "paddocks", paddocks);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 | 0 | 5 | 0 | 0 | Resow 1 paddock, keep 5. This change is sure.",
        "2 | 0 | 4 | 0 | 0 | Resow 2 paddocks, keep 4. All of these changes are sure.",
        "1 | 1 | 3 | 1 | 0 | Resow 1 paddock, keep ewes off 1, keep 3, 1 too close to call."
            + " All of these changes are sure.",
        "0 | 1 | 0 | 5 | 1 | Keep ewes off 1 paddock, 5 too close to call."
            + " This change is not sure.",
        "2 | 1 | 3 | 0 | 3 | Resow 2 paddocks, keep ewes off 1, keep 3."
            + " None of these changes is sure.",
        "2 | 1 | 3 | 0 | 1 | Resow 2 paddocks, keep ewes off 1, keep 3."
            + " Of these 3 changes, one is not sure.",
        "2 | 2 | 2 | 0 | 2 | Resow 2 paddocks, keep ewes off 2, keep 2."
            + " Of these 4 changes, 2 are not sure.",
        "0 | 0 | 5 | 1 | 0 | Keep 5 paddocks, 1 too close to call.",
        "0 | 0 | 0 | 1 | 0 | 1 paddock too close to call.",
        "0 | 0 | 6 | 0 | 0 | Keep everything as it is: nothing that was looked at is worth its risk."
      })
  void headline_ofCalls_countsThemAndWhatIsSure(
      int act, int keepOff, int keep, int undecided, int unsure, String words) {
    List<Integer> later = List.of(2030, 2030, 2030).subList(0, unsure);
    assertThat(PlanWords.headline(with(new Calls(act, keepOff, keep, undecided, unsure, 0), later)))
        .isEqualTo(words);
  }

  @Test
  void headline_withUnsureWorkThisYear_namesItLast() {
    int year = FARM.plan().years().get(0).year();
    Report report = with(new Calls(2, 1, 3, 0, 3, 0), List.of(year, year + 1, year));
    assertThat(PlanWords.headline(report))
        .isEqualTo(
            "Resow 2 paddocks, keep ewes off 1, keep 3. None of these changes is sure."
                + " Not sure, of what starts in "
                + year
                + ": "
                + report.paddocks().get(0).name()
                + ", "
                + report.paddocks().get(2).name()
                + ".");
  }

  /** A mean that gains by a few large cases asks for a word on why that is called sure. */
  @Test
  void headline_ofASureChangeThatSeldomPays_saysWhy() {
    Report report = with(new Calls(1, 0, 5, 0, 0, 0), List.of());
    Spread seldom = new Spread(8_600, -13_700, 52_400, 0.53, 300);
    assertThat(
            PlanWords.headline(
                Records.with(report, "plan", Records.with(report.plan(), "gain", seldom))))
        .isEqualTo(
            "Resow 1 paddock, keep 5. This change is sure. It often does not pay, but what it may"
                + " gain is at least twice what it may lose.");
  }

  /** Crops alone are no resowing. */
  @Test
  void headline_ofPaddocksThatOnlyCrop_saysSo() {
    Report report =
        Answers.of("mixed-farm", RandomFarms.withCropOnly(RandomFarms.demo("mixed-farm")), 1, 20)
            .report();
    long crops =
        report.paddocks().stream()
            .flatMap(paddock -> paddock.options().stream())
            .filter(option -> option.chosen() && option.landUse())
            .count();
    assertThat(crops).isEqualTo(report.plan().calls().act()).isGreaterThan(1);
    assertThat(PlanWords.headline(report))
        .contains("rop " + crops + " paddocks without sowing")
        .doesNotContainIgnoringCase("resow");
  }
}
