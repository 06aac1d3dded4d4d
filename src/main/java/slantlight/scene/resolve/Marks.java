package slantlight.scene.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.GivenJoint;
import slantlight.scene.file.RoomFile.CoverFile;
import slantlight.scene.file.RoomFile.JointFile;
import slantlight.scene.file.Values;
import slantlight.units.Length;

/** Puts covered regions and given joints onto surfaces. */
final class Marks {
  /** How the user's points lie on a surface. */
  @FunctionalInterface
  interface Reading {
    /** The point in the plane of the frame. */
    Vec2 point(Frame frame, Values.Point p);
  }

  /** [along, up] from the wall's lower left corner. */
  static final Reading ON_WALL = (frame, p) -> p.flat();

  /** [x, y] in plan, lifted straight up onto the surface. */
  static final Reading IN_PLAN = (frame, p) -> lift(frame, p.flat());

  /** [x, y, z] on the surface. */
  static final Reading IN_SPACE =
      (frame, p) -> p.z().isPresent() ? frame.toPlane(p.at(0)) : lift(frame, p.flat());

  private final Scope scope;
  private final Reading reading;

  Marks(Scope scope, Reading reading) {
    this.scope = scope;
    this.reading = reading;
  }

  /** The plane point above or below a point of the plan; the plane must not stand upright. */
  static Vec2 lift(Frame frame, Vec2 p) {
    Vec3 n = frame.n();
    Vec3 o = frame.origin();
    if (Math.abs(n.z()) < 1e-6) {
      return frame.toPlane(new Vec3(p.x(), p.y(), o.z()));
    }
    double z = o.z() - (n.x() * (p.x() - o.x()) + n.y() * (p.y() - o.y())) / n.z();
    return frame.toPlane(new Vec3(p.x(), p.y(), z));
  }

  /** Adds each mark to the one draft that it lies on. */
  void spread(List<Draft> drafts, List<CoverFile> covers, List<JointFile> joints) {
    for (CoverFile c : orNone(covers)) {
      Optional<Draft> on = drafts.stream().filter(d -> covers(d, c)).findFirst();
      add(on.orElse(drafts.get(0)), List.of(c), null);
    }
    for (JointFile j : orNone(joints)) {
      Optional<Draft> on = drafts.stream().filter(d -> holds(d, middle(d, j))).findFirst();
      add(on.orElse(drafts.get(0)), null, List.of(j));
    }
  }

  /** Adds marks to a draft, with faults for those that leave it. */
  void add(Draft draft, List<CoverFile> covers, List<JointFile> joints) {
    for (CoverFile c : orNone(covers)) {
      cover(draft, c);
    }
    for (JointFile j : orNone(joints)) {
      joint(draft, j);
    }
  }

  private void cover(Draft draft, CoverFile c) {
    List<Vec2> ring = ring(draft, c);
    Optional<String> fault = Plan.fault(ring);
    if (fault.isPresent()) {
      scope.fault(c, "outline", "the covered region " + fault.get(), "list its corners in order");
      return;
    }
    if (Plan.difference(Plan.polygon(ring), Plan.polygon(draft.outer())).getArea() > 1e-3) {
      scope.fault(
          c,
          "outline",
          "the covered region reaches beyond " + draft.label,
          "keep it on the surface");
      return;
    }
    draft.covered.add(Plan.counterClockwise(ring));
  }

  private List<Vec2> ring(Draft draft, CoverFile c) {
    return c.outline().stream().map(p -> reading.point(draft.frame(), p)).toList();
  }

  private boolean covers(Draft d, CoverFile c) {
    double u = 0;
    double v = 0;
    List<Vec2> ring = ring(d, c);
    for (Vec2 p : ring) {
      u += p.x() / ring.size();
      v += p.y() / ring.size();
    }
    return holds(d, new Vec2(u, v));
  }

  private static boolean holds(Draft d, Vec2 p) {
    return Face.inside(d.outer(), p);
  }

  private Vec2 middle(Draft d, JointFile j) {
    return reading.point(d.frame(), j.from()).lerp(reading.point(d.frame(), j.to()), 0.5);
  }

  private void joint(Draft draft, JointFile j) {
    Vec2 from = reading.point(draft.frame(), j.from());
    Vec2 to = reading.point(draft.frame(), j.to());
    if (from.distance(to) < 0.01) {
      scope.fault(
          j, "to", "the joint is " + scope.length(from.distance(to)) + " long", "give two ends");
      return;
    }
    for (Vec2 p : List.of(from, to, from.lerp(to, 0.5))) {
      if (!onto(draft.outer(), p)) {
        scope.fault(j, "from", "the joint leaves " + draft.label, "keep both ends on the surface");
        return;
      }
    }
    draft.joints.add(
        new GivenJoint(
            Optional.ofNullable(j.name()),
            j.kind(),
            from,
            to,
            metres(j.crownHeight()),
            metres(j.crownWidth())));
  }

  private static OptionalDouble metres(Length l) {
    return l == null ? OptionalDouble.empty() : OptionalDouble.of(l.metres());
  }

  /** True when the point lies in the ring or within 5 mm of its edge. */
  static boolean onto(List<Vec2> ring, Vec2 p) {
    if (Face.inside(ring, p)) {
      return true;
    }
    for (int i = 0; i < ring.size(); i++) {
      if (Plan.distance(ring.get(i), ring.get((i + 1) % ring.size()), p) < 0.005) {
        return true;
      }
    }
    return false;
  }

  private static <T> List<T> orNone(List<T> list) {
    return list == null ? new ArrayList<>() : list;
  }
}
