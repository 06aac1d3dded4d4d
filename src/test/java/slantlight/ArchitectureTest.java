package slantlight;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Holds the arrows between packages; DEVELOPERS.md draws them. */
class ArchitectureTest {
  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("slantlight");

  /** From the top of the house down; packages of one row do not know each other. */
  private static final List<List<String>> ROWS =
      List.of(
          List.of("cli"),
          List.of("view", "report"),
          List.of("sheet"),
          List.of("decide"),
          List.of("score"),
          List.of("light", "sight", "board"),
          List.of("sky"),
          List.of("scene"),
          List.of("geom", "units"));

  private static final String[] PURE = {
    "slantlight.sight..", "slantlight.sky..", "slantlight.geom..", "slantlight.units.."
  };

  @Test
  void everyPackageHasAPlaceInTheHouse() {
    TreeSet<String> packages = new TreeSet<>();
    for (JavaClass c : PROGRAM) {
      packages.add(
          c.getPackageName().replaceFirst("^slantlight\\.?", "").replaceFirst("\\..*", ""));
    }
    TreeSet<String> planned = new TreeSet<>();
    ROWS.forEach(planned::addAll);
    assertThat(planned).containsAll(packages);
  }

  @Test
  void arrowsRunDownward() {
    for (int row = 0; row < ROWS.size(); row++) {
      for (String from : ROWS.get(row)) {
        String[] forbidden =
            ROWS.subList(0, row + 1).stream()
                .flatMap(List::stream)
                .filter(to -> !to.equals(from))
                .map(to -> "slantlight." + to + "..")
                .toArray(String[]::new);
        noClasses()
            .that()
            .resideInAPackage("slantlight." + from + "..")
            .should()
            .dependOnClassesThat(resideInAnyPackage(forbidden))
            .because(from + " stands below or beside them")
            .allowEmptyShould(true)
            .check(PROGRAM);
      }
    }
  }

  @Test
  void noCycles() {
    SlicesRuleDefinition.slices()
        .matching("slantlight.(*)..")
        .should()
        .beFreeOfCycles()
        .check(PROGRAM);
  }

  @Test
  void onlyTheViewDraws() {
    onlyIn("view", "org.lwjgl..");
  }

  @Test
  void onlyTheCommandLineParsesOptions() {
    onlyIn("cli", "picocli..");
    onlyIn("cli", "me.tongfei..");
  }

  @Test
  void onlyTheSceneReadsJson() {
    classes()
        .that(
            DescribedPredicate.describe(
                "use Jackson",
                (JavaClass c) ->
                    c.getDirectDependenciesFromSelf().stream()
                        .anyMatch(
                            d -> d.getTargetClass().getPackageName().startsWith("com.fasterxml"))))
        .should()
        .resideInAnyPackage("slantlight.scene..", "slantlight.report..", "slantlight.cli..")
        .allowEmptyShould(true)
        .check(PROGRAM);
    noClasses()
        .that(resideOutsideOfPackages("slantlight.scene.."))
        .should()
        .dependOnClassesThat(
            DescribedPredicate.describe(
                "read JSON",
                (JavaClass c) ->
                    c.getName().startsWith("com.fasterxml.jackson")
                        && (c.getSimpleName().contains("Parser")
                            || c.getSimpleName().contains("Deserializer")
                            || c.getSimpleName().equals("ObjectReader"))))
        .check(PROGRAM);
  }

  @Test
  void physicsTouchesNoFilesAndNoClock() {
    noClasses()
        .that(resideInAnyPackage(PURE))
        .should()
        .dependOnClassesThat(
            resideInAPackage("java.nio.file..")
                .or(
                    DescribedPredicate.describe(
                        "open files",
                        (JavaClass c) ->
                            c.getName().startsWith("java.io.File")
                                || c.getName().equals("java.io.RandomAccessFile")))
                .or(resideInAnyPackage("org.lwjgl..", "java.net.."))
                .or(DescribedPredicate.describe("are a clock", ArchitectureTest::isClock)))
        .because("classpath resources are their only input")
        .check(PROGRAM);
    noClasses()
        .that(resideInAnyPackage(PURE))
        .should()
        .callMethodWhere(DescribedPredicate.describe("the clock is asked", ArchitectureTest::asks))
        .check(PROGRAM);
  }

  private static boolean isClock(JavaClass c) {
    return c.getName().equals("java.time.Clock");
  }

  private static boolean asks(JavaCall<?> call) {
    String name = call.getTarget().getName();
    return name.equals("currentTimeMillis")
        || name.equals("nanoTime")
        || (name.equals("now") && call.getTargetOwner().getPackageName().startsWith("java.time"));
  }

  private static void onlyIn(String home, String library) {
    noClasses()
        .that(resideOutsideOfPackages("slantlight." + home + ".."))
        .should()
        .dependOnClassesThat(resideInAPackage(library))
        .because("only " + home + " knows " + library)
        .check(PROGRAM);
  }
}
