package slantlight.view;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.scene.Framing;

/** Outlines of the framing members behind a surface, for drawing. */
final class Members {
  /** Face of a stud or joist, 1 1/2 in, m. */
  private static final double FACE = 0.0381;

  private Members() {}

  /** Each member clipped to the face, plane coordinates. */
  static List<List<Vec2>> of(Face face, Framing framing) {
    Vec2 along = new Vec2(Math.cos(framing.angle()), Math.sin(framing.angle()));
    Vec2 across = new Vec2(-along.y(), along.x());
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double reach = 0;
    for (Vec2 p : face.outer()) {
      low = Math.min(low, p.dot(across));
      high = Math.max(high, p.dot(across));
      reach = Math.max(reach, p.length());
    }
    Geometry region = Outlines.of(face);
    List<List<Vec2>> out = new ArrayList<>();
    int first = (int) Math.ceil((low - framing.offset()) / framing.spacing());
    int last = (int) Math.floor((high - framing.offset()) / framing.spacing());
    for (int i = first; i <= last; i++) {
      Vec2 centre = across.times(framing.offset() + i * framing.spacing());
      Vec2 half = across.times(FACE / 2);
      Vec2 far = along.times(2 * reach);
      Geometry bar =
          Outlines.polygon(
              List.of(
                  centre.minus(far).minus(half),
                  centre.plus(far).minus(half),
                  centre.plus(far).plus(half),
                  centre.minus(far).plus(half)));
      for (Polygon p : Outlines.polygons(Outlines.common(region, bar))) {
        out.add(Outlines.ring(p.getExteriorRing()));
      }
    }
    return out;
  }
}
