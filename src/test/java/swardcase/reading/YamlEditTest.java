package swardcase.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class YamlEditTest {

  private static final String TEXT =
      """
      # Invented \u00e4\ud83d\udc11.
      name: Farm          # its name
      mobs:
        - name: mature ewes
          ewes: 1600      # counted
          ages: [0, 800, 800]
        - name: 'maidens'
          ewes: 450
      supplement: barley  # ours
      prices:
        net_value_per_lamb: [80, 120, 180]
        # none for ewes

      finance: {horizon_years: 12}
      empty:
      """;

  private static String set(String value, String... path) {
    YamlEdit edit = new YamlEdit(TEXT);
    edit.set(List.of(path), value);
    return edit.text();
  }

  @Test
  void find_ofWhatStandsThere_isAsItWasWritten() {
    YamlEdit edit = new YamlEdit(TEXT);

    assertThat(edit.find(List.of("name"))).contains("Farm");
    assertThat(edit.find(List.of("mobs", "maidens", "ewes"))).contains("450");
    assertThat(edit.find(List.of("prices", "net_value_per_lamb"))).contains("[80, 120, 180]");
    assertThat(edit.find(List.of("prices", "replacement_ewe"))).isEmpty();
    assertThat(edit.find(List.of("mobs", "others", "ewes"))).isEmpty();
  }

  @Test
  void set_ofAValueThatIsThere_changesNothingElse() {
    assertThat(set("500", "mobs", "maidens", "ewes")).isEqualTo(TEXT.replace("450", "500"));
    assertThat(set("1700", "mobs", "mature ewes", "ewes")).isEqualTo(TEXT.replace("1600", "1700"));
    assertThat(set("100", "prices", "net_value_per_lamb"))
        .isEqualTo(TEXT.replace("[80, 120, 180]", "100"));
    assertThat(set("15", "finance", "horizon_years")).isEqualTo(TEXT.replace("12}", "15}"));
  }

  @Test
  void set_ofAKeyThatIsNotThere_addsALineBelowTheKeyAboveIt() {
    assertThat(set("180", "prices", "replacement_ewe"))
        .isEqualTo(TEXT.replace("180]\n", "180]\n  replacement_ewe: 180\n"));
    assertThat(set("6", "mobs", "maidens", "joining_weeks"))
        .isEqualTo(TEXT.replace("450\n", "450\n    joining_weeks: 6\n"));
    assertThat(set("5000", "finance", "budget_per_year"))
        .isEqualTo(TEXT.replace("12}", "12, budget_per_year: 5000}"));
    assertThat(set("330", "supplement", "price_per_tonne"))
        .isEqualTo(
            TEXT.replace(
                "supplement: barley  # ours",
                "supplement: \n  name: barley\n  price_per_tonne: 330  # ours"));
    assertThat(set("1", "empty", "key")).isEqualTo(TEXT.replace("empty:", "empty:\n  key: 1"));
    assertThat(set("3", "management", "weaning_weeks"))
        .isEqualTo(TEXT + "management:\n  weaning_weeks: 3\n");
    assertThat(set("Narrikup", "sow")).isEqualTo(TEXT + "sow: Narrikup\n");
  }
}
