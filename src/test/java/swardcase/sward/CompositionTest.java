package swardcase.sward;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import swardcase.RandomFarms;
import swardcase.chance.Pert;
import swardcase.chance.Proportion;
import swardcase.chance.Range;
import swardcase.farm.Identification;
import swardcase.farm.Paddock;
import swardcase.farm.PaddockUse;
import swardcase.tables.Cultivar;
import swardcase.tables.Tables;

class CompositionTest {

  private static final Tables TABLES = StandTables.tables();
  private static final Range ALL_CLOVER = Range.exactly(1);

  /**
   * Hand arithmetic: 30 Dinninup and 60 Riverina, design effect 1.5, three names with the rest: α =
   * 20 + 1/3, 40 + 1/3, 1/3 of 61.
   */
  @Test
  void alpha_twoNamesAndTheRest_matchesHandArithmetic() {
    Composition found = of(1.5, plants(30, "Dinninup"), plants(60, "Riverina"));
    assertThat(found.size()).isEqualTo(3);
    assertThat(found.cultivar(0).name()).isEqualTo("Dinninup");
    assertThat(found.alpha(0)).isCloseTo(20 + 1 / 3d, within(1e-12));
    assertThat(found.alpha(1)).isCloseTo(40 + 1 / 3d, within(1e-12));
    assertThat(found.cultivar(2).name()).isEqualTo("unidentified");
    assertThat(found.meanShare(2)).isCloseTo(1 / 183d, within(1e-12));
    assertThat(found.share(0).likely()).isEqualTo(found.meanShare(0));
  }

  @Test
  void alpha_severalCandidates_isSplitEvenly() {
    Composition found = of(1, plants(9, "Yarloop", "Dinninup", "unidentified"));
    assertThat(found.size()).isEqualTo(3);
    for (int i = 0; i < 3; i++) {
      assertThat(found.alpha(i)).isCloseTo(3 + 1 / 3d, within(1e-12));
    }
  }

  @Test
  void of_nobodyLooked_isUnidentifiedAlone() {
    Composition found = of(1.5);
    assertThat(found.size()).isEqualTo(1);
    assertThat(found.cultivar(0).name()).isEqualTo("unidentified");
    assertThat(found.alpha(0)).isEqualTo(1);
    assertThat(found.share(0)).isEqualTo(Range.exactly(1));
    assertThat(of(1.5, plants(0, "Yarloop")).size()).isEqualTo(1);
  }

  /** Katanning has a chance of its own, 0.50; Esperance has not, so that the general 0.25 holds. */
  @Test
  void chanceHighOestrogenAbove_whereNobodyLooked_isThatOfTheDistrict() {
    for (String farm : List.of("mixed-farm", "risky-farm")) {
      Tables there = RandomFarms.TABLES.in(RandomFarms.demo(farm));
      Composition unknown = Composition.of(paddock(), there, 1.5);
      assertThat(unknown.chanceHighOestrogenAbove(0.2, ALL_CLOVER))
          .as(farm)
          .isCloseTo(farm.equals("mixed-farm") ? 0.50 : 0.25, within(1e-9));
    }
  }

  @Test
  void share_ofGroups_addsUpToOne() {
    Composition found =
        of(2, plants(12, "Dinninup"), plants(5, "Yarloop"), plants(40, "Mount Barker"));
    double high = found.share(Cultivar::highOestrogen).likely();
    double others = found.share(cultivar -> !cultivar.highOestrogen()).likely();
    assertThat(high + others).isCloseTo(1, within(1e-12));
    assertThat(found.share(cultivar -> true)).isEqualTo(Range.exactly(1));
    assertThat(found.share(cultivar -> false)).isEqualTo(Range.exactly(0));
    double sum = 0;
    for (int i = 0; i < found.size(); i++) {
      sum += found.meanShare(i);
    }
    assertThat(sum).isCloseTo(1, within(1e-12));
  }

  @Test
  void of_identificationsInAnyOrder_isTheSame() {
    List<Identification> found =
        new ArrayList<>(
            List.of(
                plants(12, "Dinninup"),
                plants(3, "Yarloop", "Riverina"),
                plants(5, "Dinninup"),
                plants(2, "unidentified"),
                plants(7, "unidentified old")));
    Composition first = of(1.5, found.toArray(new Identification[0]));
    Random random = new Random(1);
    for (int k = 0; k < 20; k++) {
      Collections.shuffle(found, random);
      Composition other = of(1.5, found.toArray(new Identification[0]));
      for (int i = 0; i < first.size(); i++) {
        assertThat(other.cultivar(i)).isEqualTo(first.cultivar(i));
        assertThat(other.alpha(i)).isCloseTo(first.alpha(i), within(1e-12));
      }
    }
  }

  @Test
  void share_ofClumpedPlants_isLessCertain() {
    Range loose = of(1, plants(20, "Dinninup"), plants(80, "Riverina")).share(0);
    Range clumped = of(3, plants(20, "Dinninup"), plants(80, "Riverina")).share(0);
    assertThat(clumped.high() - clumped.low()).isGreaterThan(1.4 * (loose.high() - loose.low()));
  }

  /** Pure clover: the Beta tail itself, mixed over high and not high for the third of a plant. */
  @Test
  void chanceHighOestrogenAbove_pureClover_isTheBetaTail() {
    Composition found = of(1, plants(20, "Dinninup"), plants(80, "Riverina"));
    double third = 1 / 3d;
    double expected =
        0.75 * Proportion.betaAbove(0.2, 20 + third, 80 + 2 * third)
            + 0.25 * Proportion.betaAbove(0.2, 20 + 2 * third, 80 + third);
    assertThat(found.chanceHighOestrogenAbove(0.2, ALL_CLOVER)).isCloseTo(expected, within(1e-12));
  }

  /** Pinned: the worked numbers of docs/method/composition.md, no evidence. */
  @Test
  void workedNumbers_ofTheMethodPage_areAsPrinted() {
    Range clover = Range.of(0.3, 0.5, 0.7);
    Composition third = of(1.5, plants(30, "Dinninup"), plants(70, "Riverina"));
    assertThat(third.share(0).low()).isCloseTo(0.21, within(0.005));
    assertThat(third.share(0).high()).isCloseTo(0.39, within(0.005));
    assertThat(third.chanceHighOestrogenAbove(0.2, clover)).isCloseTo(0.10, within(0.005));
    Composition half = of(1.5, plants(50, "Dinninup"), plants(50, "Riverina"));
    assertThat(half.chanceHighOestrogenAbove(0.2, clover)).isCloseTo(0.84, within(0.005));
  }

  /** Against plain simulation: standard error below 0.5/√200,000 = 0.0011, four allowed. */
  @Test
  void chanceHighOestrogenAbove_uncertainClover_matchesSimulation() {
    Composition found = of(1.5, plants(30, "Yarloop"), plants(30, "Mount Barker"));
    Range clover = Range.of(0.2, 0.4, 0.7);
    Pert pert = Pert.of(clover);
    SplittableRandom random = new SplittableRandom(6);
    double[] draw = new double[3];
    int n = 200_000;
    double above = 0;
    for (int k = 0; k < n; k++) {
      found.sample(random, draw);
      double high = draw[1] + (random.nextDouble() < 0.25 ? draw[2] : 0);
      above += pert.quantile(random.nextDouble()) * high > 0.2 ? 1 : 0;
    }
    assertThat(found.cultivar(1).name()).isEqualTo("Yarloop");
    assertThat(found.chanceHighOestrogenAbove(0.2, clover)).isCloseTo(above / n, within(0.0045));
  }

  @Test
  void chanceHighOestrogenAbove_higherLimitOrLessClover_isNeverMore() {
    Composition found = of(1.5, plants(25, "Dinninup"), plants(50, "Riverina"));
    double previous = 1;
    for (int i = 1; i <= 20; i++) {
      double chance = found.chanceHighOestrogenAbove(i / 20.0, Range.of(0.4, 0.6, 0.8));
      assertThat(chance).isBetween(0d, previous);
      assertThat(found.chanceHighOestrogenAbove(i / 20.0, Range.of(0.3, 0.5, 0.7)))
          .isLessThanOrEqualTo(chance);
      previous = chance;
    }
    assertThat(found.chanceHighOestrogenAbove(0.2, Range.exactly(0))).isZero();
  }

  /** Missing is not zero: what nobody looked at is never called safe. */
  @Test
  void chanceHighOestrogenAbove_nobodyLooked_isTheTablesChance() {
    assertThat(of(1.5).chanceHighOestrogenAbove(0.2, Range.of(0.3, 0.5, 0.7)))
        .isCloseTo(0.25, within(1e-12));
    assertThat(of(1.5).chanceHighOestrogenAbove(0.2, Range.exactly(0.1))).isZero();
  }

  /** Nothing is called safe that nobody could name. */
  @Test
  void chanceHighOestrogenAbove_plantsThatCannotBeNamed_isThatOfUnknownClover() {
    Composition found = of(1.5, plants(50, "unidentified"));
    assertThat(found.chanceHighOestrogenAbove(0.2, Range.exactly(0.5)))
        .isCloseTo(0.25, within(1e-9));
  }

  @Test
  void of_badDesignEffect_isRefused() {
    assertThatThrownBy(() -> of(0.5)).hasMessage("design effect must be 1 or more, but was 0.5");
    assertThatThrownBy(() -> of(Double.NaN)).hasMessageContaining("NaN");
    assertThatThrownBy(() -> of(1, plants(3, "Nobody")))
        .hasMessage("there is no cultivar 'Nobody' in the tables");
  }

  /** 40 of 40 plants with 1 %: the rest, 0.02 to 1.8 %, has at most the end of its interval. */
  @Test
  void formononetinOfNames_oneName_leavesRoomForWhatWasMissed() {
    Composition found = of(1.5, plants(40, "Dinninup"));
    double missed = found.share(1).high();
    Range range = found.formononetinOfNames(Range.of(0.02, 0.3, 1.8));
    assertThat(missed).isBetween(0.02, 0.1);
    assertThat(range.likely()).isCloseTo(1, within(1e-12));
    assertThat(range.low()).isCloseTo(1 - missed + 0.02 * missed, within(1e-9));
    assertThat(range.high()).isCloseTo(1 - missed + 1.8 * missed, within(1e-9));
  }

  /** One walker's doubt between two names is no ground to call either of them wrong. */
  @Test
  void formononetinOfNames_twoCandidates_reachesFromOneToTheOther() {
    Range unknown = Range.of(0.02, 0.3, 1.8);
    Range either = of(1.5, plants(400, "Dinninup", "Riverina")).formononetinOfNames(unknown);
    assertThat(either.low()).isLessThan(0.13);
    assertThat(either.high()).isGreaterThan(0.99);
    assertThat(either.likely()).isCloseTo(0.56, within(1e-12));
  }

  @Test
  void formononetinOfNames_anyWalk_holdsTheLikelyAndLiesWithinTheTable() {
    SplittableRandom random = new SplittableRandom(14);
    List<String> names = List.copyOf(TABLES.cultivars().keySet());
    for (int round = 0; round < 200; round++) {
      Identification[] walk = RandomFarms.plants(random, names).toArray(new Identification[0]);
      Range range = of(1.5, walk).formononetinOfNames(Range.of(0.02, 0.3, 1.8));
      assertThat(range.low()).isBetween(0.02 - 1e-12, range.likely());
      assertThat(range.high()).isBetween(range.likely(), 1.8 + 1e-12);
    }
  }

  private static Composition of(double designEffect, Identification... found) {
    return Composition.of(paddock(found), TABLES, designEffect);
  }

  private static Paddock paddock(Identification... found) {
    return new Paddock(
        "Creek",
        10,
        StandTables.assumption("clover share", 0.5),
        StandTables.assumption("growth index", 1),
        false,
        true,
        Optional.empty(),
        PaddockUse.EWES,
        Optional.empty(),
        OptionalDouble.empty(),
        RandomFarms.NO_SIGNS,
        List.of(found));
  }

  private static Identification plants(double plants, String... candidates) {
    return new Identification(List.of(candidates), plants);
  }
}
