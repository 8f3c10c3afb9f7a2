package swardcase.serve;

import java.nio.charset.StandardCharsets;

/**
 * An answer to a request.
 *
 * @param status of HTTP
 * @param type media type
 * @param body the bytes
 * @param saveAs name under which the browser saves it; blank if it is to be shown
 */
record Reply(int status, String type, byte[] body, String saveAs) {

  static final String HTML = "text/html; charset=utf-8";
  private static final String TEXT = "text/plain; charset=utf-8";

  /** A page or a part of one. */
  static Reply html(int status, String html) {
    return new Reply(status, HTML, html.getBytes(StandardCharsets.UTF_8), "");
  }

  /** A plain sentence. */
  static Reply text(int status, String text) {
    return new Reply(status, TEXT, text.getBytes(StandardCharsets.UTF_8), "");
  }
}
