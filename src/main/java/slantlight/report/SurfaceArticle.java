package slantlight.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slantlight.decide.Showing;
import slantlight.decide.Verdict;
import slantlight.scene.Eye;
import slantlight.scene.House;
import slantlight.scene.Room;
import slantlight.scene.Surface;
import slantlight.score.Band;
import slantlight.score.JointScore;
import slantlight.score.LevelScore;
import slantlight.score.Peak;
import slantlight.score.Span;
import slantlight.score.SurfaceScore;
import slantlight.sheet.CalendarSheet;
import slantlight.sheet.Drawing;
import slantlight.sheet.SectionSheet;
import slantlight.sheet.SurfaceSheet;
import slantlight.sheet.SvgText;
import slantlight.sheet.Words;
import slantlight.units.Measures;

/** One surface of the report: its sheet, when it shows, and why. */
final class SurfaceArticle {
  /** Width of a calendar on paper, as in paper.css. */
  private static final double PAPER_CALENDAR_MM = 110;

  private final Html html;
  private final ReportData data;
  private final House house;
  private final Measures reader;
  private final SurfaceScore score;
  private final Surface surface;
  private final Room room;
  private final String id;
  private final boolean paper;

  SurfaceArticle(Html html, ReportData data, SurfaceScore score, String id, boolean paper) {
    this.html = html;
    this.data = data;
    this.house = data.score().house();
    this.reader = Measures.printed(house.units());
    this.score = score;
    this.surface = house.surface(score.surfaceId());
    this.room = house.room(surface.roomId());
    this.id = id;
    this.paper = paper;
  }

  /**
   * Writes it.
   *
   * @param printed false for one that is left out when the page is printed
   */
  void write(boolean printed) {
    html.open(
        "article",
        "class",
        printed ? "surface" : "surface brief",
        "id",
        id,
        "data-room",
        room.id());
    html.open("div", "class", "keep");
    html.leaf("h3", ReportBody.fullName(room, surface), "dir", "auto");
    Optional<Verdict> verdict = data.verdict(score.surfaceId());
    verdict.ifPresent(
        v ->
            html.leaf(
                "p", "Level " + v.level() + ". " + Answer.capital(v.reason()), "class", "say"));
    if (!paper || !score.joints().isEmpty()) {
      figure(SurfaceSheet.of(house, score, id + "-sheet"), "scaled", "");
    }
    html.close();
    SectionSheet.of(house, score, id + "-section").ifPresent(d -> figure(d, "scaled", ""));
    if (Showing.at(score, 4) >= Band.TRACE.from()) {
      calendar();
    }
    html.leaf("h4", "Reasons");
    html.open("ul", "class", "plainlist");
    reasons(verdict).forEach(r -> html.leaf("li", r));
    html.close();
    joints();
    html.close();
  }

  private List<String> reasons(Optional<Verdict> verdict) {
    List<String> out = new ArrayList<>();
    Showing.worst(score).ifPresent(p -> out.add(worst(p)));
    LevelScore four = score.atLevel(4);
    List<Band> bands = List.of(Band.values());
    if (Showing.at(score, 4) >= Band.TRACE.from()) {
      out.add(
          String.format(
              Locale.ROOT,
              "At level 4 some joint can be noticed in %,.0f hours of the year if every day were"
                  + " clear, about %,.0f hours in the weather to expect; plainly in %,.0f and %,.0f.",
              four.clearHours().get(bands.indexOf(Band.TRACE)),
              four.expectedHours().get(bands.indexOf(Band.TRACE)),
              four.clearHours().get(bands.indexOf(Band.PLAIN)),
              four.expectedHours().get(bands.indexOf(Band.PLAIN))));
    }
    Showing.worstJoint(score)
        .ifPresent(
            j -> {
              Span span = Span.of(j.atLevel(4).peakShowing(), j.joint().kind(), 4);
              out.add(
                  "With crews, eyes and light as they differ, "
                      + Answer.jointName(j)
                      + " is likely to show between "
                      + Words.times(span.low())
                      + " and "
                      + Words.times(span.high())
                      + " at level 4.");
            });
    out.add(
        "Showing by level: "
            + Words.times(Showing.at(score, 3))
            + " at level 3, "
            + Words.times(Showing.at(score, 4))
            + " at level 4, "
            + Words.times(Showing.at(score, 5))
            + " at level 5; this room accepts "
            + Words.times(room.attention().limit())
            + ".");
    verdict.ifPresent(
        v -> {
          out.add(
              "By showing level "
                  + v.byShowing()
                  + "; by the standards level "
                  + v.byStandard()
                  + " ("
                  + v.standardReason()
                  + "). The stricter stands.");
          v.notes().forEach(n -> out.add(Answer.capital(n) + (n.endsWith(".") ? "" : ".")));
        });
    out.add(score.layout().reason());
    return out;
  }

  private String worst(Peak p) {
    String eye =
        house.eyes().stream()
            .filter(e -> e.id().equals(p.eyeId()))
            .findFirst()
            .map(Eye::label)
            .orElse(p.eyeId());
    String shadow =
        Double.isFinite(p.shadowLength())
            ? " The ridge throws a shadow of " + reader.gap(p.shadowLength()) + "."
            : "";
    return String.format(
            Locale.ROOT,
            "Worst on %s, seen %s from %s: %.0f %% of the raking light is %s, at %s to the"
                + " board; the two flanks of the ridge then differ by %.1f %% in brightness, on"
                + " %,.0f lx.",
            Words.when(p),
            eye,
            reader.distance(p.eyeDistance()),
            100 * p.sourceShare(),
            p.source().label(),
            Words.deg(p),
            200 * p.contrast(),
            p.illuminance())
        + shadow;
  }

  private void calendar() {
    Drawing drawing =
        CalendarSheet.of(
            score.calendar(), house.site(), data.score().year(), id + "-calendar", surface.label());
    if (paper) {
      figure(drawing, "calendar", "");
      return;
    }
    String values = CalendarValues.of(score.calendar(), data.score().year(), drawing);
    figure(drawing, "calendar", values);
  }

  private void figure(Drawing drawing, String kind, String calendar) {
    if (calendar.isEmpty()) {
      html.open("figure", "class", kind);
    } else {
      html.open("figure", "class", kind, "data-calendar", calendar);
    }
    html.open(
        "div", "class", "sheet", "tabindex", "0", "role", "region", "aria-label", drawing.title());
    String svg = SvgText.element(drawing);
    html.markup(paper && kind.equals("calendar") ? small(svg, drawing) : svg).close();
    html.leaf("figcaption", drawing.title() + ".");
    if (!calendar.isEmpty()) {
      html.leaf("p", "", "class", "readout", "role", "status");
    }
    html.close();
  }

  /** A drawing that need not be to scale, at a height that goes with the width in the style. */
  private static String small(String svg, Drawing drawing) {
    double height = PAPER_CALENDAR_MM * drawing.height() / drawing.width();
    return svg.replaceFirst(
        "height=\"[0-9.]+mm\"", String.format(Locale.ROOT, "height=\"%.1fmm\"", height));
  }

  private void joints() {
    List<JointScore> sorted = new ArrayList<>(score.joints());
    sorted.sort((a, b) -> Double.compare(b.atLevel(4).peakShowing(), a.atLevel(4).peakShowing()));
    if (paper) {
      sorted.removeIf(j -> Band.of(j.atLevel(4).peakShowing()) == Band.QUIET);
    }
    if (sorted.isEmpty()) {
      return;
    }
    String heading =
        paper ? "Joints that can be noticed" : "All " + sorted.size() + " joints in figures";
    html.open("details").leaf("summary", heading);
    html.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", heading);
    html.open("table").open("thead").open("tr");
    for (String name : List.of("Joint", "Kind")) {
      html.leaf("th", name, "scope", "col");
    }
    for (String name : List.of("Length", "Level 3", "Level 4", "Level 5")) {
      html.leaf("th", name, "scope", "col", "class", "n");
    }
    html.leaf("th", "Worst moment", "scope", "col").leaf("th", "Light", "scope", "col");
    html.close().close().open("tbody");
    for (JointScore j : sorted) {
      html.open("tr").leaf("th", Words.shortId(j.joint().id()), "scope", "row");
      html.leaf("td", Words.word(j.joint().kind()));
      html.leaf("td", reader.length(j.joint().length()), "class", "n");
      for (int level = 3; level <= 5; level++) {
        html.leaf("td", Words.times(j.atLevel(level).peakShowing()), "class", "n");
      }
      html.leaf("td", ReportBody.worstText(j.peak()));
      html.leaf("td", j.peak().map(p -> p.source().label()).orElse("")).close();
    }
    html.close().close().close().close();
  }
}
