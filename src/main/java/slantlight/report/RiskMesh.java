package slantlight.report;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;
import slantlight.board.Joint;
import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.score.Band;
import slantlight.score.JointScore;
import slantlight.sheet.Ink;

/** Triangles of a surface or a joint with the showing at level 4 as colour. */
final class RiskMesh {
  private static final double CELL = 0.25;
  private static final double REACH = 0.15;
  private static final double STRIP = 0.05;
  private static final double LIFT = 0.002;
  private static final int PLASTER = 0xece7dc;
  private static final GeometryFactory SHAPES = new GeometryFactory();

  private final List<Vec2> points = new ArrayList<>();
  private final List<Integer> colours = new ArrayList<>();
  private final List<Integer> triangles = new ArrayList<>();

  private RiskMesh() {}

  /** Plane coordinates of the vertices, m. */
  List<Vec2> points() {
    return points;
  }

  /** 0xRRGGBB, sRGB, one a vertex. */
  List<Integer> colours() {
    return colours;
  }

  /** Vertex numbers, three a triangle, counter-clockwise seen from inside the room. */
  List<Integer> triangles() {
    return triangles;
  }

  /** Height of a joint's strip over its surface, m. */
  static double lift() {
    return LIFT;
  }

  /** A face in cells of a quarter metre; empty if none of it is left. */
  static RiskMesh of(Face face, List<JointScore> joints) {
    RiskMesh mesh = new RiskMesh();
    Geometry shape = polygon(face);
    double[] box = {
      shape.getEnvelopeInternal().getMinX(),
      shape.getEnvelopeInternal().getMinY(),
      shape.getEnvelopeInternal().getMaxX(),
      shape.getEnvelopeInternal().getMaxY()
    };
    int nu = (int) Math.max(1, Math.ceil((box[2] - box[0]) / CELL));
    int nv = (int) Math.max(1, Math.ceil((box[3] - box[1]) / CELL));
    double du = (box[2] - box[0]) / nu;
    double dv = (box[3] - box[1]) / nv;
    for (int i = 0; i < nu; i++) {
      for (int j = 0; j < nv; j++) {
        List<Vec2> cell =
            List.of(
                new Vec2(box[0] + i * du, box[1] + j * dv),
                new Vec2(box[0] + (i + 1) * du, box[1] + j * dv),
                new Vec2(box[0] + (i + 1) * du, box[1] + (j + 1) * dv),
                new Vec2(box[0] + i * du, box[1] + (j + 1) * dv));
        mesh.clip(ring(cell), shape, joints);
      }
    }
    return mesh;
  }

  /** A joint as a strip, coloured along its profile. */
  static RiskMesh of(JointScore score) {
    RiskMesh mesh = new RiskMesh();
    Joint j = score.joint();
    if (j.length() == 0) {
      return mesh;
    }
    Vec2 along = j.to().minus(j.from()).unit();
    Vec2 side = new Vec2(-along.y(), along.x()).times(STRIP);
    int steps = Math.max(1, score.profile().size() - 1);
    for (int i = 0; i <= steps; i++) {
      double t = (double) i / steps;
      Vec2 p = j.from().lerp(j.to(), t);
      int colour = colour(showing(score, t));
      mesh.add(p.minus(side), colour);
      mesh.add(p.plus(side), colour);
      if (i > 0) {
        int k = 2 * i;
        mesh.triangle(k - 2, k, k + 1);
        mesh.triangle(k - 2, k + 1, k - 1);
      }
    }
    return mesh;
  }

  private void clip(Polygon cell, Geometry shape, List<JointScore> joints) {
    Geometry part = shape.contains(cell) ? cell : shape.intersection(cell);
    for (int k = 0; k < part.getNumGeometries(); k++) {
      if (part.getGeometryN(k) instanceof Polygon p && p.getArea() > 1e-8) {
        Geometry three = PolygonTriangulator.triangulate(p);
        for (int t = 0; t < three.getNumGeometries(); t++) {
          triangle((Polygon) three.getGeometryN(t), joints);
        }
      }
    }
  }

  private void triangle(Polygon p, List<JointScore> joints) {
    Coordinate[] c = p.getExteriorRing().getCoordinates();
    List<Vec2> corners =
        List.of(new Vec2(c[0].x, c[0].y), new Vec2(c[1].x, c[1].y), new Vec2(c[2].x, c[2].y));
    double area = Face.signedArea(corners);
    if (Math.abs(area) < 1e-9) {
      return;
    }
    int first = points.size();
    for (Vec2 corner : corners) {
      add(corner, blended(corner, joints));
    }
    if (area > 0) {
      triangle(first, first + 1, first + 2);
    } else {
      triangle(first, first + 2, first + 1);
    }
  }

  private void triangle(int a, int b, int c) {
    triangles.add(a);
    triangles.add(b);
    triangles.add(c);
  }

  private void add(Vec2 p, int colour) {
    points.add(p);
    colours.add(colour);
  }

  /** Plaster, taking the colour of a joint within about its reach. */
  private static int blended(Vec2 p, List<JointScore> joints) {
    double weight = 0;
    double most = 0;
    for (JointScore j : joints) {
      double t = place(j.joint(), p);
      double d = p.distance(j.joint().from().lerp(j.joint().to(), t));
      double w = Math.exp(-d * d / (2 * REACH * REACH));
      double showing = showing(j, t);
      if (showing * w > most) {
        most = showing * w;
        weight = w;
      }
    }
    return most == 0 ? PLASTER : mix(PLASTER, colour(most / weight), weight);
  }

  private static double place(Joint j, Vec2 p) {
    Vec2 d = j.to().minus(j.from());
    double length = d.dot(d);
    return length == 0 ? 0 : Math.max(0, Math.min(1, p.minus(j.from()).dot(d) / length));
  }

  private static double showing(JointScore j, double t) {
    List<Double> profile = j.profile();
    if (profile.isEmpty()) {
      return j.atLevel(4).peakShowing();
    }
    double x = t * (profile.size() - 1);
    int i = (int) Math.min(profile.size() - 1, Math.floor(x));
    int k = Math.min(profile.size() - 1, i + 1);
    return profile.get(i) + (profile.get(k) - profile.get(i)) * (x - i);
  }

  private static int colour(double showing) {
    return Ink.of(Band.of(showing)).onLight();
  }

  private static int mix(int a, int b, double t) {
    int out = 0;
    for (int shift = 16; shift >= 0; shift -= 8) {
      int ca = a >> shift & 255;
      int cb = b >> shift & 255;
      out |= (int) Math.round(ca + (cb - ca) * t) << shift;
    }
    return out;
  }

  private static Geometry polygon(Face face) {
    LinearRing[] holes =
        face.holes().stream().map(h -> ring(h).getExteriorRing()).toArray(LinearRing[]::new);
    Geometry shape = SHAPES.createPolygon(ring(face.outer()).getExteriorRing(), holes);
    return shape.isValid() ? shape : shape.buffer(0);
  }

  private static Polygon ring(List<Vec2> ring) {
    Coordinate[] c = new Coordinate[ring.size() + 1];
    for (int i = 0; i < ring.size(); i++) {
      c[i] = new Coordinate(ring.get(i).x(), ring.get(i).y());
    }
    c[ring.size()] = c[0];
    return SHAPES.createPolygon(c);
  }
}
