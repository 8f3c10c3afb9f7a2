package swardcase.evaluation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Lines of docs/evaluation.md that a command writes: they stand between a comment with their name
 * and one that ends them.
 *
 * @param name of the block
 */
record GeneratedBlock(String name) {

  private static final Path DOCUMENT = Path.of("docs/evaluation.md");

  private String start() {
    return "<!-- " + name + ": written by a command, see DEVELOPERS.md -->\n";
  }

  private String end() {
    return "<!-- end of " + name + " -->";
  }

  /** What stands in the document. */
  String read() {
    String document = document();
    return document.substring(from(document), document.indexOf(end()));
  }

  /** Puts this text into the document. */
  void write(String text) {
    String document = document();
    String changed =
        document.substring(0, from(document)) + text + document.substring(document.indexOf(end()));
    try {
      Files.writeString(DOCUMENT, changed, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Fails unless the document holds this text; {@code -Drewrite=true} writes it first. */
  void assertHolds(String text) {
    if (Boolean.getBoolean("rewrite")) {
      write(text);
    }
    assertThat(read().lines().toList())
        .as("run mvn -q test -Dtest=EvaluationDocumentTest -Drewrite=true and read what changed")
        .isEqualTo(text.lines().toList());
  }

  private int from(String document) {
    int at = document.indexOf(start());
    assertThat(at).as("'%s' in %s", start().strip(), DOCUMENT).isPositive();
    assertThat(document.indexOf(end())).as(end()).isGreaterThan(at);
    return at + start().length();
  }

  private static String document() {
    try {
      return Files.readString(DOCUMENT, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
