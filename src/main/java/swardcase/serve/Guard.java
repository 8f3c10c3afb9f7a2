package swardcase.serve;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Lets in the browser that was given the printed address, and nobody else: no other page open in
 * it, no other program, and no name of another machine that leads here.
 */
final class Guard {

  private static final int KEY_BYTES = 32;
  private static final String OPEN = "/open?key=";
  private static final Set<String> METHODS = Set.of("GET", "POST");

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

  /** Headers of every answer: what a browser may do with it. */
  static void protect(Headers headers) {
    headers.set(
        "Content-Security-Policy",
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src"
            + " 'self'; form-action 'self'; frame-ancestors 'none'; base-uri 'none'");
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("Referrer-Policy", "no-referrer");
    headers.set("Cross-Origin-Resource-Policy", "same-origin");
    headers.set("Cross-Origin-Opener-Policy", "same-origin");
    headers.set("Cache-Control", "no-store");
  }

  /** Whether a request brings the key; the cookie to be set is then {@link #cookie}. */
  boolean opens(HttpExchange exchange) {
    String asked = exchange.getRequestURI().toString();
    return asked.startsWith(OPEN) && isSame(asked.substring(OPEN.length()), key);
  }

  /** The cookie of a browser that was let in; browsers tell ports apart by its name only. */
  String cookie() {
    return name() + "=" + cookie + "; HttpOnly; SameSite=Strict; Path=/";
  }

  private String name() {
    return "swardcase-" + port;
  }

  /** Why a request is refused at its headers, whatever it asks for; empty if it is not. */
  Optional<Reply> stranger(HttpExchange exchange) {
    Headers headers = exchange.getRequestHeaders();
    List<String> host = headers.getOrDefault("Host", List.of());
    if (host.size() != 1 || !hosts.contains(host.get(0))) {
      return Optional.of(Reply.text(421, "This server answers to its own address only."));
    }
    if (!METHODS.contains(exchange.getRequestMethod())) {
      return Optional.of(Reply.text(405, "Only GET and POST are answered."));
    }
    return Optional.empty();
  }

  /** Why a request that does not bring the key is refused; empty if it is not. */
  Optional<Reply> refusal(HttpExchange exchange) {
    if (!hasCookie(exchange)) {
      return Optional.of(Reply.text(403, "Open the address that swardcase printed."));
    }
    if (exchange.getRequestMethod().equals("POST") && !isOwnQuestion(exchange)) {
      return Optional.of(Reply.text(403, "This was not asked by the page itself."));
    }
    return Optional.empty();
  }

  private boolean hasCookie(HttpExchange exchange) {
    return exchange.getRequestHeaders().getOrDefault("Cookie", List.of()).stream()
        .flatMap(line -> Arrays.stream(line.split(";")))
        .map(String::strip)
        .filter(one -> one.startsWith(name() + "="))
        .anyMatch(one -> isSame(one.substring(name().length() + 1), cookie));
  }

  private boolean isOwnQuestion(HttpExchange exchange) {
    Headers headers = exchange.getRequestHeaders();
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
