package swardcase;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * Holds the jar to the licences of all it is made of. Run by {@code mvn verify} when the jar is
 * made; Maven says which libraries are in it.
 */
@EnabledIfSystemProperty(named = "jar", matches = ".+")
class LicencesJarTest {

  private static final String FOLDER = "META-INF/licenses/";
  private static final Pattern TEXT =
      Pattern.compile("(.*/)?[^/]*(LICEN[SC]E|NOTICE|COPYING)[^/]*", Pattern.CASE_INSENSITIVE);

  private final Path jar = Path.of(System.getProperty("jar"));
  private final List<Path> libraries =
      Stream.of(System.getProperty("libraries").split(File.pathSeparator)).map(Path::of).toList();

  @Test
  void licence_ofTheProgram_isInTheJarAsInTheDocuments() throws IOException {
    String licence = Files.readString(Path.of("docs/LICENSE"), StandardCharsets.ISO_8859_1);

    assertThat(licence).contains("Apache License", "Version 2.0", "END OF TERMS AND CONDITIONS");
    try (ZipFile made = new ZipFile(jar.toFile())) {
      assertThat(text(made, "META-INF/LICENSE")).isEqualTo(licence);
    }
    assertThat(Files.readString(Path.of("README.md")))
        .contains("Apache License 2.0")
        .contains("docs/LICENSE");
    assertThat(Files.readString(Path.of("pom.xml"))).contains("<name>Apache License, Version 2.0");
  }

  @Test
  void texts_ofEveryLibrary_travelUnchangedOrTheLibraryIsNamedAsHavingNone() throws IOException {
    assertThat(libraries).hasSizeGreaterThan(15);
    List<String> withoutText = new ArrayList<>();
    try (ZipFile made = new ZipFile(jar.toFile())) {
      String page = text(made, FOLDER + "README.txt");
      for (Path library : libraries) {
        String name = library.getParent().getParent().getFileName().toString();
        try (ZipFile published = new ZipFile(library.toFile())) {
          List<String> texts = names(published).filter(LicencesJarTest::isLicence).toList();
          for (String text : texts) {
            assertThat(text(made, FOLDER + name + "/" + text))
                .as(name + ": " + text)
                .isEqualTo(text(published, text));
          }
          if (texts.isEmpty()) {
            withoutText.add(name);
          }
        }
      }
      List<String> named =
          page.lines()
              .filter(line -> line.contains("    "))
              .map(line -> line.split(" ")[0])
              .toList();
      assertThat(named).containsExactlyInAnyOrderElementsOf(withoutText);
    }
  }

  @Test
  void windowsAndNativeLibraries_thatComeWithTheFonts_areLeftOut() throws IOException {
    try (ZipFile made = new ZipFile(jar.toFile())) {
      assertThat(names(made).filter(name -> name.matches(".*\\.(so|dll|dylib|jnilib)"))).isEmpty();
      assertThat(names(made).filter(name -> name.contains("com/formdev/")))
          .containsExactlyInAnyOrder(
              "com/formdev/flatlaf/fonts/roboto/LICENSE.txt",
              "com/formdev/flatlaf/fonts/roboto/Roboto-Bold.ttf",
              "com/formdev/flatlaf/fonts/roboto/Roboto-Regular.ttf",
              FOLDER + "flatlaf-fonts-roboto/com/formdev/flatlaf/fonts/roboto/LICENSE.txt");
    }
  }

  private static boolean isLicence(String name) {
    return TEXT.matcher(name).matches() && !name.endsWith(".class");
  }

  private static Stream<String> names(ZipFile jar) {
    return jar.stream().filter(entry -> !entry.isDirectory()).map(ZipEntry::getName);
  }

  private static String text(ZipFile jar, String name) throws IOException {
    ZipEntry entry = jar.getEntry(name);
    assertThat(entry).as(name).isNotNull();
    return new String(jar.getInputStream(entry).readAllBytes(), StandardCharsets.ISO_8859_1);
  }
}
