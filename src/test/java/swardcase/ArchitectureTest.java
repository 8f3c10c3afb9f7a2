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
          tables       check chance evidence farm
          sward        check chance evidence farm tables
          feed         check chance evidence farm tables
          reproduction check chance evidence farm tables
          plan         check chance evidence farm tables money sward feed reproduction
          findings     check chance evidence farm tables money sward feed reproduction plan
          joining      check chance evidence farm tables sward feed reproduction plan
          intake       check chance evidence farm tables
          report       check chance evidence farm tables money sward feed reproduction plan \
                       findings joining
          sheet        check chance evidence tables report
          workbook     check chance evidence tables report
          cli          check chance evidence farm tables intake plan findings joining report sheet \
                       workbook
          """);

  private static Map<String, List<String>> arrows(String lines) {
    return lines
        .lines()
        .map(line -> List.of(line.split(" +")))
        .collect(Collectors.toMap(line -> line.get(0), line -> line.subList(1, line.size())));
  }

  @Test
  void scan_wholeProgram_seesEnoughClasses() {
    assertThat(CLASSES.size()).isGreaterThan(40);
  }

  @Test
  void packages_ofTheProgram_knowOnlyWhatTheArrowsAllow() {
    for (JavaClass from : CLASSES) {
      String name = room(from);
      assertThat(MAY_KNOW).as("package of " + from.getName()).containsKey(name);
      Set<String> known =
          from.getDirectDependenciesFromSelf().stream()
              .map(dependency -> dependency.getTargetClass().getBaseComponentType())
              .filter(target -> target.getPackageName().startsWith("swardcase."))
              .map(ArchitectureTest::room)
              .filter(target -> !target.equals(name))
              .collect(Collectors.toCollection(TreeSet::new));
      assertThat(MAY_KNOW.get(name)).as(from.getName() + " knows").containsAll(known);
    }
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
    onlyIn("sheet", "org.apache.pdfbox..");
    onlyIn("cli", "picocli..");
    onlyIn("intake", "org.yaml..");
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
