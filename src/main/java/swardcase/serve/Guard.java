package swardcase.serve;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Lets in the browser that was given the printed address, and nobody else: no other page open in
 * it, no other program, and no name of another machine that leads here.
 */
final class Guard {

  private static final int KEY_BYTES = 32;
  private static final String OPEN = "/open?key=";

  /** Headers of every answer: what a browser may do with it. */
  static final Map<String, String> PROTECTION =
      Map.of(
          "Content-Security-Policy",
          "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src"
              + " 'self'; form-action 'self'; frame-ancestors 'none'; base-uri 'none'",
          "X-Content-Type-Options",
          "nosniff",
          "Referrer-Policy",
          "no-referrer",
          "Cross-Origin-Resource-Policy",
          "same-origin",
          "Cross-Origin-Opener-Policy",
          "same-origin",
          "Cache-Control",
          "no-store");

  private final int port;
  private final Set<String> hosts;
  private final String key = random();
  private final String cookie = random();

  /** A guard of a server on this port of this machine. */
  Guard(int port) {
    this.port = port;
    hosts = Set.of("127.0.0.1:" + port, "localhost:" + port);
  }

  private static String random() {
    byte[] bytes = new byte[KEY_BYTES];
    new SecureRandom().nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  /** The address that opens the page, once for each browser. */
  String address() {
    return "http://127.0.0.1:" + port + OPEN + key;
  }

  /**
   * What is answered to a request that is not let in: a refusal, or, to one that brings the key,
   * the cookie that lets its browser in from now on. Empty if the request is let in.
   */
  Optional<Reply> reply(HttpExchange exchange) {
    Headers headers = exchange.getRequestHeaders();
    String method = exchange.getRequestMethod();
    List<String> host = headers.getOrDefault("Host", List.of());
    if (host.size() != 1 || !hosts.contains(host.get(0))) {
      return Optional.of(Reply.text(421, "This server answers to its own address only."));
    }
    if (!method.equals("GET") && !method.equals("POST")) {
      Reply refusal = Reply.text(405, "Only GET and POST are answered.");
      return Optional.of(refusal.with("Allow", "GET, POST"));
    }
    String asked = exchange.getRequestURI().toString();
    if (method.equals("GET")
        && asked.startsWith(OPEN)
        && isSame(asked.substring(OPEN.length()), key)) {
      String let = name() + "=" + cookie + "; HttpOnly; SameSite=Strict; Path=/";
      return Optional.of(Reply.text(303, "").with("Set-Cookie", let).with("Location", "/"));
    }
    if (!hasCookie(exchange)) {
      return Optional.of(Reply.text(403, "Open the address that swardcase printed."));
    }
    if (method.equals("POST") && !isOwnQuestion(headers)) {
      return Optional.of(Reply.text(403, "This was not asked by the page itself."));
    }
    return Optional.empty();
  }

  /** Name of the cookie; browsers tell ports apart by it only. */
  private String name() {
    return "swardcase-" + port;
  }

  private boolean hasCookie(HttpExchange exchange) {
    return exchange.getRequestHeaders().getOrDefault("Cookie", List.of()).stream()
        .flatMap(line -> Arrays.stream(line.split(";")))
        .map(String::strip)
        .filter(one -> one.startsWith(name() + "="))
        .anyMatch(one -> isSame(one.substring(name().length() + 1), cookie));
  }

  private static boolean isOwnQuestion(Headers headers) {
    String host = headers.getFirst("Host");
    String type = Optional.ofNullable(headers.getFirst("Content-Type")).orElse("");
    return headers.getOrDefault("Origin", List.of()).equals(List.of("http://" + host))
        && headers.getOrDefault("Sec-Fetch-Site", List.of()).equals(List.of("same-origin"))
        && type.split(";")[0].strip().equalsIgnoreCase("application/json");
  }

  /** In a time that does not tell how much was right. */
  private static boolean isSame(String given, String known) {
    return MessageDigest.isEqual(
        given.getBytes(StandardCharsets.UTF_8), known.getBytes(StandardCharsets.UTF_8));
  }
}
