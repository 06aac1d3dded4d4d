package slantlight.scene.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;
import slantlight.geom.Vec2;
import slantlight.scene.file.RoomFile;

/**
 * A room under construction, drawing coordinates, m.
 *
 * @param file what the user wrote
 * @param region the floor in plan
 * @param walls its walls, the outer ring's first
 * @param roofs the flat pieces of its ceiling
 * @param ceilings drafts of the ceiling's faces, steps included
 * @param floorDraft the floor
 * @param others free polygons and boxes' faces
 * @param solids plan and heights of the boxes that stand in it
 */
record Shell(
    RoomFile file,
    Polygon region,
    double floor,
    double height,
    List<Wall> walls,
    List<RoofFace> roofs,
    List<Draft> ceilings,
    Draft floorDraft,
    List<Draft> others,
    List<Solid> solids) {
  /** A box that stands in the room. */
  record Solid(Polygon plan, double bottom, double top) {}

  /**
   * A wall from a to b, the room on the left.
   *
   * @param number of the edge in the outline as written, from 1
   * @param names all names by which the file may call it
   */
  record Wall(Vec2 a, Vec2 b, int number, List<String> names, Draft draft) {
    double length() {
      return a.distance(b);
    }

    /** Unit vector into the room. */
    Vec2 inward() {
      Vec2 d = b.minus(a).unit();
      return new Vec2(-d.y(), d.x());
    }
  }

  String id() {
    return file.id().text();
  }

  String label() {
    return file.label() == null ? labelOf(id()) : file.label();
  }

  /** "great-room" as a person would write it: "Great room". */
  static String labelOf(String id) {
    String words = id.replace('-', ' ').replace('_', ' ');
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  Optional<Wall> wall(String name) {
    return walls.stream().filter(w -> w.names().contains(name)).findFirst();
  }

  /** Height of the ceiling over a point of the floor; empty outside the room. */
  Optional<Double> ceilingAt(Vec2 p) {
    return roofs.stream().filter(r -> holds(r.plan(), p)).map(r -> r.z(p)).reduce(Math::min);
  }

  /** True when the polygon holds the point, holes and edges left out. */
  static boolean holds(Polygon polygon, Vec2 p) {
    boolean in = slantlight.geom.Face.inside(Plan.outer(polygon), p);
    for (List<Vec2> hole : Plan.holes(polygon)) {
      in &= !slantlight.geom.Face.inside(hole, p);
    }
    return in;
  }

  /** Every surface of the room. */
  List<Draft> drafts() {
    List<Draft> all = new ArrayList<>();
    all.add(floorDraft);
    walls.forEach(w -> all.add(w.draft()));
    all.addAll(ceilings);
    all.addAll(others);
    return all;
  }
}
