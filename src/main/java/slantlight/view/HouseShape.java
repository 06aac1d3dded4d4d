package slantlight.view;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import slantlight.board.Joint;
import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.score.JointScore;
import slantlight.score.SurfaceScore;

/** The geometry that is drawn, cut into triangles once per scene. */
final class HouseShape {
  /** Largest cell of the grid on which light is known, m. */
  private static final double STEP = 0.75;

  /** Largest cell of the surfaces drawn as lit, m: fine enough for a sheen's highlight. */
  private static final double FINE = 0.25;

  /** Radius of the horizon's ring, as a share of the house's. */
  static final double RING = 1.06;

  /** Pieces into which a joint is cut along its length. */
  private static final double PIECE = 0.25;

  private final Map<String, SurfaceGrid> grids = new LinkedHashMap<>();
  private final Map<String, SurfaceGrid> fine = new HashMap<>();
  private final List<Band> bands = new ArrayList<>();
  private final Map<String, RidgeStrips> strips = new HashMap<>();
  private final Map<String, Bounds> bounds = new HashMap<>();
  private final Map<String, List<Vec2>> members = new HashMap<>();
  private final Vec3 low;
  private final Vec3 high;

  /**
   * A joint's band on its surface.
   *
   * @param triangles corners in threes, plane coordinates
   * @param along place of each corner along the joint, 0 to 1
   */
  record Band(Surface surface, JointScore score, List<Vec2> triangles, List<Double> along) {}

  HouseShape(ViewModel model) {
    House house = model.house();
    double[] box = {1e9, 1e9, 1e9, -1e9, -1e9, -1e9};
    for (Surface s : house.surfaces()) {
      grids.put(s.id(), new SurfaceGrid(s.face(), STEP));
      for (Vec3 p : s.face().corners()) {
        double[] at = {p.x(), p.y(), p.z()};
        for (int k = 0; k < 3; k++) {
          box[k] = Math.min(box[k], at[k]);
          box[k + 3] = Math.max(box[k + 3], at[k]);
        }
      }
      Optional<SurfaceScore> score = model.score(s.id());
      if (score.isPresent()) {
        Geometry region = Outlines.of(s.face());
        for (List<Vec2> covered : s.covered()) {
          region = Outlines.without(region, Outlines.polygon(covered));
        }
        for (JointScore j : score.get().joints()) {
          bands.add(band(s, region, j, model.featherWidth().applyAsDouble(j.joint())));
        }
      }
    }
    low = new Vec3(box[0], box[1], box[2]);
    high = new Vec3(box[3], box[4], box[5]);
  }

  private static Band band(Surface s, Geometry region, JointScore score, double width) {
    Joint joint = score.joint();
    List<Vec2> triangles = new ArrayList<>();
    List<Double> along = new ArrayList<>();
    double length = joint.length();
    Vec2 a = joint.from();
    Vec2 d = joint.to().minus(a).times(1 / length);
    Vec2 across = new Vec2(-d.y(), d.x()).times(width / 2);
    int pieces = (int) Math.max(1, Math.ceil(length / PIECE));
    for (int i = 0; i < pieces; i++) {
      Vec2 from = a.plus(d.times(length * i / pieces));
      Vec2 to = a.plus(d.times(length * (i + 1) / pieces));
      Geometry quad =
          Outlines.polygon(
              List.of(from.minus(across), to.minus(across), to.plus(across), from.plus(across)));
      Outlines.triangles(
          Outlines.common(region, quad),
          t -> {
            for (Vec2 p : t) {
              triangles.add(p);
              along.add(Math.max(0, Math.min(1, p.minus(a).dot(d) / length)));
            }
          });
    }
    return new Band(s, score, triangles, along);
  }

  SurfaceGrid grid(Surface s) {
    return grids.get(s.id());
  }

  /** A finer cut of a surface, for shading at its corners. */
  SurfaceGrid fine(Surface s) {
    return fine.computeIfAbsent(s.id(), id -> new SurfaceGrid(s.face(), FINE));
  }

  /** Ridges of a surface at a level, cut once; empty when the surface has no joints. */
  Optional<RidgeStrips> strips(ViewModel model, Surface s, int level) {
    return model
        .score(s.id())
        .filter(score -> !score.joints().isEmpty())
        .map(
            score ->
                strips.computeIfAbsent(
                    s.id() + " " + level, k -> new RidgeStrips(s, score, level)));
  }

  Bounds bounds(Surface s) {
    return bounds.computeIfAbsent(s.id(), id -> Bounds.of(s));
  }

  /** Studs or joists of a surface: corners of triangles in threes, plane coordinates. */
  List<Vec2> members(Surface s) {
    return members.computeIfAbsent(
        s.id(),
        id -> {
          List<Vec2> out = new ArrayList<>();
          s.framing()
              .ifPresent(
                  f ->
                      Members.of(s.face(), f)
                          .forEach(
                              m ->
                                  Outlines.triangles(
                                      Outlines.polygon(m), t -> out.addAll(List.of(t)))));
          return out;
        });
  }

  List<Band> bands() {
    return bands;
  }

  /** Lowest corner of the box round the house. */
  Vec3 low() {
    return low;
  }

  Vec3 high() {
    return high;
  }

  Vec3 middle() {
    return low.plus(high).times(0.5);
  }

  /** The eight corners of the box round the house. */
  List<Vec3> boxCorners() {
    List<Vec3> out = new ArrayList<>();
    for (double x : new double[] {low.x(), high.x()}) {
      for (double y : new double[] {low.y(), high.y()}) {
        out.add(new Vec3(x, y, low.z()));
        out.add(new Vec3(x, y, high.z()));
      }
    }
    return out;
  }

  /** What an outside picture should hold: the house and the ring of the horizon round it. */
  List<Vec3> scope() {
    List<Vec3> out = new ArrayList<>(boxCorners());
    Vec3 foot = new Vec3(middle().x(), middle().y(), low.z());
    for (int i = 0; i < 16; i++) {
      out.add(foot.plus(Vec3.ofAzimuthAltitude(Math.PI / 8 * i, 0).times(RING * radius())));
    }
    return out;
  }

  /** Radius of the ball round the house, m. */
  double radius() {
    return low.distance(high) / 2;
  }

  /** Distance of a plane point from the nearest edge of the outer ring, m. */
  static double edgeDistance(Face face, Vec2 p) {
    double best = Double.POSITIVE_INFINITY;
    List<Vec2> ring = face.outer();
    for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
      best = Math.min(best, distance(p, ring.get(j), ring.get(i)));
    }
    return best;
  }

  /** Distance of a point from a segment. */
  static double distance(Vec2 p, Vec2 a, Vec2 b) {
    Vec2 d = b.minus(a);
    double t = d.dot(d) == 0 ? 0 : Math.max(0, Math.min(1, p.minus(a).dot(d) / d.dot(d)));
    return p.distance(a.lerp(b, t));
  }
}
