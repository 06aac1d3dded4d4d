package slantlight.view;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import slantlight.board.Joint;
import slantlight.geom.Vec2;
import slantlight.scene.Surface;
import slantlight.score.JointScore;
import slantlight.score.SurfaceScore;
import slantlight.sight.JointRidge;
import slantlight.sight.RaisedCosine;
import slantlight.sight.RidgeKind;
import slantlight.sight.RidgeTable;

/**
 * The ridges of one surface's joints at one finish level as strips of small facets with their
 * slopes: the crown over the finished width and the feather's edge at both its rims. Fastener spots
 * are the same profile turned about their middle.
 */
final class RidgeStrips {
  /** Facets across the crown. */
  private static final int CROWN = 8;

  /** Facets across an edge; a multiple of four has corners at its steepest places. */
  private static final int EDGE = 8;

  /** Longest facet along the joint, m. */
  private static final double PIECE = 0.4;

  /** Facets round a spot. */
  private static final int ROUND = 8;

  private final List<Vec2> points = new ArrayList<>();
  private final List<Vec2> slopes = new ArrayList<>();
  private final List<Integer> triangles = new ArrayList<>();
  private final List<Integer> spotTriangles = new ArrayList<>();
  private final List<Vec2> sections = new ArrayList<>();
  private final List<Integer> sectionOfPoint = new ArrayList<>();

  RidgeStrips(Surface surface, SurfaceScore score, int level) {
    Geometry region = Outlines.of(surface.face());
    for (List<Vec2> covered : surface.covered()) {
      region = Outlines.without(region, Outlines.polygon(covered));
    }
    PreparedGeometry prepared = PreparedGeometryFactory.prepare(region);
    for (JointScore j : score.joints()) {
      strip(j.joint(), ridge(j.joint(), level), prepared);
    }
    JointRidge spot = RidgeTable.standard().ridge(RidgeKind.SPOT, level);
    for (Vec2 middle : score.layout().fasteners()) {
      spot(middle, spot, prepared);
    }
  }

  /** The ridge of a joint at a level, with its crown as measured where it was. */
  static JointRidge ridge(Joint joint, int level) {
    return RidgeTable.standard()
        .ridge(RidgeKind.of(joint.kind()), level)
        .measured(joint.crownHeight(), joint.crownWidth());
  }

  private void strip(Joint joint, JointRidge ridge, PreparedGeometry region) {
    double length = joint.length();
    Vec2 along = joint.to().minus(joint.from()).unit();
    Vec2 across = new Vec2(-along.y(), along.x());
    double[] xs = stations(ridge);
    int pieces = (int) Math.max(1, Math.ceil(length / PIECE));
    int first = points.size();
    boolean[] inside = new boolean[(pieces + 1) * xs.length];
    for (int i = 0; i <= pieces; i++) {
      Vec2 middle = joint.from().plus(along.times(length * i / pieces));
      for (double x : xs) {
        Vec2 p = middle.plus(across.times(x));
        inside[points.size() - first] = region.covers(Outlines.point(p));
        points.add(p);
        sectionOfPoint.add(sections.size());
        slopes.add(across.times(slope(ridge, x)));
      }
      sections.add(middle);
    }
    for (int i = 0; i < pieces; i++) {
      for (int k = 0; k + 1 < xs.length; k++) {
        int a = i * xs.length + k;
        int b = a + xs.length;
        if (inside[a] && inside[a + 1] && inside[b] && inside[b + 1]) {
          for (int q : new int[] {a, b, a + 1, a + 1, b, b + 1}) {
            triangles.add(first + q);
          }
        }
      }
    }
  }

  private void spot(Vec2 middle, JointRidge ridge, PreparedGeometry region) {
    int first = points.size();
    int section = sections.size();
    sections.add(middle);
    double[] radii = radii(ridge);
    List<Boolean> inside = new ArrayList<>();
    for (int i = 0; i < radii.length; i++) {
      for (int k = 0; k < ROUND; k++) {
        double a = 2 * Math.PI * k / ROUND;
        Vec2 out = new Vec2(Math.cos(a), Math.sin(a));
        Vec2 p = middle.plus(out.times(radii[i]));
        inside.add(region.covers(Outlines.point(p)));
        points.add(p);
        sectionOfPoint.add(section);
        slopes.add(out.times(slope(ridge, radii[i])));
      }
    }
    for (int i = 0; i + 1 < radii.length; i++) {
      for (int k = 0; k < ROUND; k++) {
        int a = i * ROUND + k;
        int b = i * ROUND + (k + 1) % ROUND;
        int c = a + ROUND;
        int d = b + ROUND;
        if (inside.get(a) && inside.get(b) && inside.get(c) && inside.get(d)) {
          // The innermost ring is one point.
          int[] corners = i == 0 ? new int[] {a, c, d} : new int[] {a, c, b, b, c, d};
          for (int q : corners) {
            spotTriangles.add(first + q);
          }
        }
      }
    }
  }

  /** Middle, and where the edge begins, is steepest, turns, is steepest again and ends. */
  private static double[] radii(JointRidge ridge) {
    double outer = ridge.crown().width() / 2;
    double edge = Math.min(ridge.edge().width(), outer);
    return new double[] {
      0, outer - edge, outer - 0.75 * edge, outer - edge / 2, outer - edge / 4, outer
    };
  }

  private static double[] stations(JointRidge ridge) {
    TreeSet<Double> xs = new TreeSet<>();
    double half = ridge.crown().width() / 2;
    double edge = ridge.edge().width();
    for (int i = 0; i <= CROWN; i++) {
      xs.add(-half + 2 * half * i / CROWN);
    }
    for (int i = 0; i <= EDGE; i++) {
      xs.add(-half + edge * i / EDGE);
      xs.add(half - edge * i / EDGE);
    }
    return xs.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Slope dz/dx across the joint: crown, and the edge standing inside each rim. */
  static double slope(JointRidge ridge, double x) {
    RaisedCosine edge = ridge.edge();
    double rim = (ridge.crown().width() - edge.width()) / 2;
    return ridge.crown().slopeAt(x) + edge.slopeAt(x - rim) + edge.slopeAt(x + rim);
  }

  /** Plane coordinates of the facets' corners. */
  List<Vec2> points() {
    return points;
  }

  /** Slope of each corner, u and v components. */
  List<Vec2> slopes() {
    return slopes;
  }

  /** Middles of the cross-sections; the light is taken as the same over each. */
  List<Vec2> sections() {
    return sections;
  }

  /** The section each corner is of. */
  List<Integer> sectionOfPoint() {
    return sectionOfPoint;
  }

  /** Facets of the joints. */
  List<Integer> triangles() {
    return triangles;
  }

  /** Facets of the fastener spots. */
  List<Integer> spotTriangles() {
    return spotTriangles;
  }
}
