package slantlight.report;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import slantlight.board.Joint;
import slantlight.decide.Showing;
import slantlight.scene.BoardRun;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.score.Peak;
import slantlight.score.SurfaceScore;
import slantlight.sheet.Words;
import slantlight.units.Measures;

/** One line of paper for each surface whose sheet is left out. */
final class LeftOutSheets {
  private final Html html;
  private final House house;
  private final Measures reader;

  LeftOutSheets(Html html, House house) {
    this.html = html;
    this.house = house;
    this.reader = Measures.printed(house.units());
  }

  /**
   * The table.
   *
   * @param anchor id for a surface's line; empty for none
   */
  void write(List<SurfaceScore> surfaces, Function<SurfaceScore, String> anchor) {
    html.leaf("h3", "The other surfaces");
    html.open("table", "class", "lines").open("thead").open("tr");
    for (String name : List.of("Surface", "Boards run", "Joints", "Most shows", "Light")) {
      html.leaf("th", name, "scope", "col");
    }
    for (int level = 3; level <= 5; level++) {
      html.leaf("th", "Level " + level, "scope", "col", "class", "n");
    }
    html.close().close().open("tbody");
    for (SurfaceScore s : surfaces) {
      row(s, anchor.apply(s));
    }
    html.close().close();
  }

  private void row(SurfaceScore s, String anchor) {
    Surface surface = house.surface(s.surfaceId());
    if (anchor.isEmpty()) {
      html.open("tr", "data-room", surface.roomId());
    } else {
      html.open("tr", "id", anchor);
    }
    html.leaf("th", surface.label(), "scope", "row", "dir", "auto");
    html.leaf(
        "td", s.layout().run() == BoardRun.ACROSS_FRAMING ? "across framing" : "along framing");
    double length = s.layout().joints().stream().mapToDouble(Joint::length).sum();
    html.leaf(
        "td", s.joints().isEmpty() ? "none" : s.joints().size() + ", " + reader.total(length));
    html.leaf("td", mostShown(s));
    html.leaf("td", Showing.worst(s).map(Peak::source).map(x -> x.label()).orElse("-"));
    for (int level = 3; level <= 5; level++) {
      html.leaf("td", Words.times(Showing.at(s, level)), "class", "n");
    }
    html.close();
  }

  private static String mostShown(SurfaceScore s) {
    Optional<Peak> worst = Showing.worst(s);
    return Showing.worstJoint(s)
        .filter(j -> j.peak().equals(worst))
        .map(Answer::jointName)
        .orElse(worst.isPresent() ? "a fastener spot" : "nothing");
  }
}
