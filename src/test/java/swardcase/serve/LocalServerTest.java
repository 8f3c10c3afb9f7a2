package swardcase.serve;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LocalServerTest {

  private LocalServer server;
  private Browser browser;
  private int port;

  /** Answers with the name that was asked for, and fails where it is told to. */
  private static final class Echo implements Site {
    @Override
    public Reply get(String name) {
      return Reply.html(200, name);
    }

    @Override
    public Reply post(String name, JsonNode asked) {
      if (name.equals("/fails")) {
        throw new IllegalStateException("as told");
      }
      return Reply.html(200, asked.toString());
    }
  }

  @BeforeEach
  void start() throws IOException {
    server = new LocalServer(0, stop -> new Echo());
    browser = new Browser(server.address());
    port = URI.create(browser.root()).getPort();
  }

  @AfterEach
  void stop() {
    server.close();
  }

  /** What the server says to a request written by hand, headers and all. */
  private String raw(String... lines) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
      String request = String.join("\r\n", lines) + "\r\nConnection: close\r\n\r\n";
      socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
      socket.getOutputStream().flush();
      try (InputStream in = socket.getInputStream()) {
        return new String(in.readAllBytes(), StandardCharsets.UTF_8);
      }
    }
  }

  @Test
  void address_withItsKey_givesACookieOfThisPortAndTheHeadersThatProtect() {
    HttpResponse<byte[]> opened =
        browser.send(HttpRequest.newBuilder(URI.create(server.address())));
    HttpResponse<byte[]> page = browser.get("/x");

    assertThat(opened.statusCode()).isEqualTo(303);
    assertThat(opened.headers().firstValue("Location")).contains("/");
    assertThat(opened.headers().firstValue("Set-Cookie").orElseThrow())
        .startsWith("swardcase-" + port + "=")
        .endsWith("; HttpOnly; SameSite=Strict; Path=/");
    assertThat(page.statusCode()).isEqualTo(200);
    for (HttpResponse<byte[]> one : List.of(opened, page)) {
      assertThat(one.headers().firstValue("Content-Security-Policy").orElseThrow())
          .contains("default-src 'none'", "script-src 'self'", "frame-ancestors 'none'");
      assertThat(one.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
      assertThat(one.headers().firstValue("Referrer-Policy")).contains("no-referrer");
      assertThat(one.headers().firstValue("Cross-Origin-Resource-Policy")).contains("same-origin");
      assertThat(one.headers().firstValue("Cross-Origin-Opener-Policy")).contains("same-origin");
      assertThat(one.headers().firstValue("Cache-Control")).contains("no-store");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"/open?key=", "/open?key=guessed", "/open", "/", "/page.js"})
  void request_withoutKeyOrCookie_isRefused(String name) {
    HttpResponse<byte[]> answer =
        browser.send(HttpRequest.newBuilder(URI.create(browser.root() + name)));

    assertThat(answer.statusCode()).isEqualTo(403);
    assertThat(answer.headers().map()).doesNotContainKey("set-cookie");
    assertThat(Browser.text(answer)).contains("Open the address that swardcase printed");
  }

  @Test
  void cookie_ofAnotherPortOrValue_isRefused() {
    String value = browser.cookie().replaceFirst(".*=", "");
    for (String cookie : List.of("swardcase-1=" + value, "swardcase-" + port + "=" + value + "x")) {
      HttpRequest.Builder request =
          HttpRequest.newBuilder(URI.create(browser.root() + "/")).header("Cookie", cookie);
      assertThat(browser.send(request).statusCode()).as(cookie).isEqualTo(403);
    }
  }

  @Test
  void host_thatIsNotThisServer_isMisdirectedEvenWithTheCookie() throws IOException {
    String cookie = "Cookie: " + browser.cookie();
    assertThat(raw("GET / HTTP/1.1", "Host: farm.example:" + port, cookie))
        .startsWith("HTTP/1.1 421");
    assertThat(raw("GET / HTTP/1.1", "Host: 127.0.0.1", cookie)).startsWith("HTTP/1.1 421");
    assertThat(raw("GET / HTTP/1.1", "Host: 127.0.0.1:" + port, "Host: x", cookie))
        .startsWith("HTTP/1.1 421");
    assertThat(raw("GET / HTTP/1.1", cookie)).startsWith("HTTP/1.1 4");
    assertThat(raw("GET / HTTP/1.1", "Host: localhost:" + port, cookie)).startsWith("HTTP/1.1 200");
  }

  @ParameterizedTest
  @ValueSource(strings = {"PUT", "DELETE", "OPTIONS", "HEAD", "TRACE", "PATCH"})
  void method_otherThanGetAndPost_isNotAllowed(String method) throws IOException {
    String answer =
        raw(method + " / HTTP/1.1", "Host: 127.0.0.1:" + port, "Cookie: " + browser.cookie());

    assertThat(answer).startsWith("HTTP/1.1 405").containsIgnoringCase("Allow: GET, POST");
  }

  @Test
  void question_fromThePage_isAnswered() {
    assertThat(browser.ask("/x", "{\"a\":1}")).isEqualTo("{\"a\":1}");
  }

  @Test
  void question_ofAnotherOrigin_isRefused() {
    String[][] headers = {
      {"Origin", "http://farm.example", "Sec-Fetch-Site", "same-origin"},
      {"Origin", "null", "Sec-Fetch-Site", "same-origin"},
      {"Origin", browser.root().replace("127.0.0.1", "localhost"), "Sec-Fetch-Site", "same-origin"},
      {"Origin", browser.root(), "Sec-Fetch-Site", "cross-site"},
      {"Origin", browser.root(), "Sec-Fetch-Site", "same-site"},
      {"Origin", browser.root(), "X", "no fetch site"},
      {"X", "no origin", "Sec-Fetch-Site", "same-origin"},
    };
    for (String[] some : headers) {
      HttpRequest.Builder request =
          browser
              .with("/x")
              .headers(some)
              .header("Content-Type", "application/json")
              .POST(BodyPublishers.ofString("{}"));
      assertThat(browser.send(request).statusCode()).as(String.join(" ", some)).isEqualTo(403);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"text/plain", "application/x-www-form-urlencoded", "multipart/form-data"})
  void question_thatAFormCouldSend_isRefused(String type) {
    HttpRequest.Builder request =
        browser
            .with("/x")
            .headers("Origin", browser.root(), "Sec-Fetch-Site", "same-origin")
            .header("Content-Type", type)
            .POST(BodyPublishers.ofString("{}"));

    assertThat(browser.send(request).statusCode()).isEqualTo(403);
  }

  @Test
  void question_beyondAMegabyte_isRefusedInWords() {
    String large = "{\"a\":\"" + "x".repeat(3 * LocalServer.MOST_BYTES) + "\"}";
    HttpResponse<byte[]> answer = browser.send(browser.question("/x", large));

    assertThat(answer.statusCode()).isEqualTo(413);
    assertThat(Browser.text(answer)).contains("must not be longer than a megabyte");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "{", "[1]", "7", "{\"a\":}"})
  void question_thatIsNoJsonObject_isRefused(String body) {
    assertThat(browser.send(browser.question("/x", body)).statusCode()).isEqualTo(400);
  }

  @Test
  void fault_ofTheProgram_isToldAndTheNextRequestIsAnswered() {
    HttpResponse<byte[]> answer = browser.send(browser.question("/fails", "{}"));

    assertThat(answer.statusCode()).isEqualTo(500);
    assertThat(Browser.text(answer)).contains("a fault of its own").contains("as told");
    assertThat(browser.get("/x").statusCode()).isEqualTo(200);
  }

  @Test
  @Timeout(20)
  void await_withoutRequests_endsAfterTheIdleTimeAndNoLaterRequestIsAnswered() throws Exception {
    long start = System.nanoTime();
    server.await(Duration.ofMillis(300));

    assertThat(Duration.ofNanos(System.nanoTime() - start)).isGreaterThan(Duration.ofMillis(250));
    assertThat(refuses()).isTrue();
  }

  private boolean refuses() {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
      return !socket.isConnected();
    } catch (IOException refused) {
      return true;
    }
  }

  @Test
  @Timeout(20)
  void await_whenStopped_endsAtOnce() throws Exception {
    server.stop();
    server.await(Duration.ofHours(1));

    assertThat(refuses()).isTrue();
  }

  @Test
  void server_isReachedFromThisMachineOnly() {
    assertThat(server.address()).startsWith("http://127.0.0.1:" + port + "/open?key=");
    assertThat(server.address().replaceFirst(".*key=", "")).hasSize(43);
    assertThat(server.isLocal()).isTrue();
  }
}
