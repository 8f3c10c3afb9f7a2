package swardcase.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import swardcase.folder.CannotWriteException;
import swardcase.folder.WholeFiles;

/** Answers kept in the new folder until all of them are there, so that a stop loses nothing. */
record SavedAnswers(Path folder) {

  static final String FILE = "start-answers.txt";

  /**
   * The answers of an earlier run; none if there was none. Lines that are no answers are passed.
   */
  Map<String, String> read() throws IOException {
    Map<String, String> answers = new LinkedHashMap<>();
    if (Files.exists(folder.resolve(FILE))) {
      byte[] bytes = Files.readAllBytes(folder.resolve(FILE));
      for (String line : new String(bytes, StandardCharsets.UTF_8).lines().toList()) {
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
    WholeFiles.write(folder, Map.of(FILE, text));
  }

  void delete() throws IOException {
    Files.deleteIfExists(folder.resolve(FILE));
  }
}
