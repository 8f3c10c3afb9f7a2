package swardcase.view;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TextTableTest {

  private static TextTable table() {
    TextTable table = TextTable.of("Paddock", "What to do", ">Gain A$ (range)");
    table.row("House", "Keep as it is", "");
    table.row("Bottom Flat", "Crop three seasons, then resow", "29,000 (\u22129,000 to 84,000)");
    return table;
  }

  @Test
  void lines_withRoom_areOneForEachRow() {
    assertThat(table().lines(80))
        .containsExactly(
            "Paddock      What to do                                Gain A$ (range)",
            "----------------------------------------------------------------------",
            "House        Keep as it is",
            "Bottom Flat  Crop three seasons, then resow  29,000 (\u22129,000 to 84,000)");
    assertThat(table().width()).isEqualTo(70);
  }

  @Test
  void lines_withoutRoom_areBrokenBetweenWordsWhereThatAddsFewest() {
    assertThat(table().lines(50))
        .containsExactly(
            "Paddock     What to do             Gain A$ (range)",
            "--------------------------------------------------",
            "House       Keep as it is",
            "Bottom      Crop three seasons,  29,000 (\u22129,000 to",
            "Flat        then resow                     84,000)");
  }

  @Test
  void lines_belowTheLongestWords_areAsWideAsThose() {
    assertThat(table().lines(1)).allSatisfy(line -> assertThat(line.length()).isLessThan(30));
  }

  @Test
  void word_withoutEnd_isBrokenSoThatItPushesNothingOffThePage() {
    TextTable table = TextTable.of("Paddock", "ha");
    table.row("x".repeat(500), "12");

    assertThat(table.lines(40)).allSatisfy(line -> assertThat(line.length()).isLessThan(41));
    assertThat(String.join("", table.lines(40)).replaceAll("[^x]", "")).hasSize(500);
  }

  @Test
  void cell_thatIsSetIn_staysSetInWhereItIsBroken() {
    TextTable table = TextTable.of("Number");
    table.row("  to hold joining ewes off");

    assertThat(table.lines(18)).endsWith("  to hold joining", "  ewes off");
  }

  @Test
  void numbers_atTheEndOfALine_keepTheirSignsAndUnits() {
    assertThat(TextLines.broken("costs A$ 16,000, of it 65 % or 2 to 5 %", 12, "", ""))
        .containsExactly("costs", "A$ 16,000,", "of it 65 %", "or 2 to 5 %");
    assertThat(TextLines.broken("costs A$ \u22129 to keep", 8, "", " "))
        .containsExactly("costs", " A$ \u22129", " to keep");
  }
}
