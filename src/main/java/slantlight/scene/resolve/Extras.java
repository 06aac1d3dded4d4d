package slantlight.scene.resolve;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Polygon;
import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.SurfaceKind;
import slantlight.scene.file.FinishesFile;
import slantlight.scene.file.RoomFile;
import slantlight.scene.file.RoomFile.BoxFile;
import slantlight.scene.file.RoomFile.SurfaceFile;
import slantlight.scene.file.Values;

/** Puts free polygons and boxes into a room. */
final class Extras {
  private static final List<String> SIDES =
      List.of("bottom", "top", "south", "east", "north", "west");

  private final Scope scope;
  private final Shell shell;
  private final FinishesFile sceneFinishes;
  private final FinishesFile roomFinishes;
  private final Set<String> ids = new HashSet<>();

  Extras(Scope scope, FinishesFile sceneFinishes, Shell shell) {
    this.scope = scope;
    this.shell = shell;
    this.sceneFinishes = sceneFinishes;
    RoomFile file = shell.file();
    this.roomFinishes = file.finishes() == null ? FinishesFile.NONE : file.finishes();
    shell.drafts().forEach(d -> ids.add(d.id));
  }

  void add() {
    RoomFile file = shell.file();
    for (SurfaceFile s : file.surfaces() == null ? List.<SurfaceFile>of() : file.surfaces()) {
      surface(s);
    }
    for (BoxFile b : file.boxes() == null ? List.<BoxFile>of() : file.boxes()) {
      box(b);
    }
  }

  private boolean fresh(Object record, Values.Id id) {
    if (ids.add(shell.id() + "/" + id.text())) {
      return true;
    }
    scope.fault(record, "id", "the id \"" + id.text() + "\" is used twice", "give another");
    return false;
  }

  private void surface(SurfaceFile s) {
    if (!fresh(s, s.id())) {
      return;
    }
    Optional<Face> face = Free.face(scope, s);
    if (face.isEmpty()) {
      return;
    }
    for (Values.Point p : s.points()) {
      if (!within(p.at(0))) {
        scope.fault(
            p, "this corner lies outside " + shell.id(), "keep free polygons inside their room");
        return;
      }
    }
    Finish finish =
        Finish.of(
            scope, SurfaceKind.OTHER, s.finish(), roomFinishes.other(), sceneFinishes.other());
    String label = s.label() == null ? shell.label() + " " + plain(s.id()) : s.label();
    Draft draft = draft(s.id().text(), label, face.get(), finish);
    new Marks(scope, Marks.IN_SPACE).add(draft, s.covered(), s.joints());
    shell.others().add(draft);
  }

  private static String plain(Values.Id id) {
    return id.text().replace('-', ' ');
  }

  private Draft draft(String part, String label, Face face, Finish finish) {
    return new Draft(shell.id() + "/" + part, label, shell.id(), SurfaceKind.OTHER, face, finish);
  }

  /** True when the point lies in the room or within 5 mm of it. */
  private boolean within(Vec3 p) {
    Vec2 flat = new Vec2(p.x(), p.y());
    if (!Marks.onto(Plan.outer(shell.region()), flat) || p.z() < shell.floor() - 0.005) {
      return false;
    }
    double top =
        shell.roofs().stream()
            .filter(r -> Marks.onto(Plan.outer(r.plan()), flat))
            .mapToDouble(r -> r.z(flat))
            .max()
            .orElse(Double.POSITIVE_INFINITY);
    return p.z() <= top + 0.005;
  }

  private void box(BoxFile b) {
    if (!fresh(b, b.id())) {
      return;
    }
    if (b.from().z().isEmpty() || b.to().z().isEmpty()) {
      scope.fault(b, "the corners of a box need heights", "give from and to as [x, y, z]");
      return;
    }
    Vec3 low = b.from().at(0);
    Vec3 high = b.to().at(0);
    if (high.x() - low.x() < Plan.SAME
        || high.y() - low.y() < Plan.SAME
        || high.z() - low.z() < Plan.SAME) {
      scope.fault(b, "to", "the box has no volume", "let to exceed from by 1 mm or more each way");
      return;
    }
    Polygon plan = Plan.polygon(Plan.rectangle(low.x(), low.y(), high.x(), high.y()));
    boolean inside = Plan.difference(plan, shell.region()).getArea() < 1e-3;
    for (Vec2 p : Plan.outer(plan)) {
      inside &= within(new Vec3(p.x(), p.y(), low.z()));
      inside &= within(new Vec3(p.x(), p.y(), high.z()));
    }
    if (!inside) {
      scope.fault(b, "the box reaches out of " + shell.id(), "keep it inside the room");
      return;
    }
    shell.solids().add(new Shell.Solid(plan, low.z(), high.z()));
    Finish finish =
        Finish.of(
            scope,
            SurfaceKind.OTHER,
            b.finish(),
            roomFinishes.other(),
            sceneFinishes.other(),
            Openings.UNBOARDED);
    List<Face> faces = Free.box(low, high);
    String label = b.label() == null ? shell.label() + " " + plain(b.id()) : b.label();
    for (int i = 0; i < faces.size(); i++) {
      if (!against(b, faces.get(i))) {
        String side = SIDES.get(i);
        shell
            .others()
            .add(draft(b.id().text() + "-" + side, label + ", " + side, faces.get(i), finish));
      }
    }
  }

  /**
   * Where a side of a box lies against the room, that part of the room's surface is gone: it is cut
   * out, and the side is left away, so that the room stays one closed surface.
   */
  private boolean against(BoxFile b, Face side) {
    boolean lies = false;
    for (Draft d : shell.drafts()) {
      boolean shellPart = d.kind != SurfaceKind.OTHER;
      boolean faces = side.frame().n().dot(d.frame().n()) < -1 + 1e-9;
      if (!shellPart || !faces || Math.abs(d.frame().height(side.frame().origin())) > Plan.SAME) {
        continue;
      }
      List<Vec2> ring =
          Plan.counterClockwise(side.corners().stream().map(c -> d.frame().toPlane(c)).toList());
      for (List<Vec2> hole : d.holes) {
        if (Plan.intersection(Plan.polygon(ring), Plan.polygon(hole)).getArea() > 1e-5) {
          scope.fault(
              b, "the box stands in an opening or another box of " + d.label, "move one of them");
          return true;
        }
      }
      for (Polygon part :
          Plan.polygons(Plan.intersection(Plan.polygon(ring), Plan.polygon(d.outer())))) {
        d.holes.add(Plan.outer(part));
        lies = true;
      }
    }
    return lies;
  }
}
