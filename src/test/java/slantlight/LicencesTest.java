package slantlight;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Keeps the lists of licences and of reviews in step with what the jar carries. */
class LicencesTest {
  /** Maven's own list of what the jar carries, transitively; made by each build. */
  private static final Path SHIPPED = Path.of("target", "shipped.txt");

  @Test
  void theLicenceOfEveryShippedDependencyIsListed() throws IOException {
    assertThat(listed("licences.md")).isEqualTo(shipped());
  }

  @Test
  void everyShippedDependencyIsReviewedInThisVersion() throws IOException {
    assertThat(listed("supply.md")).isEqualTo(shipped());
    assertThat(rows("supply.md"))
        .allSatisfy(cells -> assertThat(cells).hasSize(7))
        .allSatisfy(cells -> assertThat(cells).noneMatch(String::isBlank));
  }

  @Test
  void noneIsUnderTheGpl() throws IOException {
    assertThat(Files.readAllLines(Path.of("docs", "licences.md")))
        .filteredOn(l -> l.startsWith("|"))
        .noneMatch(l -> l.matches(".*\\| *A?GPL.*"));
  }

  /** Group, artifact and version of everything outside the test scope; natives count once. */
  private static Set<String> shipped() throws IOException {
    Set<String> out = new TreeSet<>();
    for (String line : Files.readAllLines(SHIPPED)) {
      // group:artifact:jar[:classifier]:version:scope -- module ...
      String[] part = line.strip().split("\\s", 2)[0].split(":", -1);
      if (part.length >= 5) {
        out.add(part[0] + " | " + part[1] + " | " + part[part.length - 2]);
      }
    }
    assertThat(out).hasSizeGreaterThan(40);
    return out;
  }

  private static Set<String> listed(String document) throws IOException {
    return rows(document)
        .map(cells -> cells[0] + " | " + cells[1] + " | " + cells[2])
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** The cells of each dependency's row. */
  private static Stream<String[]> rows(String document) throws IOException {
    return Files.readAllLines(Path.of("docs", document)).stream()
        .filter(l -> l.startsWith("| ") && !l.startsWith("| group |"))
        .map(l -> l.substring(2, l.length() - 2).split(" \\| ", -1));
  }
}
