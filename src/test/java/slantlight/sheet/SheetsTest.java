package slantlight.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import slantlight.TestHouses;
import slantlight.board.Blank;
import slantlight.board.CuttingPlan;
import slantlight.board.Layout;
import slantlight.board.PlacedBoard;
import slantlight.geom.Vec2;
import slantlight.report.TestScores;
import slantlight.scene.BoardRun;
import slantlight.scene.BoardSize;
import slantlight.scene.Surface;
import slantlight.score.Band;
import slantlight.score.HouseScore;
import slantlight.units.LengthUnit;
import slantlight.units.Measures;

class SheetsTest {
  private static final HouseScore SCORE = TestScores.score();

  static Stream<Drawing> drawings() {
    return Stream.concat(
        Stream.of(
            SurfaceSheet.of(SCORE.house(), SCORE.surfaces().get(0), "ceiling"),
            SurfaceSheet.of(SCORE.house(), SCORE.surfaces().get(1), "wall"),
            SunPathSheet.of(SCORE.house(), 2026, "sun"),
            SectionSheet.of(SCORE.house(), SCORE.surfaces().get(0), "section").orElseThrow(),
            CalendarSheet.of(
                SCORE.surfaces().get(0).calendar(),
                SCORE.house().site(),
                2026,
                "calendar",
                "Ceiling"),
            FrontierSheet.of(
                List.of(
                    new FrontierSheet.Step(0, 12.5, "as it is", false),
                    new FrontierSheet.Step(640, 1.2, "level 5 on the ceiling", true)),
                "USD",
                "frontier")),
        CuttingSheet.of(strips(), Measures.printed(LengthUnit.FT), "cutting").stream());
  }

  /** Fourteen pieces in rows of a foot and less, cut from few boards. */
  private static CuttingPlan strips() {
    Surface ceiling = SCORE.house().surface("room/ceiling");
    List<PlacedBoard> pieces = new ArrayList<>();
    for (int i = 0; i < 14; i++) {
      double wide = i % 2 == 0 ? 0.12 : 1.2192;
      double length = i % 2 == 0 ? 3.6 - i / 10.0 : 0.1 + i / 30.0;
      List<Vec2> outline = TestHouses.rectangle(0, 0, length, wide);
      Blank blank = new Blank(outline, length, wide, i % 2 == 0 ? 0 : 2);
      pieces.add(
          new PlacedBoard(i + 1, new BoardSize(1.2192, 3.6576), outline, length * wide, blank));
    }
    Layout layout =
        new Layout(ceiling.id(), BoardRun.ACROSS_FRAMING, pieces, List.of(), List.of(), "as given");
    return CuttingPlan.of(List.of(ceiling), List.of(layout));
  }

  /** Whoever cuts must find every piece, however small. */
  @Test
  void everySharedPieceIsNumberedOnItsBoard() {
    CuttingPlan plan = strips();
    Set<String> wanted = new TreeSet<>();
    plan.sheets().stream()
        .filter(s -> s.cuts().size() > 1)
        .forEach(s -> s.cuts().forEach(c -> wanted.add(Integer.toString(c.piece() + 1))));
    assertThat(wanted).hasSizeGreaterThan(10);
    Set<String> numbered = new TreeSet<>();
    for (Drawing d : CuttingSheet.of(plan, Measures.printed(LengthUnit.FT), "cutting")) {
      for (Mark mark : layer(d, "numbers").marks()) {
        if (mark instanceof Mark.Label label) {
          String[] parts = label.text().split(", with ", -1);
          numbered.add(parts[0].replaceFirst(":.*", ""));
          numbered.addAll(List.of(parts).subList(1, parts.length));
        }
      }
    }
    assertThat(numbered).containsAll(wanted);
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void everyMarkLiesOnThePaper(Drawing drawing) {
    for (Layer layer : drawing.layers()) {
      for (Mark mark : layer.marks()) {
        for (Vec2 p : points(mark)) {
          assertThat(p.x()).as(layer.id()).isBetween(0.0, drawing.width());
          assertThat(p.y()).as(layer.id()).isBetween(0.0, drawing.height());
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void theSvgIsWellFormedSizedInMillimetresAndNamed(Drawing drawing) throws Exception {
    Element svg = parse(SvgText.file(drawing, "test")).getDocumentElement();
    assertThat(svg.getAttribute("width")).isEqualTo(trim(drawing.width()) + "mm");
    assertThat(svg.getAttribute("viewBox"))
        .isEqualTo("0 0 " + trim(drawing.width()) + " " + trim(drawing.height()));
    assertThat(svg.getElementsByTagName("title").item(0).getTextContent())
        .isEqualTo(drawing.title());
    assertThat(svg.getElementsByTagName("text").getLength()).isPositive();
    assertThat(SvgText.file(drawing, "test"))
        .isEqualTo(SvgText.file(drawing, "test"))
        .doesNotContain("NaN");
  }

  /** A box 8 m deep drawn 1:75 is 106.67 mm high on paper. */
  @Test
  void theStatedScaleIsTheDrawnScale() throws Exception {
    Drawing sheet = drawings().findFirst().orElseThrow();
    assertThat(sheet.title()).endsWith("1:75");
    Mark.Path outline = (Mark.Path) layer(sheet, "outline").marks().get(0);
    double high = outline.rings().get(0).stream().mapToDouble(Vec2::y).max().orElseThrow();
    double low = outline.rings().get(0).stream().mapToDouble(Vec2::y).min().orElseThrow();
    assertThat((high - low) * 75 / 1000).isCloseTo(8, within(1e-9));
  }

  /** Ten feet are 3.048 m; at 1:75 they are 40.64 mm of paper, and two metres 26.67 mm. */
  @Test
  void theScaleBarIsInTheReadersUnitAndToScale() {
    assertThat(scaleBar(SCORE)).isEqualTo("10 ft: 40.64");
    HouseScore metric = TestScores.score(TestHouses.metric(TestScores.house()));
    assertThat(scaleBar(metric)).isEqualTo("2 m: 26.67");
  }

  private static String scaleBar(HouseScore score) {
    Drawing sheet = SurfaceSheet.of(score.house(), score.surfaces().get(0), "ceiling");
    List<Mark> marks = layer(sheet, "legend").marks();
    for (int i = 1; i < marks.size(); i++) {
      if (marks.get(i) instanceof Mark.Label label
          && label.text().matches("[0-9]+ (m|ft)")
          && marks.get(i - 1) instanceof Mark.Path bar) {
        Extent outline = Extent.of(bar.rings().get(0));
        return label.text() + ": " + trim(outline.width());
      }
    }
    return "none";
  }

  /** A reflected plan agrees with a floor plan: north up, the south window at the bottom. */
  @Test
  void theCeilingIsDrawnAsAFloorPlanWouldBe() {
    Drawing sheet = drawings().findFirst().orElseThrow();
    Mark.Path window = (Mark.Path) layer(sheet, "openings").marks().get(0);
    Mark.Path outline = (Mark.Path) layer(sheet, "outline").marks().get(0);
    double bottom = outline.rings().get(0).stream().mapToDouble(Vec2::y).max().orElseThrow();
    assertThat(window.rings().get(0)).allMatch(p -> p.y() >= bottom - 1e-9);
    assertThat(window.key()).isEqualTo("room/window");
  }

  @Test
  void everyJointIsDrawnWithItsIdAndItsNumbers() throws Exception {
    String svg = SvgText.file(drawings().findFirst().orElseThrow(), "test");
    SCORE
        .surfaces()
        .get(0)
        .joints()
        .forEach(j -> assertThat(svg).contains("data-key=\"" + j.joint().id() + "\""));
    assertThat(svg).contains("B3: butt joint, 1.22 m");
  }

  /** In 2026 clocks go forward on 8 March at 2:00 (15 U.S.C. 260a: second Sunday of March). */
  @Test
  void theHourThatDaylightSavingSkipsIsHatchedAndExplained() throws Exception {
    Drawing with = calendar(66, 67, 68);
    double top = 8 + 2 * 3.6;
    List<Vec2> hatch = new ArrayList<>();
    layer(with, "skipped").marks().forEach(m -> hatch.addAll(points(m)));
    assertThat(hatch.stream().mapToDouble(Vec2::y).min()).hasValueCloseTo(top, within(0.8));
    assertThat(hatch.stream().mapToDouble(Vec2::y).max()).hasValueCloseTo(top + 3.6, within(1e-9));
    assertThat(hatch.stream().mapToDouble(Vec2::x).min())
        .hasValueCloseTo(16 + 160 * 65.5 / 365, within(1e-9));
    assertThat(SvgText.file(with, "test")).contains("skipped as clocks go to daylight saving");
    Drawing without = calendar(66, 68, 304, 305);
    assertThat(layer(without, "skipped").marks()).isEmpty();
    assertThat(SvgText.file(without, "test")).doesNotContain("daylight saving");
  }

  private static Drawing calendar(Integer... days) {
    float[][] showing = new float[days.length][48];
    for (float[] day : showing) {
      java.util.Arrays.fill(day, 1.5f);
    }
    slantlight.score.Calendar calendar = new slantlight.score.Calendar(List.of(days), 30, showing);
    return CalendarSheet.of(calendar, SCORE.house().site(), 2026, "calendar", "Ceiling");
  }

  /** Lightness must fall from band to band so that the drawing reads in grey. */
  @Test
  void bandsRunAwayFromThePaperInGrey() {
    List<Band> bands = List.of(Band.values());
    for (int i = 1; i < bands.size(); i++) {
      Ink one = Ink.of(bands.get(i - 1));
      Ink next = Ink.of(bands.get(i));
      assertThat(luminance(next.onLight())).isLessThan(luminance(one.onLight()) * 0.75);
      assertThat(luminance(next.onDark())).isGreaterThan(luminance(one.onDark()) * 1.3);
    }
    List<Pen> pens = Stream.of(Band.values()).map(Pen::of).toList();
    assertThat(pens.stream().map(p -> p.width() + " " + p.dashes()).distinct()).hasSize(4);
  }

  /** WCAG 2.1, 1.4.3 and 1.4.11: text 4.5 to 1, lines that carry meaning 3 to 1. */
  @Test
  void textAndLinesStandOutFromThePaper() {
    for (Ink ink : List.of(Ink.LINE, Ink.SOFT, Ink.ACCENT, Ink.GLASS_EDGE, Ink.LAMP, Ink.LIGHT)) {
      assertThat(contrast(ink.onLight(), Ink.PAPER.onLight())).as(ink.key()).isGreaterThan(4.5);
      assertThat(contrast(ink.onDark(), Ink.PAPER.onDark())).as(ink.key()).isGreaterThan(4.5);
    }
    for (Ink ink : List.of(Ink.QUIET_LINE, Ink.PLAIN, Ink.LOUD, Ink.SUN)) {
      assertThat(contrast(ink.onLight(), Ink.PAPER.onLight())).as(ink.key()).isGreaterThan(3);
      assertThat(contrast(ink.onDark(), Ink.PAPER.onDark())).as(ink.key()).isGreaterThan(3);
    }
  }

  @Test
  void namesAreTextAndNeverMarkup() throws Exception {
    String evil = "</svg><script>alert(1)</script>\u0000\u0007 \"x\" 'y' & \u05d7\u05d3\u05e8";
    Pencil pencil = new Pencil().on("a").text(1, 1, evil, 3, Ink.LINE);
    pencil.run(List.of(new Vec2(0, 0), new Vec2(1, 1)), Pen.of(Band.LOUD), evil, evil);
    Document svg = parse(SvgText.file(pencil.drawing("d", evil, evil, 10, 10), evil));
    NodeList scripts = svg.getElementsByTagName("script");
    assertThat(scripts.getLength()).isZero();
    assertThat(svg.getElementsByTagName("text").item(0).getTextContent())
        .isEqualTo(evil.replace('\u0000', '\ufffd').replace('\u0007', '\ufffd'));
  }

  private static org.assertj.core.data.Offset<Double> within(double d) {
    return org.assertj.core.data.Offset.offset(d);
  }

  private static List<Vec2> points(Mark mark) {
    if (mark instanceof Mark.Path path) {
      List<Vec2> all = new ArrayList<>();
      path.rings().forEach(all::addAll);
      return all;
    }
    return List.of(((Mark.Label) mark).at());
  }

  private static Layer layer(Drawing drawing, String id) {
    return drawing.layers().stream().filter(l -> l.id().equals(id)).findFirst().orElseThrow();
  }

  private static String trim(double value) {
    return java.math.BigDecimal.valueOf(value)
        .setScale(2, java.math.RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }

  private static Document parse(String svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
  }

  /** Relative luminance by WCAG 2.1. */
  private static double luminance(int rgb) {
    return 0.2126 * linear(rgb >> 16 & 255)
        + 0.7152 * linear(rgb >> 8 & 255)
        + 0.0722 * linear(rgb & 255);
  }

  private static double linear(int channel) {
    double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }

  private static double contrast(int a, int b) {
    double la = luminance(a);
    double lb = luminance(b);
    return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
  }
}
