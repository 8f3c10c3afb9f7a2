package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swardcase.folder.NewFarm;
import swardcase.folder.Question;
import swardcase.tables.TablesLoader;

/** Does what the tutorial says, block by block. */
class TutorialTest {

  private static final Pattern BLOCK = Pattern.compile("(?s)```(\\S+)\n(.*?)```");

  private static final List<String> PATH_FOLLOWS =
      List.of("start", "check", "decide", "compare", "--scenario", "--pdf", "--json", "--csv");

  @TempDir private Path folder;

  @Test
  void tutorial_followedWordForWord_works() throws IOException {
    List<Question> questions = new NewFarm(TablesLoader.standard().load()).questions();
    int commands = 0;
    for (MatchResult block :
        BLOCK.matcher(Files.readString(Path.of("docs/tutorial.md"))).results().toList()) {
      Path file = folder.resolve("hill-end").resolve(block.group(1));
      switch (block.group(1)) {
        case "what-if.yaml" -> Files.writeString(folder.resolve("what-if.yaml"), block.group(2));
        case "paddocks.csv", "plants.csv" -> Files.writeString(file, block.group(2));
        case "farm.yaml" -> Files.writeString(file, Files.readString(file) + block.group(2));
        case "records.csv" -> {
          Files.writeString(file, block.group(2));
          Path yaml = folder.resolve("hill-end/farm.yaml");
          String figure = "(?m)^ *pregnant_percent:.*\n";
          assertThat(Files.readString(yaml)).containsPattern(figure);
          Files.writeString(yaml, Files.readString(yaml).replaceFirst(figure, ""));
        }
        case "finance" -> {
          Path yaml = folder.resolve("hill-end/farm.yaml");
          String budget = "budget_per_year: 20000\n";
          assertThat(Files.readString(yaml)).contains(budget);
          Files.writeString(yaml, Files.readString(yaml).replace(budget, budget + block.group(2)));
        }
        default -> {
          run(block.group(2), questions);
          commands++;
        }
      }
    }

    assertThat(commands).isEqualTo(7);
    assertThat(Ran.below(folder))
        .contains("hill-end.pdf", "case/sheet.pdf", "case/result.json", "case/tables/years.csv");
  }

  private void run(String block, List<Question> questions) {
    List<String> lines = block.lines().toList();
    String[] arguments = lines.get(0).replaceFirst("\\$ swardcase ", "").split(" ");
    for (int i = 1; i < arguments.length; i++) {
      String before = arguments[i - 1];
      if (PATH_FOLLOWS.contains(before)) {
        arguments[i] = folder.resolve(arguments[i]).toString();
      }
    }
    StringBuilder typed = new StringBuilder();
    StringBuilder prompts = new StringBuilder();
    for (String line : lines.subList(1, lines.size())) {
      Question asked =
          questions.stream()
              .filter(question -> line.startsWith(question.line(Map.of()).strip()))
              .findFirst()
              .orElseThrow(() -> new AssertionError("no such question: " + line));
      prompts.append(asked.line(Map.of()));
      typed.append(line.substring(asked.line(Map.of()).strip().length()).strip()).append('\n');
    }

    Ran ran = Ran.typing(typed.toString(), (Object[]) arguments);

    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isZero();
    assertThat(ran.out()).startsWith(prompts);
  }
}
