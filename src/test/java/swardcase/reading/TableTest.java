package swardcase.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swardcase.chance.Range;
import swardcase.check.Fault;
import swardcase.reading.Node.Scalar;

class TableTest {

  private Faults faults = new Faults();

  private Table table(String text) {
    return FileText.decode(text.getBytes(StandardCharsets.UTF_8), "t.csv", faults)
        .map(decoded -> Table.of("t.csv", decoded, faults))
        .orElse(null);
  }

  private Fields row(String text) {
    return table(text).rows().get(0);
  }

  private List<String> messages() {
    return faults.all().stream().map(Fault::message).toList();
  }

  @Test
  void rows_withCommentsAndBlankLines_keepTheirLineNumbers() {
    Table table =
        table(
            "# note\nname, area_ha\n\nHome,3.5\n  # \"aside, here\n\"Two\nlines\",4\n,\n\nEnd,5\n");
    assertThat(table.columns()).containsExactly("name", "area_ha");
    assertThat(table.rows()).extracting(row -> row.at().line()).containsExactly(4, 6, 10);
    assertThat(table.rows())
        .extracting(row -> row.number("area_ha", -1e12, 1e12))
        .containsExactly(3.5, 4d, 5d);
    assertThat(faults.all()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "name,share\nHome,0.5\n",
        "\uFEFFname,share\r\nHome,0.5\r\n",
        "name,share\rHome,0.5\r",
        "name;share\nHome;0,5\n",
        "\uFEFFname;share\r\nHome;0.5\r\n;\r\n\r\n",
        "name,share\nHome,\"0,5\"",
        " name , share \n Home , .5 ",
        "name,share,,\nHome,0.5,,\n,,,\n"
      })
  void file_inAnyUsualDialect_readsTheSame(String text) {
    Fields row = row(text);
    assertThat(row.text("name")).isEqualTo("Home");
    assertThat(row.number("share", -1e12, 1e12)).isEqualTo(0.5);
    assertThat(faults.count()).isZero();
    assertThat(faults.all()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"NaN", "Infinity", "abc", "5 ha", "30%", "1 000", "--1", "1.2.3", "0x10", "1e999"})
  void number_thatIsNone_isRefused(String cell) {
    assertThat(row("name,share\nHome," + cell + "\n").number("share", -1e12, 1e12)).isNaN();
    assertThat(faults.all()).singleElement().satisfies(f -> assertThat(f.found()).isEqualTo(cell));
    assertThat(faults.all().get(0).message()).startsWith("t.csv:2: share: must be a ");
  }

  @Test
  void number_withPossibleThousands_isRefusedAsAmbiguous() {
    assertThat(row("a;b\n12,500;0,125\n").number("a", -1e12, 1e12)).isNaN();
    assertThat(messages())
        .containsExactly(
            "t.csv:2: a: must be a number that can be read one way only, without thousands;"
                + " found '12,500'");
    assertThat(row("a;b\n12,500;0,125\n").number("b", -1e12, 1e12)).isEqualTo(0.125);
  }

  @Test
  void number_outOfRange_namesTheLimits() {
    assertThat(row("share\n120\n").number("share", 0, 100)).isNaN();
    assertThat(messages()).containsExactly("t.csv:2: share: must be from 0 to 100; found '120'");
  }

  @Test
  void number_blank_isFaultWhereNeededAndNothingWhereNot() {
    Fields row = row("name,share\nHome,\n");
    assertThat(row.findNumber("share", 0, 1)).isEmpty();
    assertThat(faults.count()).isZero();
    assertThat(row.number("share", -1e12, 1e12)).isNaN();
    assertThat(messages()).containsExactly("t.csv:2: share: must be given");
  }

  @Test
  void whole_withFraction_isRefused() {
    assertThat(row("n\n2.5\n").whole("n", 0, 9)).isZero();
    assertThat(messages()).containsExactly("t.csv:2: n: must be a whole number; found '2.5'");
  }

  @Test
  void range_outOfOrder_isRefused() {
    assertThat(row("a,b,c\n1,3,2\n").range("a", "b", "c", 0, 9)).isEmpty();
    assertThat(messages())
        .containsExactly("t.csv:2: b: a, b and c must be in rising order; found '[1, 3, 2]'");
    assertThat(row("a,b,c\n1,2,3\n").range("a", "b", "c", 0, 9)).hasValue(Range.of(1, 2, 3));
  }

  @Test
  void findRange_allBlankOrPartlyBlank_isNothingOrFault() {
    assertThat(row("n,a,b,c\nx,,,\n").findRange("a", "b", "c", 0, 9)).isEmpty();
    assertThat(faults.all()).isEmpty();
    assertThat(row("n,a,b,c\nx,1,,3\n").findRange("a", "b", "c", 0, 9)).isEmpty();
    assertThat(messages()).containsExactly("t.csv:2: b: must be given");
  }

  @Test
  void choice_misspelt_namesTheNearest() {
    Fields row = row("era\ncurent\n");
    assertThat(row.choice("era", Map.of("old", 1, "current", 2))).isNull();
    assertThat(messages())
        .containsExactly(
            "t.csv:2: era: must be one of: current, old; found 'curent'; did you mean 'current'?");
  }

  @Test
  void yes_otherThanYesOrNo_isRefused() {
    assertThat(row("arable\nYES\n").yes("arable")).isTrue();
    assertThat(row("arable\n1\n").yes("arable")).isFalse();
    assertThat(messages()).containsExactly("t.csv:2: arable: must be one of: no, yes; found '1'");
  }

  @Test
  void words_betweenSemicolons_areTrimmed() {
    assertThat(row("a,b\nJune; July ;;,x\n").words("a"))
        .extracting(Scalar::text)
        .containsExactly("June", "July");
  }

  @Test
  void make_afterFaultOrBrokenRule_buildsNothing() {
    Fields row = row("a,b\n1,2\n");
    assertThat(row.make(() -> Range.of(2, 1, 0))).isEmpty();
    assertThat(messages().get(0)).startsWith("t.csv:2: low, likely and high must be in rising");
    assertThat(row.make(() -> Range.exactly(row.number("a", 5, 9)))).isEmpty();
    assertThat(row.make(() -> Range.exactly(row.number("a", 0, 9)))).hasValue(Range.exactly(1));
    assertThat(messages()).hasSize(2);
  }

  @Test
  void make_ofABrokenReader_isNoFaultOfTheFile() {
    Fields row = row("a,b\n1,2\n");
    assertThatThrownBy(() -> row.make(() -> List.of().get(0)))
        .isInstanceOf(IndexOutOfBoundsException.class);
    assertThat(messages()).isEmpty();
  }

  @Test
  void columns_unknownAndMissing_areNamed() {
    Table table = table("name,arae_ha,colour\nHome,1,red\n");
    Fields row = table.rows().get(0);
    assertThat(row.text("name")).isEqualTo("Home");
    assertThat(row.number("area_ha", 0, 9)).isNaN();
    assertThat(row.findText("note")).isEmpty();
    table.finish();
    assertThat(messages())
        .containsExactlyInAnyOrder(
            "t.csv: arae_ha: is not a column of this table; did you mean 'area_ha'?",
            "t.csv: colour: is not a column of this table",
            "t.csv: area_ha: must be a column of this table");
  }

  @Test
  void demandUnique_repeatedKey_namesBothLines() {
    table("name,n\nHome,1\nhome,2\n").demandUnique(List.of("name"));
    assertThat(messages())
        .containsExactly(
            "t.csv:3: name: must not be given twice; it stands in line 2 already; found 'home'");
  }

  @Test
  void row_shortOrLong_isRefused() {
    assertThat(table("a,b\n1\n1,2,3\n1,2,\n").rows()).hasSize(1);
    assertThat(messages())
        .containsExactly(
            "t.csv:2: must have as many cells as there are headings (2); found '1'",
            "t.csv:3: must have as many cells as there are headings (2); found '3'");
  }

  @Test
  void cell_withoutHeading_isRefused() {
    assertThat(table("a,\n1,2\n").rows()).isEmpty();
    assertThat(messages())
        .containsExactly("t.csv:2: must not have a cell without a heading; found '2'");
  }

  @Test
  void heading_twice_isRefused() {
    table("a,a\n1,2\n");
    assertThat(messages()).containsExactly("t.csv:1: a: must not be a heading twice");
  }

  @Test
  void quotationMark_leftOpen_isRefused() {
    table("a,b\n1,\"2\n3,4\n");
    assertThat(messages()).singleElement().asString().contains("quotation mark");
  }

  @Test
  void name_startingWithHashAndDigit_isNotDroppedInSilence() {
    table("name,n\n#3,1\n");
    assertThat(messages()).singleElement().asString().startsWith("t.csv:2: must not start with #");
    faults = new Faults();
    assertThat(row("name,n\n\"No. #3\",1\n").text("name")).isEqualTo("No. #3");
    assertThat(faults.all()).isEmpty();
  }

  @Test
  void bytes_notUtf8_areRefusedWithTheirLine() {
    byte[] bytes = "name\nok\nMontém\n".getBytes(StandardCharsets.ISO_8859_1);
    assertThat(FileText.decode(bytes, "t.csv", faults)).isEmpty();
    assertThat(messages())
        .containsExactly(
            "t.csv:3: must be UTF-8 text: save it again as UTF-8 (in a spreadsheet, 'CSV UTF-8')");
  }

  @Test
  void file_emptyOrAbsent_isRefused() {
    assertThat(table("# only a comment\n").rows()).isEmpty();
    assertThat(FileText.find(Path.of("no-such.csv"), "no-such.csv", faults)).isEmpty();
    assertThat(messages())
        .containsExactly("t.csv: must have a line of headings", "no-such.csv: must be there");
  }
}
