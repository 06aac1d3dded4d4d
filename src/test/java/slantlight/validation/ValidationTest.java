package slantlight.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Runs every check against the outside world and holds docs/validation.md to what they print.
 * {@code mvn test -Dtest=ValidationTest -Dvalidation.update=true} rewrites the document.
 */
class ValidationTest {
  private static final Path DOCUMENT = Path.of("docs", "validation.md");

  /** Every provider of checks, in the order of the document. */
  private static final List<Supplier<List<Check>>> PROVIDERS =
      List.of(
          SunChecks::all,
          SkyChecks::all,
          OpticsChecks::all,
          RidgeChecks::all,
          EyeChecks::all,
          Lm63Checks::all,
          LightChecks::all,
          MonteCarloChecks::all,
          LevelChecks::all,
          BoardChecks::all,
          ScoreChecks::all,
          ConvergenceChecks::all,
          SunPlaceChecks::all,
          SensitivityChecks::all,
          RemedyChecks::all);

  @TestFactory
  Stream<DynamicTest> everyCheckHoldsAndTheDocumentIsFresh() {
    List<Check> checks = new ArrayList<>();
    for (Supplier<List<Check>> provider : PROVIDERS) {
      checks.addAll(provider.get());
    }
    Stream<DynamicTest> each =
        checks.stream()
            .map(
                c ->
                    DynamicTest.dynamicTest(
                        c.subject() + ": " + c.what(),
                        () -> assertThat(c.holds()).as(c.toString()).isTrue()));
    return Stream.concat(
        each,
        Stream.of(DynamicTest.dynamicTest("document is fresh", () -> compare(document(checks)))));
  }

  private static void compare(String text) throws IOException {
    if (Boolean.getBoolean("validation.update")) {
      Files.writeString(DOCUMENT, text);
    }
    assertThat(DOCUMENT).content().isEqualTo(text);
  }

  private static String document(List<Check> checks) {
    Map<String, List<Check>> bySubject = new LinkedHashMap<>();
    for (Check c : checks) {
      bySubject.computeIfAbsent(c.subject(), s -> new ArrayList<>()).add(c);
    }
    StringBuilder out = new StringBuilder();
    out.append("# Held to the outside world\n\n");
    out.append("Printed by `ValidationTest`; CI fails when this file is stale. ");
    out.append(checks.size()).append(" checks.\n");
    bySubject.forEach(
        (subject, rows) -> {
          out.append("\n## ").append(subject).append("\n\n");
          out.append("| what | source | published | ours | difference |\n|---|---|---|---|---|\n");
          for (Check c : rows) {
            out.append("| ").append(cell(c.what())).append(" | ").append(cell(c.source()));
            out.append(" | ").append(cell(c.published())).append(" | ").append(cell(c.ours()));
            out.append(" | ").append(cell(c.difference())).append(" |\n");
          }
        });
    return out.toString();
  }

  private static String cell(String s) {
    return s.replace("|", "\\|").replace("\n", " ");
  }
}
