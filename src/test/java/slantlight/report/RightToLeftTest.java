package slantlight.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;

/**
 * Names in right-to-left scripts in the PDF. Joining: The Unicode Standard 15.0, section 9.2
 * (Arabic), cursive joining rules R1 to R7 and ligature rule L1, with the forms as the code chart
 * of Arabic Presentation Forms-B names them. Order: Unicode Standard Annex 9.
 */
class RightToLeftTest {
  private static final LineReorderer REORDERER = new LineReorderer();

  /** Arabic letters of Presentation Forms-B by base letter and name of the form. */
  private static final Map<String, String> FORMS = forms();

  private static final List<String> LETTERS =
      FORMS.keySet().stream()
          .filter(k -> k.endsWith(" ISOLATED"))
          .map(k -> k.substring(0, 1))
          .sorted()
          .toList();

  @Test
  void lettersJoinAsTheStandardSays() {
    // Beh, dual-joining, three in a row: initial, medial, final (R4 to R6).
    assertThat(REORDERER.shapeText("\u0628\u0628\u0628")).isEqualTo("\uFE91\uFE92\uFE90");
    // Alef, right-joining, ends the group: the beh after it stands alone (R2, R3, R7).
    assertThat(REORDERER.shapeText("\u0628\u0627\u0628")).isEqualTo("\uFE91\uFE8E\uFE8F");
    // Lam and alef are one ligature (L1), isolated and after a joining letter.
    assertThat(REORDERER.shapeText("\u0644\u0627")).isEqualTo("\uFEFB");
    assertThat(REORDERER.shapeText("\u0628\u0644\u0627")).isEqualTo("\uFE91\uFEFC");
    // A mark is transparent (R1); the zero-width non-joiner parts.
    assertThat(REORDERER.shapeText("\u0628\u064E\u0628").replaceAll("[\u064E\uFE76\uFE77]", ""))
        .isEqualTo("\uFE91\uFE90");
    assertThat(REORDERER.shapeText("\u0628\u200C\u0628")).isEqualTo("\uFE8F\u200C\uFE8F");
  }

  @Test
  void runsAreTurnedWithBracketsMirroredAndMarksBehindTheirLetters() {
    assertThat(REORDERER.reorderRTLTextToLTR("\u05d0(\u05d1)")).isEqualTo("(\u05d1)\u05d0");
    assertThat(REORDERER.reorderRTLTextToLTR("\u05d0 (12) x")).isEqualTo("x (12) \u05d0");
    assertThat(REORDERER.reorderRTLTextToLTR("\u05d0\u05b8\u05d1")).isEqualTo("\u05d1\u05d0\u05b8");
  }

  /** Any word, held to forms and joining types read off the names of Java's character table. */
  @Property(tries = 500)
  void anyWordJoins(@ForAll @Size(min = 1, max = 9) List<@IntRange(min = 0, max = 999) Integer> w) {
    List<String> word = w.stream().map(i -> LETTERS.get(i % LETTERS.size())).toList();
    StringBuilder expected = new StringBuilder();
    for (int i = 0; i < word.size(); i++) {
      String letter = word.get(i);
      boolean joinsBefore =
          i > 0 && FORMS.containsKey(word.get(i - 1) + " INITIAL") && has(letter, "FINAL");
      boolean joinsAfter =
          i + 1 < word.size() && has(letter, "INITIAL") && has(word.get(i + 1), "FINAL");
      String form =
          joinsBefore ? (joinsAfter ? "MEDIAL" : "FINAL") : joinsAfter ? "INITIAL" : "ISOLATED";
      // A letter that joins to none, hamza, may stay as it is.
      expected.append(has(letter, "FINAL") ? FORMS.get(letter + " " + form) : letter);
    }
    String shaped = REORDERER.shapeText(String.join("", word));
    assertThat(parted(shaped)).isEqualTo(expected.toString());
    assertThat(REORDERER.deshapeText(shaped)).isEqualTo(String.join("", word));
  }

  private static boolean has(String letter, String form) {
    return FORMS.containsKey(letter + " " + form);
  }

  /** Ligatures of lam with alef (FEF5 to FEFC) taken apart into lam's form and alef's final one. */
  private static String parted(String shaped) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < shaped.length(); i++) {
      char c = shaped.charAt(i);
      if (c < '\uFEF5' || c > '\uFEFC') {
        out.append(c);
        continue;
      }
      String both = Normalizer.normalize(Character.toString(c), Normalizer.Form.NFKC);
      boolean alone = (c - '\uFEF5') % 2 == 0;
      out.append(FORMS.get(both.charAt(0) + (alone ? " INITIAL" : " MEDIAL")));
      out.append(FORMS.get(both.charAt(1) + " FINAL"));
    }
    return out.toString();
  }

  private static Map<String, String> forms() {
    Map<String, String> out = new HashMap<>();
    for (char c = '\uFE80'; c <= '\uFEF4'; c++) {
      String base = Normalizer.normalize(Character.toString(c), Normalizer.Form.NFKC);
      String name = Character.getName(c).replace(" FORM", "");
      out.put(base + name.substring(name.lastIndexOf(' ')), Character.toString(c));
    }
    return out;
  }

  @Test
  void anArabicNameIsSetJoinedAndInItsOrder() throws Exception {
    // Ghurfa (room), a number, a Latin word: in a right-to-left line the number comes second.
    assertThat(title("\u063a\u0631\u0641\u0629 12 Bath"))
        .isEqualTo("Bath 12 \uFE94\uFED3\uFEAE\uFECF");
  }

  @Test
  void aHebrewNameIsSetInItsOrder() throws Exception {
    assertThat(title("\u05d7\u05d3\u05e8 (12) Bath")).isEqualTo("Bath (12) \u05e8\u05d3\u05d7");
  }

  /** As docs/reading.md says. */
  @Test
  void aLetterThatNoShippedFontHasIsAHash() throws Exception {
    assertThat(title("\u90e8\u5c4b Bath")).isEqualTo("## Bath");
  }

  /** In an English sentence the name is one island: its number stands left of its word. */
  @Test
  void aNameInASentenceKeepsItsOrder() throws Exception {
    String answer = line(glyphs("\u063a\u0631\u0641\u0629 (12)"), "Specify");
    assertThat(answer).contains("level 5 on (12) \uFE94\uFED3\uFEAE\uFECF (41.6");
  }

  private static String line(List<TextPosition> glyphs, String start) {
    Map<Float, List<TextPosition>> lines =
        glyphs.stream().collect(Collectors.groupingBy(TextPosition::getY));
    return lines.values().stream()
        .map(RightToLeftTest::inOrder)
        .filter(l -> l.startsWith(start))
        .findFirst()
        .orElseThrow();
  }

  private static String inOrder(List<TextPosition> line) {
    return line.stream()
        .sorted(Comparator.comparing(TextPosition::getX))
        .map(TextPosition::getUnicode)
        .collect(Collectors.joining())
        .strip();
  }

  /** The glyphs of the report's title from left to right, as the PDF says what they are. */
  private static String title(String name) throws Exception {
    List<TextPosition> all = glyphs(name);
    float size = all.stream().map(TextPosition::getFontSizeInPt).max(Float::compare).orElseThrow();
    return inOrder(all.stream().filter(g -> g.getFontSizeInPt() > size - 0.1).toList());
  }

  private static List<TextPosition> glyphs(String name) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ReportPdf.write(TestReports.withNames(name), PrintedSheets.THAT_MATTER, out);
    Files.write(Path.of("target", "report-rtl.pdf"), out.toByteArray());
    Glyphs glyphs = new Glyphs();
    try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
      glyphs.setEndPage(1);
      glyphs.getText(document);
    }
    return glyphs.all;
  }

  private static final class Glyphs extends PDFTextStripper {
    final List<TextPosition> all = new ArrayList<>();

    @Override
    protected void processTextPosition(TextPosition text) {
      all.add(text);
    }
  }
}
