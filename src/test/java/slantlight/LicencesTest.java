package slantlight;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Keeps the list of licences in step with what the jar carries. */
class LicencesTest {
  @Test
  void everyDependencyOfTheProgramIsListedWithItsVersion() throws Exception {
    String list = Files.readString(Path.of("docs", "licences.md"));
    assertThat(dependencies())
        .hasSizeGreaterThan(10)
        .allSatisfy(
            d ->
                assertThat(list)
                    .containsPattern("\\| \\Q" + d[0] + "\\E \\| \\Q" + d[1] + "\\E \\|"))
        .filteredOn(d -> !d[2].isEmpty())
        .allSatisfy(
            d ->
                assertThat(list)
                    .containsPattern(
                        "\\| \\Q"
                            + d[0]
                            + "\\E \\| \\Q"
                            + d[1]
                            + "\\E \\| \\Q"
                            + d[2]
                            + "\\E \\|"));
  }

  @Test
  void noneIsUnderTheGpl() throws Exception {
    assertThat(Files.readAllLines(Path.of("docs", "licences.md")))
        .filteredOn(l -> l.startsWith("|"))
        .noneMatch(l -> l.matches(".*\\| *A?GPL.*"));
  }

  /** Group, artifact and version (empty where it is managed elsewhere) outside the test scope. */
  private static List<String[]> dependencies() throws Exception {
    Document pom =
        DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new File("pom.xml"));
    NodeList all = pom.getElementsByTagName("dependency");
    List<String[]> out = new ArrayList<>();
    for (int i = 0; i < all.getLength(); i++) {
      Element d = (Element) all.item(i);
      boolean direct =
          d.getParentNode().getNodeName().equals("dependencies")
              && d.getParentNode().getParentNode().getNodeName().equals("project");
      String scope = child(d, "scope");
      if (direct && !scope.equals("test")) {
        String version = child(d, "version");
        if (version.startsWith("${")) {
          String name = version.substring(2, version.length() - 1);
          version = pom.getElementsByTagName(name).item(0).getTextContent();
        }
        out.add(new String[] {child(d, "groupId"), child(d, "artifactId"), version});
      }
    }
    return out;
  }

  private static String child(Element e, String name) {
    NodeList found = e.getElementsByTagName(name);
    return found.getLength() == 0 ? "" : found.item(0).getTextContent();
  }
}
