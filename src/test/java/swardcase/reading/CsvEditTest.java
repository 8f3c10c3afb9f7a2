package swardcase.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import swardcase.check.FaultsException;
import swardcase.reading.Table.Line;

class CsvEditTest {

  private static final String TEXT =
      "# What was counted.\npaddock, cultivar ,plants\n\nHill,\"Geraldton\", 40\n# Flat is wet.\n"
          + "Flat,Yarloop,49\n,,\n";

  @Test
  void with_theSameRows_isTheSameText() {
    CsvEdit edit = new CsvEdit("plants.csv", TEXT);

    assertThat(edit.columns()).containsExactly("paddock", "cultivar", "plants");
    assertThat(edit.with(edit.rows(), new HashMap<>())).isEqualTo(TEXT);
  }

  @Test
  void with_rowsChangedAddedAndTakenOut_keepsWhatElseStandsThere() {
    CsvEdit edit = new CsvEdit("plants.csv", TEXT);
    Map<Integer, Integer> lines = new HashMap<>();
    String text =
        edit.with(
            List.of(
                new Line(0, List.of("Hill", "a, \"b\"", "3")),
                new Line(0, List.of("", " ", "")),
                new Line(6, List.of("Flat", "Yarloop", "50"))),
            lines);

    assertThat(text)
        .isEqualTo(
            "# What was counted.\npaddock, cultivar ,plants\n\n# Flat is wet.\nFlat,Yarloop,50\n"
                + ",,\nHill,\"a, \"\"b\"\"\",3\n");
    assertThat(lines).containsOnly(Map.entry(2, 5), Map.entry(0, 7));
  }

  @Test
  void with_otherSeparatorLineEndsAndHashes_writesAsTheFileDoes() {
    String text = "paddock;cultivar;plants\r\nHill;Geraldton;40\r\n";
    CsvEdit edit = new CsvEdit("plants.csv", text);
    List<Line> rows = new ArrayList<>(edit.rows());
    rows.add(new Line(0, List.of("#3", "x;y", "1")));

    assertThat(edit.with(rows, new HashMap<>())).isEqualTo(text + "\"#3\";\"x;y\";1\r\n");
  }

  @Test
  void table_withACellOfSeveralLines_isRefused() {
    String text = "paddock,cultivar,plants\nHill,\"Geral\ndton\",40\n";

    assertThatThrownBy(() -> new CsvEdit("plants.csv", text))
        .isInstanceOf(FaultsException.class)
        .hasMessageContaining("plants.csv: must have headings and no cell of several lines");
  }
}
