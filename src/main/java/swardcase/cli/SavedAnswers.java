package swardcase.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/** Answers kept in the new folder until all of them are there, so that a stop loses nothing. */
final class SavedAnswers {

  static final String FILE = "start-answers.txt";

  private final Path file;

  SavedAnswers(Path folder) {
    file = folder.resolve(FILE);
  }

  /**
   * The answers of an earlier run; none if there was none. Lines that are no answers are passed.
   */
  Map<String, String> read() throws IOException {
    Map<String, String> answers = new LinkedHashMap<>();
    if (Files.exists(file)) {
      String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
      for (String line : text.lines().toList()) {
        int colon = line.indexOf(':');
        if (colon > 0) {
          answers.put(line.substring(0, colon), line.substring(colon + 1).strip());
        }
      }
    }
    return answers;
  }

  void write(Map<String, String> answers) throws CannotWriteException {
    String text =
        answers.entrySet().stream()
            .map(answer -> answer.getKey() + ": " + answer.getValue() + "\n")
            .collect(Collectors.joining());
    try (WholeFiles files = new WholeFiles(Inputs.none())) {
      files.add(file, text);
      files.commit();
    }
  }

  void delete() throws IOException {
    Files.deleteIfExists(file);
  }
}
