package slantlight.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import slantlight.decide.RegionalScale;
import slantlight.decide.Showing;
import slantlight.decide.Verdict;
import slantlight.report.Cautions;
import slantlight.scene.House;
import slantlight.scene.JointKind;
import slantlight.scene.LevelScale;
import slantlight.scene.Surface;
import slantlight.score.Band;
import slantlight.score.HouseScore;
import slantlight.score.Span;
import slantlight.score.SurfaceScore;
import slantlight.units.Measures;

/** The answer of {@code score} in one screen: levels first, then each surface with its reason. */
final class ScoreText {

  private final HouseScore score;
  private final House house;
  private final Map<String, Verdict> verdicts = new HashMap<>();
  private final int width;

  ScoreText(HouseScore score, List<Verdict> verdicts, int width) {
    this.score = score;
    this.house = score.house();
    this.width = width;
    verdicts.forEach(v -> this.verdicts.put(v.surfaceId(), v));
  }

  void print(PrintWriter out) {
    out.println(house.name());
    if (!house.note().isEmpty()) {
      wrap(out, "", house.note());
    }
    out.println();
    answer(out);
    out.println();
    table(out);
    out.println();
    quantities(out);
    out.println();
    wrap(
        out,
        "",
        String.format(
            Locale.ROOT,
            "Showing is a multiple of what an eye just notices unasked: quiet below 1, trace from 1,"
                + " plain from 2.5, loud from 6. Likely spans come from the spread of ridge heights"
                + " in practice, of eyes and of light. Hours are for level 4: if every day were"
                + " clear, and expected with this site's share of clear sky. Year %d, %d-minute"
                + " steps, %,d points, %,d moments.",
            score.year(),
            score.stepMinutes(),
            score.samples(),
            score.moments()));
    for (String caution : Cautions.ALL) {
      wrap(out, "", caution);
    }
  }

  private void answer(PrintWriter out) {
    Map<Integer, List<String>> byLevel = new TreeMap<>(Comparator.reverseOrder());
    for (SurfaceScore s : byNeed()) {
      byLevel
          .computeIfAbsent(verdicts.get(s.surfaceId()).level(), l -> new ArrayList<>())
          .add(s.surfaceId());
    }
    byLevel.forEach(
        (level, ids) -> wrap(out, named(level) + ": ", String.join(", ", grouped(ids)) + "."));
  }

  /** Labels, the surfaces of a room that all share the level told as one. */
  private List<String> grouped(List<String> ids) {
    List<String> out = new ArrayList<>();
    List<String> rooms = new ArrayList<>();
    for (String id : ids) {
      Surface s = house.surface(id);
      if (rooms.contains(s.roomId())) {
        continue;
      }
      List<String> ofRoom =
          score.surfaces().stream()
              .map(SurfaceScore::surfaceId)
              .filter(o -> house.surface(o).roomId().equals(s.roomId()))
              .toList();
      if (ofRoom.size() > 1 && ids.containsAll(ofRoom)) {
        rooms.add(s.roomId());
        out.add("all of the " + lower(house.room(s.roomId()).label()));
      } else {
        out.add(lower(s.label()));
      }
    }
    return out;
  }

  private static String lower(String label) {
    return label.isEmpty()
        ? label
        : label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1);
  }

  private String named(int level) {
    String name = RegionalScale.name(house.scale(), level);
    return house.scale() == LevelScale.GA_214 ? name : "Level " + level + " (" + name + ")";
  }

  private void table(PrintWriter out) {
    for (SurfaceScore s : byNeed()) {
      Verdict v = verdicts.get(s.surfaceId());
      Surface surface = house.surface(s.surfaceId());
      out.println("Level " + v.level() + "  " + surface.label());
      if (Showing.worst(s).isPresent()) {
        wrap(out, "    ", figures(s));
      }
      wrap(out, "    ", v.reason());
      if (v.byStandard() >= v.byShowing() || v.unsolved()) {
        wrap(out, "    ", v.standardReason());
      }
      for (String note : v.notes()) {
        wrap(out, "    - ", note);
      }
    }
  }

  private static String figures(SurfaceScore s) {
    double four = Showing.at(s, 4);
    JointKind kind =
        Showing.worstJoint(s)
            .filter(j -> j.atLevel(4).peakShowing() >= four)
            .map(j -> j.joint().kind())
            .orElse(JointKind.SPOT);
    Span span = Span.of(four, kind, 4);
    return String.format(
        Locale.ROOT,
        "%s: %s at level 4 (likely %s to %s), %s at level 3, %s at level 5; trace or more for %s"
            + " h/yr if clear, %s h/yr expected",
        Band.of(four).name().toLowerCase(Locale.ROOT),
        figure(four),
        figure(span.low()),
        figure(span.high()),
        figure(Showing.at(s, 3)),
        figure(Showing.at(s, 5)),
        hours(s.atLevel(4).clearHours().get(Band.TRACE.index())),
        hours(s.atLevel(4).expectedHours().get(Band.TRACE.index())));
  }

  /** Hours to two figures: the model carries no more. */
  private static String hours(double h) {
    if (h < 10) {
      return String.format(Locale.ROOT, "%.0f", h);
    }
    double unit = Math.pow(10, Math.floor(Math.log10(h)) - 1);
    return String.format(Locale.ROOT, "%,.0f", Math.round(h / unit) * unit);
  }

  private static String figure(double showing) {
    return String.format(Locale.ROOT, showing < 9.95 ? "%.1f" : "%.0f", showing);
  }

  private void quantities(PrintWriter out) {
    Map<Integer, Double> area = new TreeMap<>(Comparator.reverseOrder());
    double tapered = 0;
    double butt = 0;
    for (SurfaceScore s : score.surfaces()) {
      area.merge(
          verdicts.get(s.surfaceId()).level(),
          house.surface(s.surfaceId()).face().area(),
          Double::sum);
      for (var joint : s.layout().joints()) {
        if (joint.kind() == JointKind.TAPERED) {
          tapered += joint.length();
        } else {
          butt += joint.length();
        }
      }
    }
    List<String> areas = new ArrayList<>();
    area.forEach(
        (level, m2) ->
            areas.add(
                String.format(
                    Locale.ROOT,
                    "level %d %,.0f ft2 (%,.0f m2)",
                    level,
                    m2 / Measures.SQUARE_FOOT,
                    m2)));
    wrap(out, "Area: ", String.join(", ", areas) + ".");
    List<String> stock = new ArrayList<>();
    score.cuttingPlan().order().forEach((kind, count) -> stock.add(count + " of " + kind.name()));
    wrap(out, "Boards: ", String.join(", ", stock) + ".");
    wrap(
        out,
        "Joints: ",
        String.format(
            Locale.ROOT,
            "%,.0f ft (%,.0f m) tapered, %,.0f ft (%,.0f m) butt or cut.",
            tapered / 0.3048,
            tapered,
            butt / 0.3048,
            butt));
  }

  private List<SurfaceScore> byNeed() {
    return score.surfaces().stream()
        .sorted(
            Comparator.comparingInt((SurfaceScore s) -> -verdicts.get(s.surfaceId()).level())
                .thenComparingDouble(s -> -s.atLevel(4).peakShowing())
                .thenComparing(SurfaceScore::surfaceId))
        .toList();
  }

  private void wrap(PrintWriter out, String lead, String text) {
    String indent = lead.isBlank() || lead.endsWith("- ") ? " ".repeat(lead.length()) : "  ";
    List<String> lines = TextTable.wrapped(lead + text, width);
    if (lead.isBlank() && !lead.isEmpty()) {
      lines = TextTable.wrapped(text, width - lead.length());
    }
    for (int i = 0; i < lines.size(); i++) {
      out.println((i == 0 && !lead.isBlank() ? "" : indent) + lines.get(i));
    }
  }
}
