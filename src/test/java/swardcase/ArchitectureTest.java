package swardcase;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Holds the arrows between packages: who may know whom. */
class ArchitectureTest {

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("swardcase");

  /** Each package with the packages it may know, its own aside. */
  private static final Map<String, List<String>> MAY_KNOW =
      arrows(
          """
          check
          chance       check
          money        check
          evidence     check chance
          farm         check chance evidence
          reading      check chance
          tables       check chance evidence farm reading
          sward        check chance evidence farm tables
          feed         check chance evidence farm tables
          reproduction check chance evidence farm tables
          grazing      check evidence farm feed reproduction
          outcome      check evidence farm tables sward feed reproduction grazing
          draws        check chance evidence farm tables sward outcome
          search       check chance evidence farm outcome draws
          decision     check chance money evidence farm tables sward feed reproduction outcome \
                       draws search
          joining      check chance evidence farm tables sward feed reproduction grazing outcome \
                       draws
          intake       check chance evidence farm reading tables sward
          report       check chance evidence farm tables money sward outcome draws search \
                       decision joining
          wording      check chance evidence farm sward decision joining report
          folder       check chance evidence farm reading tables intake wording
          view         check chance evidence farm report wording
          paper        check chance wording
          sheet        check chance evidence tables report wording paper
          workbook     check chance evidence tables report wording
          page         check chance evidence tables decision folder reading report wording
          serve        check chance evidence farm reading tables intake folder outcome draws search decision \
                       joining report wording view sheet workbook page
          cli          check chance evidence farm tables intake folder outcome draws search decision \
                       joining report wording view paper sheet workbook page serve
          """);

  private static Map<String, List<String>> arrows(String lines) {
    return lines
        .lines()
        .map(line -> List.of(line.split(" +")))
        .collect(Collectors.toMap(line -> line.get(0), line -> line.subList(1, line.size())));
  }

  @Test
  void scan_wholeProgram_seesEnoughClasses() {
    assertThat(CLASSES.size()).isGreaterThan(400);
  }

  @Test
  void packages_ofTheProgram_knowOnlyWhatTheArrowsAllow() {
    Set<String> unforeseen = new TreeSet<>();
    for (JavaClass from : CLASSES) {
      String name = room(from);
      assertThat(MAY_KNOW).as("package of " + from.getName()).containsKey(name);
      from.getDirectDependenciesFromSelf().stream()
          .map(dependency -> dependency.getTargetClass().getBaseComponentType())
          .filter(target -> target.getPackageName().startsWith("swardcase."))
          .map(ArchitectureTest::room)
          .filter(target -> !target.equals(name) && !MAY_KNOW.get(name).contains(target))
          .forEach(target -> unforeseen.add(name + " knows " + target + ": " + from.getName()));
    }
    assertThat(unforeseen).isEmpty();
  }

  @Test
  void packages_ofTheProgram_areFreeOfCycles() {
    slices().matching("swardcase.(*)..").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void standardStreamsAndExit_outsideCli_areNotUsed() {
    noClasses()
        .that()
        .resideOutsideOfPackage("swardcase.cli")
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .orShould()
        .callMethod(System.class, "exit", int.class)
        .check(CLASSES);
  }

  @Test
  void libraries_ofOneRoom_stayInIt() {
    onlyIn("paper", "org.apache.pdfbox..");
    onlyIn("cli", "picocli..");
    onlyIn("serve", "com.sun.net.httpserver..");
    onlyIn("reading", "org.yaml..");
    onlyIn("intake", "javax.xml.stream..");
    onlyIn("workbook", "org.dhatim.fastexcel..");
  }

  private static void onlyIn(String room, String library) {
    noClasses()
        .that()
        .resideOutsideOfPackage("swardcase." + room)
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library)
        .allowEmptyShould(true)
        .check(CLASSES);
  }

  @Test
  void everyPackage_saysWhatItIs() {
    Set<String> rooms =
        CLASSES.stream().map(ArchitectureTest::room).collect(Collectors.toCollection(TreeSet::new));
    for (String room : rooms) {
      assertThat(new java.io.File("src/main/java/swardcase/" + room + "/package-info.java"))
          .exists();
    }
    classes().that().areRecords().should().haveOnlyFinalFields().check(CLASSES);
  }

  private static String room(JavaClass of) {
    return Arrays.stream(of.getPackageName().split("\\.")).skip(1).findFirst().orElse("");
  }
}
