package swardcase.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swardcase.chance.Certainty;
import swardcase.chance.Sample;
import swardcase.chance.Spread;
import swardcase.draws.Alternatives;
import swardcase.farm.ActionKind;
import swardcase.farm.Farm;
import swardcase.outcome.FarmModel;
import swardcase.search.PlanFarms;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

class HowSureTest {

  private static Decision decision;
  private static HowSure found;

  /** Not while the class is being loaded: other threads would wait for it for ever. */
  @BeforeAll
  static void decide() {
    decision = decide(PlanFarms.demo("mixed-farm"), Decision.USUAL_DRAWS);
    found = HowSure.of(decision);
  }

  private static Decision decide(Farm farm, int draws) {
    return Decision.of(
        Decision.draws(PlanFarms.model(farm), Decision.USUAL_SEED, draws), List.of(), done -> {});
  }

  /**
   * Nothing is paid, nobody's time is counted and ewes respond: what hardly ever loses is no close
   * call.
   */
  @Test
  void sure_freeChangeThatHardlyEverLoses_isSure(@TempDir Path temp) throws IOException {
    Files.writeString(
        temp.resolve("dose-response.csv"),
        "key,name,low,likely,high,unit,evidence,source,note\n"
            + "oestrogen.chance-none,chance that doses do nothing,0,0,0,fraction,,,\n");
    Tables tables = TablesLoader.standard().with(temp).load();
    Farm farm = PlanFarms.demo("large-farm");
    FarmModel model = new FarmModel(farm, tables);
    Decision of =
        Decision.rough(Decision.draws(model, Decision.USUAL_SEED, 200), List.of(), done -> {});
    HowSure sure = HowSure.of(of);
    int never = 0;
    for (int i = 0; i < of.plan().paddocks(); i++) {
      PaddockFindings paddock = sure.paddock(i);
      CourseFindings planned = paddock.planned();
      boolean held = model.actions().get(of.plan().action(i)).kind() == ActionKind.KEEP_OFF;
      if (held && planned.judgement().chanceItPays() > 0.9) {
        assertThat(paddock.verdict()).isEqualTo(Verdict.KEEP_OFF);
        assertThat(paddock.sure()).contains(true);
        never++;
      }
    }
    assertThat(never).isPositive();
  }

  @Test
  void unknowns_ofAFarm_areManyAndMostMoveNothingForSure() {
    assertThat(found.unknowns()).hasSizeGreaterThan(50);
    assertThat(found.byVarianceShare()).hasSizeBetween(3, found.unknowns().size() - 10);
  }

  @Test
  void certainty_byRisingTolerance_risesTowardsTheMean() {
    double before = Double.NEGATIVE_INFINITY;
    for (Certainty certainty : found.certainty()) {
      assertThat(certainty.worth()).isGreaterThan(before).isLessThan(found.gain().mean());
      before = certainty.worth();
    }
    assertThat(found.certainty().get(1).tolerance()).isEqualTo(decision.tolerance());
    assertThat(found.certainty().get(1).worth())
        .isCloseTo(decision.found().plan().certaintyEquivalent(), within(1e-6));
  }

  /**
   * 1,000 plain draws leave an error of 3.2 % of the standard deviation. The even spread helps less
   * where a story multiplies the other numbers, and not at all in draws made anew.
   */
  @Test
  void spread_ofThePlan_keepsItsOrderAndAnErrorBelowThatOfPlainDraws() {
    Spread gain = found.gain();
    assertThat(gain).isEqualTo(decision.gain());
    double spread = Sample.standardDeviation(decision.simulation().npv(Alternatives.PLAN));
    assertThat(gain.standardError()).isLessThan(0.025 * spread);
    assertThat(found.gainQuantiles()).hasSize(21).isSorted();
    assertThat(gain.low()).isEqualTo(found.gainQuantiles()[1]);
    assertThat(gain.high()).isEqualTo(found.gainQuantiles()[19]);
  }

  @Test
  void carefulGain_isThatOfTheCarefulPlan() {
    assertThat(found.carefulGain().isPresent()).isEqualTo(decision.found().careful().isPresent());
    found
        .carefulGain()
        .ifPresent(
            gain ->
                assertThat(gain.mean())
                    .isCloseTo(decision.found().careful().orElseThrow().mean(), within(1e-6)));
  }

  @Test
  void findings_workedOutTwice_areTheSame() {
    HowSure again = HowSure.of(decision);
    for (int i = 0; i < decision.plan().paddocks(); i++) {
      assertThat(again.paddock(i)).isEqualTo(found.paddock(i));
    }
    assertThat(again.unknowns()).isEqualTo(found.unknowns());
    assertThat(again.sureGain()).isEqualTo(found.sureGain());
  }

  @Test
  void of_drawsThatDoNotFillTheBlocks_areRefused() {
    assertThatThrownBy(() -> Decision.draws(decision.model(), 1, 30))
        .hasMessage("draws must be a multiple of 20, but was 30");
  }
}
