package swardcase.serve;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;

/** Asks a page as a browser would that was given its address. */
public final class Browser {

  private final HttpClient client = HttpClient.newHttpClient();
  private final String root;
  private final String cookie;

  /** A browser that opens this address. */
  public Browser(String address) {
    root = address.replaceFirst("/open.*", "");
    HttpResponse<byte[]> opened = send(HttpRequest.newBuilder(URI.create(address)));
    cookie = opened.headers().firstValue("Set-Cookie").orElse("none=").replaceFirst(";.*", "");
  }

  /** The address without its key. */
  public String root() {
    return root;
  }

  /** The cookie it was given. */
  public String cookie() {
    return cookie;
  }

  /** What is answered to a request that somebody else made up. */
  public HttpResponse<byte[]> send(HttpRequest.Builder request) {
    try {
      return client.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }

  /** A request with the cookie. */
  public HttpRequest.Builder with(String name) {
    return HttpRequest.newBuilder(URI.create(root + name)).header("Cookie", cookie);
  }

  /** A question as the page itself asks it. */
  public HttpRequest.Builder question(String name, String json) {
    return with(name)
        .header("Origin", root)
        .header("Sec-Fetch-Site", "same-origin")
        .header("Content-Type", "application/json")
        .POST(HttpRequest.BodyPublishers.ofString(json));
  }

  /** The bytes under a name. */
  public HttpResponse<byte[]> get(String name) {
    return send(with(name));
  }

  /** The answer to a question as text. */
  public String ask(String name, String json) {
    return text(send(question(name, json)));
  }

  /** The body of an answer as text. */
  public static String text(HttpResponse<byte[]> answer) {
    return new String(answer.body(), StandardCharsets.UTF_8);
  }
}
