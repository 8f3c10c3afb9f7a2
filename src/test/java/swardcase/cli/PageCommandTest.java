package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PipedReader;
import java.io.PipedWriter;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Scanner;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import swardcase.serve.Browser;

/** The page of a farm, asked as its own scripts ask it. */
@Timeout(300)
class PageCommandTest {

  private static final String DATE = "2026-11-25";
  private static final List<String> VIEWS =
      List.of("answer", "change", "paddocks", "flock", "sure", "joining", "files");
  private static final Pattern NUMBER = Pattern.compile("\\d[\\d,.]*\\d|\\d");

  @TempDir private Path folder;

  /** A page that is open; closing it stops the command. */
  private static final class Open implements AutoCloseable {

    private final CompletableFuture<Integer> code;
    private final Browser browser;
    private final String printed;

    Open(Path farm, Object... more) throws IOException {
      List<String> arguments = new ArrayList<>(List.of("page", farm.toString(), "--date", DATE));
      for (Object one : more) {
        arguments.add(String.valueOf(one));
      }
      PipedWriter out = new PipedWriter();
      Scanner lines = new Scanner(new PipedReader(out, 1 << 16));
      StringWriter err = new StringWriter();
      CommandLine line = Main.commandLine();
      line.setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true));
      code =
          CompletableFuture.supplyAsync(
              () -> {
                int ended = line.execute(arguments.toArray(String[]::new));
                line.getOut().close();
                return ended;
              },
              task -> new Thread(task, "page-command").start());
      assertThat(lines.hasNextLine()).as(err.toString()).isTrue();
      lines.nextLine();
      printed = lines.nextLine();
      browser = new Browser(printed);
    }

    String view(String name, String more) {
      return browser.ask("/view", "{\"view\":\"" + name + "\"" + more + "}");
    }

    /** The bytes of a file of the answer with these changes. */
    byte[] file(String name, String more) {
      String id = found(view("files", more), "/file/([0-9a-f]+)/result.json");
      HttpResponse<byte[]> answer = browser.get("/file/" + id + "/" + name);
      assertThat(answer.statusCode()).isEqualTo(200);
      assertThat(answer.headers().firstValue("Content-Disposition"))
          .contains("attachment; filename=\"" + name + "\"");
      return answer.body();
    }

    @Override
    public void close() {
      browser.ask("/stop", "{}");
      assertThat(code.join()).isZero();
    }
  }

  private static String found(String text, String pattern) {
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    assertThat(matcher.find()).as("%s in %s", pattern, text).isTrue();
    return matcher.group(1);
  }

  private static TreeMap<String, String> texts(Path folder) throws IOException {
    TreeMap<String, String> texts = new TreeMap<>();
    for (String name : Ran.below(folder)) {
      texts.put(name, Files.readString(folder.resolve(name)));
    }
    return texts;
  }

  /** Runs a command that has to do without fault. */
  private static void command(Object... arguments) {
    Ran ran = Ran.command(arguments);
    assertThat(ran.code()).as(ran.err()).isZero();
  }

  private void assertSame(Open page, String more, Path made) throws IOException {
    List<String> names =
        Ran.below(made).stream().filter(name -> Files.isRegularFile(made.resolve(name))).toList();
    assertThat(names).contains("decision-sheet.pdf", "result.json", "budget.xlsx", "paddocks.csv");
    for (String name : names) {
      assertThat(page.file(name, more)).as(name).isEqualTo(Files.readAllBytes(made.resolve(name)));
    }
  }

  private void decide(Path farm, Path to, Object... more) {
    List<Object> arguments = new ArrayList<>(List.of("decide", farm, "--date", DATE));
    arguments.addAll(List.of("--pdf", to.resolve("decision-sheet.pdf")));
    arguments.addAll(List.of("--case", to.resolve("budget-case.pdf")));
    arguments.addAll(List.of("--json", to.resolve("result.json"), "--csv", to));
    arguments.addAll(List.of("--xlsx", to.resolve("budget.xlsx"), "--draws", 100));
    arguments.addAll(List.of(more));
    command(arguments.toArray());
  }

  @Test
  void files_ofThePage_areThoseOfTheCommandsByteForByte() throws IOException {
    Path farm = SmallFarm.write(folder.resolve("farm"));
    Path base = folder.resolve("base");
    decide(farm, base);
    command(
        "joining",
        farm,
        "--date",
        DATE,
        "--draws",
        100,
        "--pdf",
        base.resolve("joining-sheet.pdf"));
    Path scenario = folder.resolve("scenario.yaml");
    Files.writeString(
        scenario,
        """
        scenarios:
          dear feed, more ewes:
            supplement:
              name: barley
              price_per_tonne: [288, 414, 570]
            finance:
              horizon_years: 15
            mobs:
              - name: ewes
                ewes: 330
        """);
    Path changed = folder.resolve("changed");
    decide(farm, changed, "--scenario", scenario, "--fix", "Flat=keep");
    TreeMap<String, String> before = texts(farm);

    try (Open page = new Open(farm, "--draws", 100)) {
      assertSame(page, "", base);
      assertSame(
          page,
          ",\"fixes\":{\"Flat\":\"keep\"},\"levers\":{\"supplement.price_per_tonne\":20,"
              + "\"finance.horizon_years\":15,\"mobs.ewes.ewes\":10}",
          changed);
    }
    assertThat(texts(farm)).isEqualTo(before);
  }

  @Test
  void files_ofAFixedChoice_areThoseOfTheCommandByteForByte() throws IOException {
    Path farm = Path.of("demo-data/mixed-farm");
    Path fixed = folder.resolve("fixed");
    decide(farm, fixed, "--fix", "Long=spray-fallow@2028");
    try (Open page = new Open(farm, "--draws", 100)) {
      assertSame(page, ",\"fixes\":{\"Long\":\"spray-fallow@2028\"}", fixed);
    }
  }

  @Test
  void numbers_ofTheAnswerAndHowSure_standInTheSheetToo() throws IOException {
    Path farm = Path.of("demo-data/mixed-farm");
    String sheet;
    String answer;
    String sure;
    try (Open page = new Open(farm, "--draws", 100)) {
      try (PDDocument pdf = Loader.loadPDF(page.file("budget-case.pdf", ""))) {
        sheet = new PDFTextStripper().getText(pdf);
      }
      answer = page.view("answer", "");
      sure = page.view("sure", "");
    }
    Set<String> known = new HashSet<>(numbers(sheet));
    assertThat(known).contains("622", "2,050").hasSizeGreaterThan(300);
    assertThat(numbers(words(answer))).hasSizeGreaterThan(300).isSubsetOf(known);
    assertThat(numbers(words(sure))).hasSizeGreaterThan(15).isSubsetOf(known);
  }

  private static List<String> numbers(String text) {
    return NUMBER.matcher(text).results().map(MatchResult::group).toList();
  }

  /** The text of HTML, without tags. */
  private static String words(String html) {
    return html.replaceAll("<[^>]*>", " ").replace("&#39;", "'").replace("&amp;", "&");
  }

  @Test
  void names_thatAreCode_stayNames() throws IOException {
    String name = "<script>alert('x')</script> \"a\" & \u202Eb\u200F";
    Path farm =
        SmallFarm.write(
            folder.resolve("farm"),
            "'" + name.replace("'", "''") + "'",
            "\"<b onclick='x'>Flat</b>\"");
    try (Open page = new Open(farm, "--draws", 100)) {
      String shell = Browser.text(page.browser.get("/"));
      String escaped = "&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt; &quot;a&quot; &amp; b";
      assertThat(shell).contains(escaped).doesNotContain("<script>", "\u202E", "\u200F");
      for (String view : VIEWS) {
        assertThat(page.view(view, ""))
            .as(view)
            .doesNotContain("<script", "<b ", "onclick='", "\u202E", "\u200F");
      }
      assertThat(page.view("answer", "")).contains("&lt;b onclick=&#39;x&#39;&gt;Flat&lt;/b&gt;");
    }
  }

  @Test
  void farm_withFaults_isToldInTheWordsOfCheck() throws IOException {
    Path farm = SmallFarm.write(folder.resolve("farm"));
    Files.writeString(farm.resolve("plants.csv"), "paddock,cultivar,plants\nHill,Geraldtun,40\n");
    Ran check = Ran.command("check", farm);
    try (Open page = new Open(farm, "--draws", 100)) {
      HttpResponse<byte[]> answer =
          page.browser.send(page.browser.question("/view", "{\"view\":\"answer\"}"));
      assertThat(answer.statusCode()).isEqualTo(422);
      assertThat(words(Browser.text(answer)))
          .contains(check.err().lines().skip(1).findFirst().get());
    }
  }

  @Test
  void names_thatAreNoneOfThePage_openNoFile() throws IOException {
    Path farm = SmallFarm.write(folder.resolve("farm"));
    try (Open page = new Open(farm, "--draws", 100)) {
      String id = found(page.view("files", ""), "/file/([0-9a-f]+)/result.json");
      for (String name :
          List.of(
              "/farm.yaml",
              "/file/" + id + "/farm.yaml",
              "/file/" + id + "/../farm.yaml",
              "/file/" + id + "/..%2Ffarm.yaml",
              "/file/unknown/result.json",
              "/../../etc/passwd",
              "/%2e%2e/pom.xml",
              "/Shell.class")) {
        assertThat(page.browser.get(name).statusCode()).as(name).isEqualTo(404);
      }
      assertThat(page.browser.send(page.browser.question("/farm.yaml", "{}")).statusCode())
          .isEqualTo(404);
    }
  }

  @Test
  void explanation_ofANumber_isThatOfTheCommand() throws IOException {
    Path farm = SmallFarm.write(folder.resolve("farm"));
    Ran explain = Ran.command("explain", farm, "plan-gain", "--draws", 100, "--depth", 9);
    try (Open page = new Open(farm, "--draws", 100)) {
      String how = page.browser.ask("/how", "{\"what\":\"plan-gain\",\"paddock\":-1}");
      Set<String> known = new HashSet<>(numbers(explain.out()));
      assertThat(numbers(words(how))).hasSizeGreaterThan(5).isSubsetOf(known);
    }
  }

  @Test
  void port_thatIsNoPort_isRefused() {
    Ran ran = Ran.command("page", "demo-data/mixed-farm", "--port", 70_000);

    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).contains("--port must be from 1 to 65535, but was 70000");
  }

  @Test
  void edits_areCheckedShownAndSavedWholeOrNotAtAll() throws IOException {
    Path farm = SmallFarm.write(folder.resolve("farm"));
    Files.writeString(
        farm.resolve("plants.csv"), "# Walked.\n" + Files.readString(farm.resolve("plants.csv")));
    TreeMap<String, String> before = texts(farm);
    String wrong =
        ",\"tables\":{\"plants\":[{\"line\":3,\"cells\":[\"Hill\",\"Geraldtun\",\"4\"]}]}}";
    String right = wrong.replace("Geraldtun", "Geraldton");
    try (Open page = new Open(farm, "--draws", 100)) {
      String print = found(page.view("paddocks", ""), "data-print=\"([0-9a-f]+)\"");
      String asked = "{\"print\":\"" + print + "\",\"save\":true";

      assertThat(page.browser.ask("/edit", asked + wrong))
          .contains("plants.csv:3: cultivar: ", "did you mean 'Geraldton'?", "\"row\":0");
      assertThat(texts(farm)).isEqualTo(before);

      assertThat(page.browser.ask("/edit", asked.replace("true", "false") + right))
          .contains("Nothing is wrong", "− Flat,Yarloop,50", "+ Hill,Geraldton,4");
      assertThat(texts(farm)).isEqualTo(before);

      Files.writeString(
          farm.resolve("farm.yaml"), before.get("farm.yaml") + "# Written elsewhere.\n");
      assertThat(page.browser.ask("/edit", asked + right))
          .contains("Not saved", "changed elsewhere");
      assertThat(Files.readString(farm.resolve("plants.csv"))).isEqualTo(before.get("plants.csv"));

      String anew = found(page.view("paddocks", ""), "data-print=\"([0-9a-f]+)\"");
      assertThat(page.browser.ask("/edit", asked.replace(print, anew) + right))
          .contains("\"saved\":true");
      assertThat(Files.readString(farm.resolve("plants.csv")))
          .isEqualTo("# Walked.\npaddock,cultivar,plants\nHill,Geraldton,4\n");
      assertThat(Ran.below(farm)).containsExactly("farm.yaml", "paddocks.csv", "plants.csv");
    }
  }

  @Test
  void keys_thatAreTyped_changeTheirLineOfTheFileAlone() throws IOException {
    Path farm = SmallFarm.write(folder.resolve("farm"));
    String before = "# Ours.\n" + Files.readString(farm.resolve("farm.yaml"));
    Files.writeString(farm.resolve("farm.yaml"), before);
    try (Open page = new Open(farm, "--draws", 100)) {
      String view = page.view("flock", "");
      String print = found(view, "data-print=\"([0-9a-f]+)\"");
      String ewes = found(view, "id=\"(key-\\d+)\" data-key=\"[^\"]+\" value=\"300\"");
      String lamb = found(view, "<label for=\"(key-\\d+)\">A lamb at marking");
      StringBuilder keys = new StringBuilder();
      Pattern.compile("data-key=\"([^\"]+)\" value=\"([^\"]*)\"")
          .matcher(view)
          .results()
          .forEach(
              key -> {
                String id = key.group(1);
                String value =
                    id.equals(ewes) ? "320" : id.equals(lamb) ? "80, 120, 180" : key.group(2);
                keys.append(",\"").append(id).append("\":\"").append(value).append("\"");
              });
      String told =
          page.browser.ask(
              "/edit",
              "{\"save\":true,\"print\":\"" + print + "\",\"keys\":{" + keys.substring(1) + "}}");

      assertThat(told).contains("\"saved\":true");
      assertThat(Files.readString(farm.resolve("farm.yaml")))
          .isEqualTo(
              before.replace("300", "320") + "prices:\n  net_value_per_lamb: [80, 120, 180]\n");
    }
  }

  @Test
  void emptyFolder_withAnswersOfThePage_becomesTheFarmThatStartMakes() throws IOException {
    Path typed = folder.resolve("typed");
    String lines = "New Farm\n\nKatanning\n\n\n\n\n\n\n\nHill 30, Flat 20\n";
    assertThat(Ran.typing(lines, "start", typed, "--date", DATE).code()).isZero();
    String answers =
        "\"name\":\"New Farm\",\"growth\":\"Katanning\",\"ewes\":\"0\","
            + "\"paddocks\":\"Hill 30, Flat 20\"";
    Path farm = folder.resolve("farm");
    try (Open page = new Open(farm)) {
      assertThat(page.view("answer", "")).contains("Name of the farm").doesNotContain("rams go in");
      assertThat(page.view("answer", ",\"answers\":{\"ewes\":\"5\"}")).contains("rams go in");
      String lacking = "{\"save\":true,\"answers\":{\"name\":\"x\"}}";
      assertThat(page.browser.ask("/edit", lacking)).contains("These answers are needed: District");
      assertThat(farm).doesNotExist();
      String all = "{\"save\":true,\"answers\":{" + answers + "}}";
      assertThat(page.browser.ask("/edit", all)).contains("\"saved\":true");
      assertThat(texts(farm)).isEqualTo(texts(typed));
      assertThat(page.browser.ask("/edit", all)).contains("nothing is overwritten");
    }
  }

  @Test
  void plan_inHand_atTheNumbersItWasFoundWith_gainsWhatItGained() throws IOException {
    Path farm = Path.of("demo-data/mixed-farm");
    try (Open page = new Open(farm, "--draws", 100)) {
      String id = found(page.view("change", ""), "data-id=\"([0-9a-f]+)\"");
      String gain = found(page.view("answer", ""), "data-what=\"plan-gain\"[^>]*>([^<]+)<");
      String still = page.browser.ask("/hand", "{\"id\":\"" + id + "\"}");
      String moved =
          page.browser.ask(
              "/hand", "{\"id\":\"" + id + "\",\"levers\":{\"prices.net_value_per_lamb\":50}}");

      assertThat(still).contains("gains " + gain + " at these numbers; before it was " + gain);
      assertThat(moved)
          .contains("before it was " + gain, "A lamb at marking: 180 (120 to 270) A$/lamb")
          .doesNotContain("gains " + gain);
    }
  }

  @Test
  void changes_thatCannotBe_areRefusedInWords() throws IOException {
    Path farm = SmallFarm.write(folder.resolve("farm"));
    try (Open page = new Open(farm, "--draws", 100)) {
      assertThat(page.view("answer", ",\"levers\":{\"prices.net_value_per_lamb\":-500}"))
          .contains("net_value_per_lamb[1]: must be from 0");
      assertThat(page.view("answer", ",\"fixes\":{\"Hil\":\"keep\"}"))
          .contains("must name a paddock of the farm", "did you mean &#39;Hill&#39;?");
    }
  }
}
