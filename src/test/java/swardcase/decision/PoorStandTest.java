package swardcase.decision;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swardcase.Answers;
import swardcase.Answers.Answer;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.farm.Farm;
import swardcase.farm.Paddock;
import swardcase.farm.StandSigns;
import swardcase.intake.FarmFolder;
import swardcase.report.PaddockResult;
import swardcase.sward.StandGate.LookFirst;
import swardcase.sward.StandGate.State;
import swardcase.sward.StandGate.What;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/** What is known to be poor makes a sowing unsure; but for seedlings it changes no number. */
class PoorStandTest {

  private static final Farm RISKY =
      FarmFolder.read(Path.of("demo-data/risky-farm"), RandomFarms.TABLES).farm();

  /** With ewes that respond as in the dosed trial for certain, so that some sowing is sure. */
  @TempDir private static Path trial;

  private static Tables tables() throws IOException {
    Files.writeString(
        trial.resolve("dose-response.csv"),
        "key,name,low,likely,high,unit,evidence,source,note\n"
            + "oestrogen.chance-none,chance that doses do nothing,0,0,0,fraction,,,\n");
    return TablesLoader.standard().with(trial).load();
  }

  private static Answer nobodyLooked;

  @BeforeAll
  static void decide() throws IOException {
    nobodyLooked = answer(OptionalDouble.empty(), Optional.empty());
  }

  private static Answer answer(OptionalDouble seedlings, Optional<Boolean> roots)
      throws IOException {
    OptionalDouble none = OptionalDouble.empty();
    StandSigns signs =
        new StandSigns(none, none, none, none, none, Optional.empty(), roots, Optional.empty());
    List<Paddock> paddocks =
        RISKY.paddocks().stream()
            .map(
                of ->
                    new Paddock(
                        of.name(),
                        of.areaHa(),
                        of.cloverShare(),
                        of.growthIndex(),
                        of.waterlogged(),
                        of.arable(),
                        of.leafTest(),
                        of.use(),
                        of.mob(),
                        seedlings,
                        signs,
                        of.identifications()))
            .toList();
    return Answers.of(
        "risky-farm", FarmCopy.of(RISKY).paddocks(paddocks).build(), tables(), 1, 100);
  }

  private static boolean sows(Answer answer, PaddockFindings findings) {
    return answer.model().actions().get(findings.planned().choice().action()).sows();
  }

  @Test
  void poorRoots_makeEachSowingUnsureWhateverTheDrawsSay() throws IOException {
    Answer before = nobodyLooked;
    Answer poor = answer(OptionalDouble.empty(), Optional.of(false));
    assertThat(poor.decision().plan()).isEqualTo(before.decision().plan());
    assertThat(poor.howSure().gain()).isEqualTo(before.howSure().gain());
    int turned = 0;
    for (int i = 0; i < before.paddocks(); i++) {
      PaddockFindings then = before.howSure().paddock(i);
      PaddockFindings now = poor.howSure().paddock(i);
      assertThat(now.verdict()).isEqualTo(then.verdict());
      assertThat(now.nearLine()).isEqualTo(then.nearLine());
      if (!sows(poor, now)) {
        assertThat(now.sure()).isEqualTo(then.sure());
        assertThat(now.lookFirst()).isEmpty();
        continue;
      }
      assertThat(now.sure()).contains(false);
      assertThat(now.notSure())
          .contains(then.sure().orElseThrow() ? NotSure.POOR_STAND : NotSure.BOTH);
      now.sureInstead()
          .map(now.courses()::get)
          .ifPresent(course -> assertThat(course.isSure() && !course.held()).isTrue());
      turned += then.sure().orElseThrow() ? 1 : 0;
    }
    assertThat(turned).isPositive();
    assertThat(poor.report().plan().calls().unsure())
        .isEqualTo(before.report().plan().calls().unsure() + turned);
    assertThat(poor.howSure().sureGain()).isNotEqualTo(before.howSure().sureGain());
    PaddockResult sown =
        poor.report().paddocks().stream()
            .filter(each -> !each.lookFirst().isEmpty())
            .findFirst()
            .orElseThrow();
    assertThat(sown.lookFirst())
        .filteredOn(each -> each.what() == What.ROOTS)
        .extracting(LookFirst::state)
        .containsExactly(State.POOR);
  }

  @Test
  void unknownGoodAndBetween_leaveSureAsItIs() throws IOException {
    Answer unknown = nobodyLooked;
    Answer counted = answer(OptionalDouble.of(700), Optional.empty());
    Answer known = answer(OptionalDouble.of(700), Optional.of(true));
    for (int i = 0; i < unknown.paddocks(); i++) {
      PaddockFindings then = unknown.howSure().paddock(i);
      PaddockFindings now = known.howSure().paddock(i);
      assertThat(now.sure()).isEqualTo(counted.howSure().paddock(i).sure());
      if (sows(known, now)) {
        assertThat(then.lookFirst())
            .filteredOn(each -> each.what() == What.ROOTS || each.what() == What.SEEDLINGS)
            .allMatch(each -> each.state() == State.UNKNOWN)
            .hasSize(2);
        assertThat(now.lookFirst())
            .filteredOn(each -> each.what() == What.ROOTS || each.what() == What.SEEDLINGS)
            .singleElement()
            .satisfies(each -> assertThat(each.state()).isEqualTo(State.BETWEEN));
      }
    }
    assertThat(known.howSure().sureGain()).isEqualTo(counted.howSure().sureGain());
  }
}
