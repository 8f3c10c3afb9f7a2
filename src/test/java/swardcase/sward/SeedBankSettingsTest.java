package swardcase.sward;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ObjDoubleConsumer;
import org.junit.jupiter.api.Test;

/** What a seed bank refuses to run on, and its seed by cultivar. */
class SeedBankSettingsTest {

  private static final Map<String, ObjDoubleConsumer<SeedBankSettings>> FRACTIONS =
      new LinkedHashMap<>();
  private static final Map<String, ObjDoubleConsumer<SeedBankSettings>> AMOUNTS =
      new LinkedHashMap<>();

  static {
    FRACTIONS.put("share of a cultivar", (settings, value) -> settings.initialShare[1] = value);
    FRACTIONS.put("retention of hard seed", (settings, value) -> settings.retention[5] = value);
    FRACTIONS.put("seed set", (settings, value) -> settings.seedSet = value);
    FRACTIONS.put("seedling kill", (settings, value) -> settings.seedlingKill = value);
    FRACTIONS.put("emergence", (settings, value) -> settings.emergence = value);
    FRACTIONS.put("share of good seed", (settings, value) -> settings.goodSeedShare = value);
    FRACTIONS.put(
        "seed set in the sowing year", (settings, value) -> settings.sowingYearYield = value);
    FRACTIONS.put("share of buried seed", (settings, value) -> settings.buriedShare = value);
    FRACTIONS.put(
        "retention of buried seed", (settings, value) -> settings.buriedRetention = value);
    AMOUNTS.put("seed yield", (settings, value) -> settings.seedYieldKgPerHa = value);
    AMOUNTS.put("seed bank", (settings, value) -> settings.initialBankKgPerHa = value);
    AMOUNTS.put("seed sown", (settings, value) -> settings.sownKgPerHa = value);
  }

  @Test
  void fractions_outsideZeroToOne_areRefusedByName() {
    for (var field : FRACTIONS.entrySet()) {
      for (double bad : new double[] {-0.01, 1.01, Double.NaN}) {
        SeedBankSettings settings = sound();
        field.getValue().accept(settings, bad);
        assertThatThrownBy(() -> settings.refuseBad(2))
            .hasMessageStartingWith(field.getKey() + " must be from 0 to 1");
      }
    }
  }

  @Test
  void amounts_belowZeroOrWithoutEnd_areRefusedByName() {
    for (var field : AMOUNTS.entrySet()) {
      for (double bad : new double[] {-0.01, Double.POSITIVE_INFINITY, Double.NaN}) {
        SeedBankSettings settings = sound();
        field.getValue().accept(settings, bad);
        assertThatThrownBy(() -> settings.refuseBad(2))
            .hasMessageStartingWith(field.getKey() + " must be zero or more");
      }
    }
  }

  @Test
  void crowding_ofZeroOrWithoutEnd_isRefused() {
    for (double bad : new double[] {0, Double.POSITIVE_INFINITY, Double.NaN}) {
      SeedBankSettings settings = sound();
      settings.crowding[1] = bad;
      assertThatThrownBy(() -> settings.refuseBad(2))
          .hasMessageStartingWith("crowding coefficient must be more than zero");
    }
  }

  @Test
  void limits_ofEveryField_areAccepted() {
    for (var field : FRACTIONS.entrySet()) {
      if (!field.getKey().equals("share of a cultivar")) {
        for (double end : new double[] {0, 1}) {
          SeedBankSettings settings = sound();
          field.getValue().accept(settings, end);
          assertThatCode(() -> settings.refuseBad(2)).as(field.getKey()).doesNotThrowAnyException();
        }
      }
    }
    for (var field : AMOUNTS.entrySet()) {
      SeedBankSettings settings = sound();
      field.getValue().accept(settings, 0);
      assertThatCode(() -> settings.refuseBad(2)).as(field.getKey()).doesNotThrowAnyException();
    }
  }

  @Test
  void bank_withoutCultivarsOrYears_isRefused() {
    assertThatThrownBy(() -> new SeedBank(0, 3))
        .hasMessage("there must be at least one cultivar, but were 0");
    assertThatThrownBy(() -> new SeedBank(2, 0))
        .hasMessage("there must be at least one year, but were 0");
    assertThat(new SeedBank(1, 1).initialKgPerHa()).isZero();
  }

  @Test
  void retention_ofOldSeedForEver_isRefusedInAnyCultivar() {
    for (int cultivar = 0; cultivar < 2; cultivar++) {
      SeedBankSettings settings = sound();
      Retentions.set(settings, cultivar, 0.4, 0.3, 0.7, 1);
      assertThatThrownBy(() -> settings.refuseBad(2))
          .hasMessage("retention of old hard seed must be below 1");
    }
  }

  @Test
  void bank_whereNothingStands_isEmpty() {
    SeedBankSettings settings = sound();
    settings.initialShare[0] = 0;
    settings.initialShare[1] = 0;
    SeedBank bank = new SeedBank(2, 4);
    double[] shares = new double[8];
    bank.run(settings, shares);
    assertThat(bank.initialKgPerHa()).isZero();
    assertThat(bank.finalKgPerHa()).isZero();
    assertThat(shares).containsOnly(0);
  }

  /** A pure stand of the first of two cultivars: all seed in the ground is its own. */
  @Test
  void bankKgPerHa_ofEachCultivar_isItsOwn() {
    SeedBankSettings settings = sound();
    settings.initialShare[0] = 1;
    settings.initialShare[1] = 0;
    SeedBank bank = new SeedBank(2, 4);
    bank.run(settings, new double[8]);
    for (int year = 0; year < 4; year++) {
      assertThat(bank.bankKgPerHa(year, 0)).isPositive();
      assertThat(bank.bankKgPerHa(year, 1)).isZero();
    }
  }

  private static SeedBankSettings sound() {
    SeedBankSettings settings = new SeedBankSettings(2);
    settings.initialShare[0] = 0.4;
    settings.initialShare[1] = 0.6;
    Retentions.set(settings, 0, 0.4, 0.3, 0.7, 0.75);
    Retentions.set(settings, 1, 0.5, 0.4, 0.6, 0.75);
    settings.seedYieldKgPerHa = 600;
    settings.initialBankKgPerHa = 1100;
    return settings;
  }
}
