package swardcase.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/** What is said about the age of prices. */
class PriceAgeTest {

  private static final Tables TABLES = TablesLoader.standard().load();
  private static final LocalDate TAKEN = LocalDate.of(2024, 2, 29);
  private static final String SILENT = "the day behind price_date";

  @TempDir private Path folder;

  private LoadedFarm farm(String lines) throws IOException {
    Files.writeString(folder.resolve("farm.yaml"), "name: A\ngrowth: Katanning\n" + lines);
    Files.writeString(folder.resolve("paddocks.csv"), "paddock,area_ha\nHouse,30\n");
    return FarmFolder.read(folder, TABLES);
  }

  @ParameterizedTest
  @CsvSource({
    "2024-02-28, dated 2024-02-29",
    "2024-02-29, ''",
    "2025-02-28, ''",
    "2025-03-01, more than a year before 2025-03-01"
  })
  void prices_onADay_areDoubtedWhenOldOrNotYetTaken(LocalDate day, String says) {
    assertThat(PriceAge.doubt(TAKEN, day).map(Doubt::what).orElse("")).contains(says);
    assertThat(PriceAge.doubt(TAKEN, day).isEmpty()).isEqualTo(says.isEmpty());
  }

  @Test
  void farm_onADay_hasTheDoubtBehindItsOwn() throws IOException {
    LoadedFarm farm = farm("price_date: 2024-02-29\nprices: {leaf_test: 90}\n");

    LoadedFarm later = farm.on(LocalDate.of(2026, 1, 1));

    assertThat(later.doubts()).hasSize(farm.doubts().size() + 1).containsAll(farm.doubts());
    assertThat(later.remarks()).hasSize(farm.remarks().size() + 1);
    assertThat(farm.notices()).noneMatch(notice -> notice.contains(SILENT));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "prices: {leaf_test: 90}",
        "supplement: {name: barley, price_per_tonne: 300}",
        "costs: {oversow: {seed: 90}}",
        "actions: {crop-1: {crop_margin_per_ha: 90}}"
      })
  void prices_ofTheFarmWithoutADay_areNoticedOnce(String prices) throws IOException {
    assertThat(farm(prices).notices())
        .filteredOn(notice -> notice.contains(SILENT))
        .containsExactly(
            "When the farm's own prices and quotes were taken is not said, so they may be old: write"
                + " the day behind price_date.");
  }

  @Test
  void farm_withTablePricesAlone_isNotAskedForADay() throws IOException {
    assertThat(farm("finance: {horizon_years: 9}").notices())
        .noneMatch(notice -> notice.contains(SILENT));
  }

  @ParameterizedTest
  @ValueSource(strings = {"2026", "2026-13-01", "1 March 2026", "1899-12-31", "3000-01-01", "[1]"})
  void price_date_thatIsNoDate_isRefused(String date) {
    assertThatThrownBy(() -> farm("price_date: " + date))
        .hasMessageContaining("farm.yaml:3: price_date: must be a");
  }
}
