package swardcase.serve;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * An answer to a request.
 *
 * @param status of HTTP
 * @param headers by name
 * @param body the bytes
 */
record Reply(int status, Map<String, String> headers, byte[] body) {

  /** Media types by the end of a name. */
  private static final Map<String, String> TYPES =
      Map.of(
          "html", "text/html; charset=utf-8",
          "txt", "text/plain; charset=utf-8",
          "js", "text/javascript; charset=utf-8",
          "css", "text/css; charset=utf-8",
          "csv", "text/csv; charset=utf-8",
          "json", "application/json; charset=utf-8",
          "yaml", "application/yaml; charset=utf-8",
          "pdf", "application/pdf",
          "svg", "image/svg+xml",
          "xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet");

  /** Bytes whose type is that of a name. */
  static Reply of(int status, String name, byte[] bytes) {
    String type = TYPES.get(name.substring(name.lastIndexOf('.') + 1));
    return new Reply(status, Map.of(), bytes).with("Content-Type", type);
  }

  /** A page or a part of one. */
  static Reply html(int status, String html) {
    return of(status, "html", html.getBytes(StandardCharsets.UTF_8));
  }

  /** A plain sentence. */
  static Reply text(int status, String text) {
    return of(status, "txt", text.getBytes(StandardCharsets.UTF_8));
  }

  /** The same with a header more. */
  Reply with(String header, String value) {
    Map<String, String> all = new LinkedHashMap<>(headers);
    all.put(header, value);
    return new Reply(status, all, body);
  }
}
