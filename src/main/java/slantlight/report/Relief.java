package slantlight.report;

import java.util.ArrayList;
import java.util.List;
import slantlight.board.Joint;
import slantlight.geom.Vec2;
import slantlight.sight.JointRidge;
import slantlight.sight.RaisedCosine;
import slantlight.sight.RidgeKind;
import slantlight.sight.RidgeTable;

/** The relief that the joints of a surface leave at a finish level, as slopes in its plane. */
final class Relief {
  private final List<Line> lines = new ArrayList<>();

  private record Line(Vec2 from, Vec2 along, Vec2 across, double length, JointRidge ridge) {}

  /**
   * Relief of joints at a level.
   *
   * @param level 0 to 5
   */
  Relief(List<Joint> joints, int level) {
    for (Joint j : joints) {
      if (j.length() > 0) {
        Vec2 along = j.to().minus(j.from()).unit();
        JointRidge ridge =
            RidgeTable.standard()
                .ridge(RidgeKind.of(j.kind()), level)
                .measured(j.crownHeight(), j.crownWidth());
        lines.add(new Line(j.from(), along, new Vec2(-along.y(), along.x()), j.length(), ridge));
      }
    }
  }

  /** Slope (dz/du, dz/dv) at a plane point: crowns, and the feather's edge at both their rims. */
  Vec2 slope(Vec2 p) {
    double u = 0;
    double v = 0;
    for (Line l : lines) {
      Vec2 d = p.minus(l.from());
      double x = d.dot(l.across());
      RaisedCosine crown = l.ridge().crown();
      if (Math.abs(x) > crown.width() / 2) {
        continue;
      }
      double t = d.dot(l.along());
      if (t < 0 || t > l.length()) {
        continue;
      }
      RaisedCosine edge = l.ridge().edge();
      double rim = (crown.width() - edge.width()) / 2;
      double slope = crown.slopeAt(x) + edge.slopeAt(x - rim) + edge.slopeAt(x + rim);
      u += slope * l.across().x();
      v += slope * l.across().y();
    }
    return new Vec2(u, v);
  }
}
