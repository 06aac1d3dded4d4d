package slantlight.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class ReportTest {
  private static final List<String> ORDER =
      List.of(
          "id=\"answer\"",
          "id=\"schedule\"",
          "id=\"cost\"",
          "id=\"surfaces\"",
          "id=\"quantities\"",
          "id=\"inspection\"",
          "id=\"site\"",
          "id=\"limits\"");

  @Test
  void theAnswerComesFirstInThreeSentences() {
    Answer answer = new Answer(TestReports.data());
    assertThat(answer.sentences()).hasSize(3);
    assertThat(answer.sentences().get(0))
        .isEqualTo(
            "At level 4, one of 2 surfaces will show more than its room bears, worst the Room"
                + " ceiling: butt joint B3 shows at 6.8\u00d7 what the eye notices unasked, on 18 May"
                + " at 12:45, because ground light through the south window meets it at only 14\u00b0.");
    assertThat(answer.sentences().get(1))
        .isEqualTo(
            "Specify level 5 on Room ceiling (41.6 m\u00b2, 448 sq ft) and level 4 on Room west (22.0"
                + " m\u00b2, 237 sq ft).");
    assertThat(answer.sentences().get(2)).contains("640 USD");
  }

  /** Money is told as money, whatever its name; area as work. */
  @Test
  void aPlanCostsMoneyOrAddsWork() {
    List<slantlight.sheet.FrontierSheet.Step> steps =
        List.of(new slantlight.sheet.FrontierSheet.Step(640, 1.2, "level 5", true));
    ReportData marks =
        TestReports.with(new ReportData.Money("marks", false, steps, List.of(), List.of()));
    assertThat(new Answer(marks).sentences().get(2))
        .isEqualTo("The proposed plan costs 640 marks over the house as it is.");
    ReportData area =
        TestReports.with(new ReportData.Money("sq ft", true, steps, List.of(), List.of()));
    assertThat(new Answer(area).sentences().get(2))
        .isEqualTo("The proposed plan adds 640 sq ft of work.");
  }

  @Test
  void aLongFrontierIsToldByItsTellingPlans() {
    List<slantlight.sheet.FrontierSheet.Step> steps = new java.util.ArrayList<>();
    for (int i = 0; i < 100; i++) {
      double excess = 200 - i - (i >= 50 ? 90 : 0);
      steps.add(new slantlight.sheet.FrontierSheet.Step(i, excess, "plan " + i, i == 70));
    }
    ReportData.Money money = new ReportData.Money("USD", false, steps, List.of(), List.of());
    assertThat(money.telling(4))
        .extracting(slantlight.sheet.FrontierSheet.Step::words)
        .containsExactly("plan 0", "plan 50", "plan 70", "plan 99");
    assertThat(money.telling(100)).hasSize(100);
  }

  /** A board of 48 in is 4 ft or 1.22 m; 2.5 m are 98.4 in. */
  @Test
  void theReportSpeaksTheUnitsTheBoardsAreBoughtIn() {
    String feet = ReportPage.forScreen(TestReports.data(), PrintedSheets.THAT_MATTER);
    assertThat(feet)
        .contains("<td class=\"n\">4&#39; 0&quot;</td>")
        .contains("seen standing in the middle from 8&#39; 2&quot;: ")
        .doesNotContain("<td class=\"n\">1.22 m</td>");
    String metric = ReportPage.forScreen(TestReports.metric(), PrintedSheets.THAT_MATTER);
    assertThat(metric)
        .contains("<td class=\"n\">1.22 m</td>")
        .contains("seen standing in the middle from 2.5 m: ")
        .doesNotContain("<td class=\"n\">4&#39; 0&quot;</td>");
  }

  @Test
  void theSectionsStandInOrder() {
    String page = ReportPage.forScreen(TestReports.data(), PrintedSheets.THAT_MATTER);
    Pattern all = Pattern.compile(String.join(".*", ORDER), Pattern.DOTALL);
    assertThat(all.matcher(page).find()).isTrue();
    Cautions.ALL.forEach(c -> assertThat(page).contains(slantlight.sheet.Xml.escape(c)));
  }

  @Test
  void thePageAsksNothingOfTheNetwork() {
    String page = ReportPage.forScreen(TestReports.data(), PrintedSheets.THAT_MATTER);
    assertThat(page).contains("default-src 'none'".replace("'", "&#39;"));
    assertThat(page.replaceAll("http://www.w3.org/[0-9a-z/]+", "")).doesNotContain("://");
    assertThat(page).doesNotContain("url(//").doesNotContain("@import");
  }

  @Test
  void sameReportSameBytes() throws Exception {
    ReportData data = TestReports.data();
    assertThat(ReportPage.forScreen(data, PrintedSheets.THAT_MATTER))
        .isEqualTo(ReportPage.forScreen(data, PrintedSheets.THAT_MATTER));
    byte[] pdf = pdf(data);
    Files.write(Path.of("target", "report.pdf"), pdf);
    assertThat(pdf(data)).isEqualTo(pdf);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(document.getDocumentInformation().getTitle()).contains("Box room");
      assertThat(document.getDocumentInformation().getSubject())
          .contains(TestScores.made().sceneHash());
      String text = new PDFTextStripper().getText(document);
      assertThat(text).contains("Finish schedule", "6.8\u00d7 loud", "Assumptions, limits");
    }
  }

  /** Paper stays short: a dozen walls of no interest add lines to its tables, not sheets. */
  @Test
  void paperHasSheetsOnlyOfSurfacesThatMatter() throws Exception {
    int walls = 12;
    ReportData data = TestReports.withQuietWalls(walls);
    int few = pages(TestReports.data(), PrintedSheets.THAT_MATTER);
    int many = pages(data, PrintedSheets.THAT_MATTER);
    assertThat(few).isLessThanOrEqualTo(7);
    assertThat(many - few).isLessThanOrEqualTo(2);
    assertThat(pages(data, PrintedSheets.ALL)).isGreaterThan(many + walls / 2);
  }

  @Test
  void paperSaysWhatItLeavesOutAndLosesNothingOfTheSchedule() throws Exception {
    ReportData data = TestReports.withQuietWalls(12);
    String text = flat(data, PrintedSheets.THAT_MATTER);
    assertThat(text)
        .contains("Quiet wall 12 across framing 3, ")
        .contains(PrintedSheets.THAT_MATTER.rule)
        .contains("13 of 14 sheets are left out", "--all-sheets")
        .contains("When it shows: Room ceiling")
        .doesNotContain("When it shows: Quiet wall");
    String schedule =
        text.substring(text.indexOf("Finish schedule"), text.indexOf("What money buys"));
    data.verdicts()
        .forEach(
            v ->
                assertThat(schedule)
                    .contains(data.score().house().surface(v.surfaceId()).label())
                    .contains(v.reason()));
    assertThat(flat(data, PrintedSheets.ALL))
        .contains("When it shows: Quiet wall 12")
        .doesNotContain("left out");
  }

  /** On the screen every surface keeps its sheet; printing hides those left out on paper. */
  @Test
  void theScreenKeepsEverySheet() {
    ReportData data = TestReports.withQuietWalls(3);
    String some = ReportPage.forScreen(data, PrintedSheets.THAT_MATTER);
    assertThat(some.split("<article ")).hasSize(1 + 5);
    assertThat(some.split("class=\"surface brief\"")).hasSize(1 + 4);
    assertThat(some).contains("4 of 5 sheets are left out");
    assertThat(ReportPage.forScreen(data, PrintedSheets.ALL)).doesNotContain("surface brief");
  }

  private static int pages(ReportData data, PrintedSheets printed) throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf(data, printed))) {
      return document.getNumberOfPages();
    }
  }

  /** The text of the PDF with every gap made one space and ligatures taken apart. */
  private static String flat(ReportData data, PrintedSheets printed) throws Exception {
    try (PDDocument document = Loader.loadPDF(pdf(data, printed))) {
      String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
      return Normalizer.normalize(text, Normalizer.Form.NFKC);
    }
  }

  /** Names from a scene are text everywhere, in the page, in the PDF and in drawings. */
  @Test
  void namesAreNeverMarkup() throws Exception {
    ReportData data = TestReports.withNames("<img src=x onerror=alert(1)>\"'&= \u05d7\u05d3\u05e8");
    String page = ReportPage.forScreen(data, PrintedSheets.THAT_MATTER);
    assertThat(page).doesNotContain("<img src=x").contains("&lt;img src=x onerror=alert(1)&gt;");
    try (PDDocument document = Loader.loadPDF(pdf(data))) {
      String text = new PDFTextStripper().getText(document);
      assertThat(text).contains("<img src=x onerror=alert(1)>");
    }
  }

  @Test
  void theScreenPageIsWellFormed() throws Exception {
    String page = ReportPage.forScreen(TestReports.data(), PrintedSheets.THAT_MATTER);
    String body = page.substring(page.indexOf("<body>"), page.indexOf("<script>")) + "</body>";
    javax.xml.parsers.DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(body.getBytes(StandardCharsets.UTF_8)));
    Files.writeString(Path.of("target", "report.html"), page);
  }

  private static byte[] pdf(ReportData data) throws Exception {
    return pdf(data, PrintedSheets.THAT_MATTER);
  }

  private static byte[] pdf(ReportData data, PrintedSheets printed) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ReportPdf.write(data, printed, out);
    return out.toByteArray();
  }
}
