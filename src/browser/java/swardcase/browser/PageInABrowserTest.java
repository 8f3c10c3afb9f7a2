package swardcase.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.AxeResults;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.io.IOException;
import java.io.PipedReader;
import java.io.PipedWriter;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Scanner;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import swardcase.cli.Main;

/** The page as a browser shows it. */
class PageInABrowserTest {

  private static final List<String> VIEWS =
      List.of("answer", "change", "paddocks", "flock", "sure", "joining", "files");

  private static Playwright playwright;
  private static Browser browser;

  @TempDir private Path folder;

  @BeforeAll
  static void start() {
    Map<String, String> environment = Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1");
    playwright = Playwright.create(new Playwright.CreateOptions().setEnv(environment));
    browser =
        playwright
            .chromium()
            .launch(
                new BrowserType.LaunchOptions()
                    .setExecutablePath(Path.of(System.getProperty("browser"))));
  }

  @AfterAll
  static void stop() {
    playwright.close();
  }

  /** A farm opened by the command; closing it presses the stop button. */
  private static final class Open implements AutoCloseable {

    private final CompletableFuture<Integer> code;
    private final Page page;
    private final String root;
    private final List<String> hosts = Collections.synchronizedList(new ArrayList<>());
    private final List<String> complaints = Collections.synchronizedList(new ArrayList<>());

    Open(Path farm) throws IOException {
      PipedWriter out = new PipedWriter();
      Scanner lines = new Scanner(new PipedReader(out, 1 << 16));
      CommandLine line = Main.commandLine();
      line.setOut(new PrintWriter(out, true)).setErr(new PrintWriter(new StringWriter(), true));
      code =
          CompletableFuture.supplyAsync(
              () -> line.execute("page", farm.toString(), "--date", "2026-11-25", "--draws", "200"),
              task -> new Thread(task, "page-command").start());
      lines.nextLine();
      String address = lines.nextLine();
      root = address.replaceFirst("/open.*", "/");
      page = browser.newPage();
      page.setDefaultTimeout(120_000);
      page.onRequest(request -> hosts.add(URI.create(request.url()).getHost()));
      page.onConsoleMessage(message -> complaints.add(message.text()));
      page.onPageError(complaints::add);
      page.navigate(address);
    }

    void view(String name) {
      page.navigate(root + "#" + name);
      page.locator("main[data-view='" + name + "'] h1").waitFor();
    }

    @Override
    public void close() {
      page.locator("#stop").click();
      assertThat(code.join()).isZero();
      assertThat(hosts).isNotEmpty().containsOnly("127.0.0.1");
      assertThat(complaints).isEmpty();
      page.close();
    }
  }

  private static void shoot(Page page, String name) {
    String to = System.getProperty("screenshots", "");
    if (!to.isEmpty()) {
      page.screenshot(
          new Page.ScreenshotOptions().setPath(Path.of(to, name + ".png")).setFullPage(true));
    }
  }

  @Test
  void views_ofADemoFarm_haveNoViolationFitAPhoneAndAskNobodyElse() throws IOException {
    try (Open open = new Open(Path.of("demo-data/mixed-farm"))) {
      for (String view : VIEWS) {
        open.view(view);
        shoot(open.page, view);
        AxeResults axe = new AxeBuilder(open.page).analyze();
        assertThat(axe.getViolations())
            .as(view)
            .map(rule -> rule.getId() + ": " + rule.getNodes().get(0).getHtml())
            .isEmpty();
        open.page.setViewportSize(320, 800);
        assertThat(open.page.evaluate("() => document.documentElement.scrollWidth"))
            .as(view)
            .isEqualTo(320);
        open.page.setViewportSize(1280, 900);
      }
      open.view("answer");
      open.page.locator("summary").first().focus();
      open.page.keyboard().press("Enter");
      Locator number = open.page.locator("details[open] .number").first();
      number.focus();
      open.page.keyboard().press("Enter");
      open.page.locator("dialog[open] details").first().waitFor();
      shoot(open.page, "how");
      assertThat(new AxeBuilder(open.page).analyze().getViolations()).isEmpty();
      open.page.keyboard().press("Escape");
      assertThat(open.page.locator("dialog[open]").count()).isZero();
    }
  }

  @Test
  void slider_movedByKeys_showsThePlanInHandThenTheFullAnswerAndUndoes() throws IOException {
    try (Open open = new Open(Path.of("demo-data/mixed-farm"))) {
      open.view("change");
      Locator lamb = open.page.locator("[data-lever='prices.net_value_per_lamb']");
      lamb.focus();
      open.page.keyboard().press("ArrowRight");
      open.page.locator("#hand >> text=The plan found so far gains").waitFor();
      open.page.locator("text=What these changes bring").waitFor();
      assertThat(open.page.locator(".was").count()).isPositive();
      shoot(open.page, "changed");
      open.page.locator("[data-undo]").click();
      open.page.waitForFunction(
          "() => document.querySelector(\"[data-lever='prices.net_value_per_lamb']\").value === '0'");
      open.page.waitForFunction("() => !document.querySelector('.was')");
    }
  }

  @Test
  void emptyFolder_typedOnThePage_becomesADecision() throws IOException {
    Path farm = folder.resolve("new-farm");
    try (Open open = new Open(farm)) {
      Page page = open.page;
      page.locator("[data-answer=name]").waitFor();
      answer(page, "name", "Typed <Farm>");
      answer(page, "growth", "Katanning");
      answer(page, "ewes", "300");
      page.locator("[data-answer=joining-start]").waitFor();
      answer(page, "joining-start", "30 January");
      answer(page, "paddocks", "Hill 30, Flat 20");
      page.locator("[data-save]").click();
      page.locator("[data-table=paddocks]").waitFor();
      assertThat(Files.readString(farm.resolve("farm.yaml"))).contains("Typed <Farm>");

      page.locator("[data-table=paddocks] [data-column=clover_percent]").first().fill("40");
      Locator plants = page.locator("[data-table=plants]");
      plants.locator("[data-column=paddock]").first().focus();
      page.evaluate(
          "text => { const data = new DataTransfer(); data.setData('text', text);"
              + "document.activeElement.dispatchEvent(new ClipboardEvent('paste',"
              + "{ clipboardData: data, bubbles: true, cancelable: true })); }",
          "Hill\tGeraldtun\t40\nFlat\tYarloop\t49\n");
      plants.locator("[data-tally]").last().click();
      page.locator("[data-save]").click();
      page.locator(".fault >> text=did you mean 'Geraldton'?").waitFor();
      assertThat(Files.readString(farm.resolve("plants.csv"))).doesNotContain("Flat,Yarloop");
      shoot(page, "fault");
      plants.locator("[data-column=cultivar]").first().fill("Geraldton");
      page.locator("[data-save]").click();
      page.locator("text=Saved.").waitFor();
      assertThat(Files.readString(farm.resolve("plants.csv")))
          .contains("Hill,Geraldton,40", "Flat,Yarloop,50", "# Walk a line");
      open.view("answer");
      assertThat(page.locator(".lead").textContent()).isNotBlank();
      assertThat(page.locator(".paddock").count()).isEqualTo(2);
    }
  }

  private static void answer(Page page, String key, String text) {
    page.locator("[data-answer=" + key + "]").fill(text);
    page.locator("[data-answer=" + key + "]").press("Tab");
  }
}
