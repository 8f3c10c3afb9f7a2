package swardcase;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds the documents together: links lead somewhere, and every page is linked from its index. */
class DocumentsTest {

  private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");

  @Test
  void links_relative_leadToFiles() throws IOException {
    List<String> broken = new ArrayList<>();
    for (Path document : documents()) {
      for (String link : relativeLinks(document)) {
        if (!Files.exists(document.resolveSibling(link))) {
          broken.add(document + ": " + link);
        }
      }
    }
    assertThat(broken).isEmpty();
  }

  @Test
  void pages_ofAFolder_areLinkedFromItsIndex() throws IOException {
    assertAllLinked(Path.of("docs/method.md"), Path.of("docs/method"));
    assertAllLinked(Path.of("docs/decisions/README.md"), Path.of("docs/decisions"));
  }

  /** The guide for contributors names files that are there. */
  @Test
  void files_namedInTheGuide_areThere() throws IOException {
    List<String> named =
        Pattern.compile("`([a-z]+/[A-Z][A-Za-z]+)(?:\\.java)?`")
            .matcher(Files.readString(Path.of("DEVELOPERS.md")))
            .results()
            .map(name -> name.group(1))
            .toList();
    assertThat(named).hasSizeGreaterThan(20).allSatisfy(name -> assertThat(source(name)).exists());
  }

  /**
   * The way of a plant count is short, and each of its files knows another of them or is known to
   * it.
   */
  @Test
  void wayOfAPlantCount_inTheGuide_hasAtMostTwentyFilesThatHangTogether() throws IOException {
    List<String> way =
        Pattern.compile("(?m)^\\| \\d+ \\| `([a-z]+/[A-Za-z]+)` \\|")
            .matcher(Files.readString(Path.of("DEVELOPERS.md")))
            .results()
            .map(row -> row.group(1))
            .toList();
    assertThat(way).hasSizeBetween(10, 20).first().isEqualTo("intake/PlantsCsv");
    assertThat(way).last().isEqualTo("sheet/PaddockCards");
    for (String name : way) {
      boolean hangs = false;
      for (String other : way) {
        hangs |= !other.equals(name) && (mentions(name, other) || mentions(other, name));
      }
      assertThat(hangs).as(name + " hangs together with another").isTrue();
    }
  }

  private static boolean mentions(String one, String other) throws IOException {
    String type = other.replaceFirst(".*/", "");
    return Pattern.compile("\\b" + type + "\\b").matcher(Files.readString(source(one))).find();
  }

  private static Path source(String name) {
    return Path.of("src/main/java/swardcase", name + ".java");
  }

  private static void assertAllLinked(Path index, Path folder) throws IOException {
    List<Path> linked =
        relativeLinks(index).stream().map(link -> index.resolveSibling(link).normalize()).toList();
    try (Stream<Path> pages = Files.list(folder)) {
      assertThat(pages.map(Path::normalize).filter(page -> !page.equals(index)).toList())
          .isNotEmpty()
          .allSatisfy(page -> assertThat(linked).contains(page));
    }
  }

  private static List<String> relativeLinks(Path document) throws IOException {
    return LINK.matcher(Files.readString(document))
        .results()
        .map((MatchResult link) -> link.group(1))
        .filter(link -> !link.matches("[a-z]+:.*") && !link.startsWith("#"))
        .map(link -> link.replaceFirst("#.*", ""))
        .toList();
  }

  private static List<Path> documents() throws IOException {
    List<Path> documents = new ArrayList<>();
    for (String place : List.of("README.md", "DEVELOPERS.md", "docs", "src", "demo-data")) {
      try (Stream<Path> found = Files.walk(Path.of(place))) {
        found.filter(path -> path.toString().endsWith(".md")).sorted().forEach(documents::add);
      }
    }
    assertThat(documents).contains(Path.of("README.md"), Path.of("docs/method.md"));
    return documents;
  }
}
