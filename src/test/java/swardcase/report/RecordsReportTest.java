package swardcase.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import swardcase.Answers;
import swardcase.RandomFarms;
import swardcase.farm.Farm;
import swardcase.farm.FlockRecord;
import swardcase.report.RecordsReport.GainMoved;
import swardcase.report.RecordsReport.GainOf;
import swardcase.report.RecordsReport.MovedLine;
import swardcase.view.JsonView;
import swardcase.wording.MoneyFaces;
import swardcase.wording.RecordsWords;

class RecordsReportTest {

  private static Report of(Farm farm) {
    return Answers.of("recorded", farm, 1, 40).report();
  }

  private static List<FlockRecord> scanned(Farm farm, int of1000) {
    List<FlockRecord> records = new ArrayList<>();
    for (int year = 2020; year < 2025; year++) {
      records.add(
          new FlockRecord(
              year,
              farm.mobs().get(0).name(),
              1000,
              OptionalInt.of(of1000),
              OptionalInt.empty(),
              Optional.empty(),
              List.of(),
              OptionalDouble.empty(),
              Optional.empty()));
    }
    return records;
  }

  @Test
  void recordedFarm_isToldAnotherPlan_andWhereTheChangeComesFrom() {
    Report report = of(RandomFarms.demo("recorded-farm"));
    RecordsReport records = report.records().orElseThrow();

    assertThat(records.effectiveDraws()).isGreaterThanOrEqualTo(1000);
    assertThat(records.growthStopped()).isFalse();
    assertThat(records.effectiveShare())
        .isCloseTo(records.effectiveDraws() / records.drawsMade(), within(1e-12));
    assertThat(records.unexplainedMobs()).isEmpty();
    assertThat(records.withoutRecords().isThePlan()).isFalse();
    assertThat(records.gainOf()).isEqualTo(GainOf.PLAN_WITHOUT_RECORDS);
    GainMoved gain = records.withoutRecords().gain();
    double parts = records.moved().stream().mapToDouble(MovedLine::gainPart).sum();
    assertThat(parts + records.gainPartsRest())
        .isCloseTo(gain.after().mean() - gain.before().mean(), within(1e-6));
    assertThat(gain.after().mean()).isLessThan(0.5 * gain.before().mean());
    assertThat(records.years()).hasSize(6);
    assertThat(JsonView.of(report)).contains("\"records\" : {", "\"effectiveShare\" : 0.0");
    assertThat(new RecordsWords(records, new MoneyFaces(report)).sentences())
        .anyMatch(line -> line.startsWith("Without them the plan would differ"))
        .noneMatch(line -> line.contains("vet"));
  }

  /** 60 of 100 in lamb on clean clover: nothing that is drawn of such a farm explains it. */
  @Test
  void cleanFarmThatScansPoorly_isSentToAVet() {
    Farm farm = RandomFarms.demo("current-farm");
    Report report = of(farm.withRecords(farm.mobs(), scanned(farm, 600)));
    RecordsReport records = report.records().orElseThrow();

    assertThat(records.unexplainedMobs()).containsExactly(farm.mobs().get(0).name());
    assertThat(new RecordsWords(records, new MoneyFaces(report)).sentences().get(0))
        .startsWith("Something else is at work")
        .contains("Call a vet before anything is spent on pasture");
  }

  @Test
  void farmWithoutRecords_saysNothingOfThem() {
    Report report = of(RandomFarms.demo("current-farm"));
    assertThat(report.records()).isEmpty();
    assertThat(JsonView.of(report)).doesNotContain("\"records\"", "records.");
  }
}
