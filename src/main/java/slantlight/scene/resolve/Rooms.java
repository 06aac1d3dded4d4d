package slantlight.scene.resolve;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Polygon;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.Opening;
import slantlight.scene.OpeningKind;

/**
 * The rooms that could be raised.
 *
 * @param shells by id, in the order of the file
 * @param ids ids of all rooms of the file, those with faults too
 */
record Rooms(Scope scope, Map<String, Shell> shells, Set<String> ids) {
  /** More than a wall is thick, less than a room is deep, m. */
  private static final double BEYOND_GLASS = 0.4;

  /** The room of that id; empty, with a fault added when no room has the id. */
  Optional<Shell> room(Object record, String id) {
    if (!ids.contains(id)) {
      scope.unknown(
          record, "room", "there is no room \"" + id + "\"", ids.stream().sorted().toList());
    }
    return Optional.ofNullable(shells.get(id));
  }

  /** True when a point is in the free air of a room; adds a fault when it is not. */
  boolean inside(Shell shell, Object record, String key, String thing, Vec3 p) {
    Vec2 flat = new Vec2(p.x(), p.y());
    Optional<Double> top = shell.ceilingAt(flat);
    if (top.isEmpty() || !Shell.holds(shell.region(), flat)) {
      scope.fault(
          record,
          key,
          thing + " stands outside " + shell.id() + " in plan",
          "move it inside the outline");
      return false;
    }
    if (p.z() <= shell.floor() || p.z() >= top.get()) {
      scope.fault(
          record,
          key,
          thing
              + " at "
              + scope.length(p.z())
              + " is not between the floor at "
              + scope.length(shell.floor())
              + " and the ceiling at "
              + scope.length(top.get()),
          "heights count from the drawing's zero; move it between them");
      return false;
    }
    for (Shell.Solid s : shell.solids()) {
      if (p.z() > s.bottom() && p.z() < s.top() && Shell.holds(s.plan(), flat)) {
        scope.fault(record, key, thing + " is inside a solid box", "move it out of the box");
        return false;
      }
    }
    if (Solidity.inside(shell, p)) {
      scope.fault(
          record,
          key,
          thing + " is behind the faces around it, inside a solid",
          "move it out, or list the corners of free polygons counter-clockwise seen from the room");
      return false;
    }
    return true;
  }

  /** Warns of glass that opens into another room, where no daylight is. */
  void tellInnerGlass(List<Opening> openings) {
    for (Opening o : openings) {
      Vec3 beyond = o.face().frame().toWorld(o.face().centroid(), -BEYOND_GLASS);
      Vec2 flat = new Vec2(beyond.x(), beyond.y());
      for (Shell s : shells.values()) {
        boolean level = beyond.z() > s.floor() && beyond.z() < s.ceilingAt(flat).orElse(0.0);
        if (o.kind() != OpeningKind.PASSAGE && level && Shell.holds(s.region(), flat)) {
          scope.warn(
              shells.get(o.roomId()).file(),
              "openings",
              o.id() + " opens into " + s.id() + ", where it finds no daylight",
              "use kind passage for an open way, or a solid door");
        }
      }
    }
  }

  /** Adds a fault for every two rooms that fill the same space. */
  void tellOverlaps() {
    Shell[] all = shells.values().toArray(Shell[]::new);
    for (int i = 0; i < all.length; i++) {
      for (int k = i + 1; k < all.length; k++) {
        double top = Math.min(all[i].floor() + all[i].height(), all[k].floor() + all[k].height());
        double bottom = Math.max(all[i].floor(), all[k].floor());
        if (top - bottom < Plan.SAME) {
          continue;
        }
        Polygon a = all[i].region();
        Polygon b = all[k].region();
        double shared =
            a.getEnvelopeInternal().intersects(b.getEnvelopeInternal())
                ? Plan.intersection(a, b).getArea()
                : 0;
        if (shared > 1e-3) {
          scope.fault(
              all[k].file(),
              "outline",
              all[k].id() + " and " + all[i].id() + " overlap by " + scope.area(shared),
              "rooms are drawn to the inner faces of their walls; move one outline");
        }
      }
    }
  }
}
