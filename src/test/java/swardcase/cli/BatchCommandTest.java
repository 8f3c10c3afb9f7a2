package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** Many farms in, one line each out. */
class BatchCommandTest {

  /** The invented farm of {@link SmallFarm} as a document. */
  private static final String DOCUMENT =
      """
      {"farm": {"name": "Small Farm", "currency": "A$", "growth": "Katanning",\
       "mobs": [{"name": "ewes", "ewes": 300, "joining_start": "30 January"}],\
       "sow": "Narrikup"},\
       "paddocks": [{"paddock": "Hill", "area_ha": 30, "clover_percent": 40, "arable": true},\
       {"paddock": "Flat", "area_ha": 20, "clover_percent": 50, "waterlogged": null}],\
       "plants": [{"paddock": "Hill", "cultivar": "Geraldton", "plants": 40},\
       {"paddock": "Flat", "cultivar": "Yarloop", "plants": 50}]}\
      """;

  @TempDir private Path folder;
  private Path farm;

  @BeforeEach
  void writeFarm() throws IOException {
    farm = SmallFarm.write(folder.resolve("farm"));
  }

  private static Ran batch(String lines, Object... more) {
    Object[] command = {"batch", "--date", "2026-11-25", "--draws", "100"};
    return Ran.typing(lines, Stream.concat(Stream.of(command), Stream.of(more)).toArray());
  }

  private static List<JsonNode> answers(Ran ran) throws IOException {
    List<JsonNode> answers = new ArrayList<>();
    for (String line : ran.out().lines().toList()) {
      answers.add(new ObjectMapper().readTree(line));
    }
    return answers;
  }

  @Test
  void lines_goodAndBad_haveOneAnswerEachInTheirOrder() throws IOException {
    String lines = farm + "\n" + folder.resolve("none") + "\n\n{bad\n" + DOCUMENT + "\r\n" + farm;

    Ran ran = batch(lines);

    assertThat(ran.code()).isZero();
    assertThat(ran.err()).isEqualTo("6 lines read, 3 of them with faults.\n");
    List<JsonNode> answers = answers(ran);
    assertThat(answers)
        .extracting(answer -> answer.get("line").asInt())
        .containsExactly(1, 2, 3, 4, 5, 6);
    assertThat(answers)
        .extracting(answer -> answer.get("faults").isEmpty())
        .containsExactly(true, false, false, false, true, true);
    assertThat(answers.get(1).at("/faults/0").asText())
        .isEqualTo(folder.resolve("none") + ": must be a folder");
    assertThat(answers.get(2).at("/faults/0").asText())
        .isEqualTo("line 3: must be a farm folder or a JSON document");
    assertThat(answers.get(3).at("/faults/0").asText()).startsWith("line 4: must be JSON that can");
    assertThat(answers.get(3).get("answer").isNull()).isTrue();
  }

  @Test
  void document_andFolderOfTheSameFarm_haveTheSameAnswer() throws IOException {
    List<JsonNode> answers = answers(batch(farm + "\n" + DOCUMENT + "\n"));

    assertThat(answers.get(0).get("paddocks")).isEqualTo(answers.get(1).get("paddocks"));
    assertThat(answers.get(0).at("/answer/gain")).isEqualTo(answers.get(1).at("/answer/gain"));
    assertThat(answers.get(0).at("/answer/gain/mean").isNumber()).isTrue();
    assertThat(answers.get(0).at("/paddocks/0/name").asText()).isEqualTo("Hill");
  }

  @Test
  void answer_ofAFarm_isWhatDecideSays() throws IOException {
    Path json = folder.resolve("decided.json");
    Ran.command("decide", farm, "--date", "2026-11-25", "--draws", "100", "--json", json);

    JsonNode answer = answers(batch(farm + "", "--whole")).get(0);

    JsonNode decided = new ObjectMapper().readTree(json.toFile());
    assertThat(answer.get("result")).isEqualTo(decided);
    for (String key : List.of("gain", "sureGain", "calls")) {
      assertThat(answer.at("/answer/" + key)).isEqualTo(decided.at("/plan/" + key));
    }
    for (String key : List.of("call", "sure", "action", "start", "gain")) {
      assertThat(answer.at("/paddocks/1/" + key))
          .as(key)
          .isEqualTo(decided.at("/paddocks/1/" + key));
    }
  }

  @Test
  void bytes_withAnyNumberOfWorkersAndAfterAnInterruption_areTheSame() {
    String lines = (farm + "\n{bad\n" + DOCUMENT + "\n").repeat(2);

    String alone = batch(lines, "--workers", 1).out();

    assertThat(batch(lines, "--workers", 5).out()).isEqualTo(alone);
    assertThat(
            alone.lines().limit(4).map(line -> line + "\n").reduce("", String::concat)
                + batch(lines, "--skip", 4).out())
        .isEqualTo(alone);
    assertThat(batch(lines, "--skip", 99).out()).isEmpty();
    assertThat(batch(lines, "--skip", 99).err())
        .isEqualTo("0 lines read, 0 of them with faults.\n");
  }

  @Test
  void names_inAnyScript_areEscapedSoThatNoCharsetSpoilsThem() throws IOException {
    Ran ran = batch(DOCUMENT.replace("Small Farm", "Pā Tārare 草\\u202E"));

    assertThat(ran.out()).matches("[\\x20-\\x7E\n]+");
    assertThat(answers(ran).get(0).get("farm").asText()).isEqualTo("Pā Tārare 草");
  }

  @Test
  void faults_ofADocument_comeTogetherWithTheirPlaces() throws IOException {
    String bad =
        "{\"farm\": {\"name\": \"A\", \"growth\": \"Kataning\", \"prices\": {\"leaf_test\":"
            + " \"9\"}}, \"paddocks\": [{\"paddock\": \"Hill\", \"area_ha\": -3, \"use\": [1]}, 7],"
            + " \"plant\": [], \"plants\": {}}";

    assertThat(answers(batch(bad)).get(0).get("faults"))
        .extracting(JsonNode::asText)
        .contains(
            "line 1: must be one of farm, paddocks, plants, records; found 'plant'; did you mean"
                + " 'plants'?",
            "line 1: growth: must be a district of the tables; found 'Kataning'; did you mean"
                + " 'Katanning'?",
            "line 1: prices.leaf_test: must be a number without quotation marks; found '9'",
            "line 1: paddocks[1].use: must be one value",
            "line 1: paddocks[2]: must have cells such as \"paddock\": \"House\"",
            "line 1: plants: must be a list of rows",
            "line 1, paddocks:1: area_ha: must be more than zero and not above 100000; found '-3'");
    assertThat(
            answers(batch("{\"farm\": {\"name\": \"A\", \"name\": \"B\"}}")).get(0).get("faults"))
        .extracting(JsonNode::asText)
        .containsExactly("line 1: must be JSON that can be read: Duplicate field 'name'");
  }

  @Test
  void line_longerThanAFarmCanBe_isRefusedAndTheNextIsRead() throws IOException {
    List<JsonNode> answers = answers(batch("{" + " ".repeat(1_000_001) + "}\n" + farm));

    assertThat(answers.get(0).at("/faults/0").asText())
        .isEqualTo("line 1: must not be longer than 1,000,000 characters");
    assertThat(answers.get(1).get("faults")).isEmpty();
  }

  /** Nobody reads: so no more lines may be taken than are worked on, however many there are. */
  @Test
  void lines_withoutEnd_areReadOnlyAsFarAsAnswersAreTaken() {
    int[] lines = {0};
    Reader endless =
        new Reader() {
          @Override
          public int read(char[] to, int from, int length) {
            lines[0]++;
            to[from] = '\n';
            return 1;
          }

          @Override
          public void close() {}
        };
    CommandLine line = Main.commandLine(new BufferedReader(endless));
    StringWriter err = new StringWriter();
    line.setErr(new PrintWriter(err, true));
    line.setOut(new PrintWriter(new Gone(), true));

    int code = Main.heard(line, line.execute("batch", "--workers", "2"), () -> true);

    assertThat(code).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(err.toString()).contains("Cannot print all of the answers");
    assertThat(lines[0]).isLessThanOrEqualTo(2 * 4 + 1);
  }

  /** A reader that has gone. */
  private static final class Gone extends Writer {
    @Override
    public void write(char[] text, int from, int length) throws IOException {
      throw new IOException("Broken pipe");
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}
  }

  @Test
  void options_thatCannotBeUsed_areRefused() {
    assertThat(batch("", "--workers", 0).code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(batch("", "--skip", -1).err()).startsWith("--workers must be from 1 to 256, and");
    assertThat(batch("", "--draws", 7).code()).isEqualTo(ExitCodes.BAD_INPUT);
  }

  @Test
  void lines_blankOrWithoutABreak_areCounted() throws IOException {
    FarmLines lines = new FarmLines(new BufferedReader(new StringReader(" a \n\nb")));

    assertThat(lines.next()).hasValue("a");
    assertThat(lines.next()).hasValue("");
    assertThat(lines.next()).hasValue("b");
    assertThat(lines.next()).isEmpty();
    assertThat(lines.read()).isEqualTo(3);
  }

  /** The farm in the middle has forty paddocks, too many for this memory and number of draws. */
  @Test
  void farm_tooLargeForTheMemory_hasThatAsItsAnswerAndTheRestGoesOn() throws Exception {
    Path large = Path.of("demo-data", "large-farm").toAbsolutePath();
    Path lines = Files.writeString(folder.resolve("farms.txt"), farm + "\n" + large + "\n" + farm);
    List<String> command =
        List.of("batch", "--date", "2026-11-25", "--draws", "2000", "--workers", "2");

    Ran ran = OwnProcess.run(lines, List.of("-Xmx64m"), command);

    assertThat(ran.err()).isEqualTo("3 lines read, 1 of them with faults.\n");
    assertThat(ran.code()).isZero();
    List<JsonNode> answers = answers(ran);
    assertThat(answers)
        .extracting(answer -> answer.get("faults").isEmpty())
        .containsExactly(true, false, true);
    assertThat(answers.get(1).at("/faults/0").asText())
        .startsWith("line 2: needs more memory than the program has");
  }
}
