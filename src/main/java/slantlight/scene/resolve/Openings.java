package slantlight.scene.resolve;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.Opening;
import slantlight.scene.OpeningKind;
import slantlight.scene.Paint;
import slantlight.scene.Shade;
import slantlight.scene.Sheen;
import slantlight.scene.SurfaceKind;
import slantlight.scene.file.FinishFile;
import slantlight.scene.file.RoomFile;
import slantlight.scene.file.RoomFile.OpeningFile;
import slantlight.units.Length;

/** Cuts windows, doors, skylights and passages. */
final class Openings {
  /** Walls between rooms thicker than this have no passage through them, m. */
  private static final double THICKEST = 1.0;

  /** A door with no more glass than this is a solid leaf. */
  private static final double SOLID = 0.999;

  private final Scope scope;
  private final Map<String, Shell> shells;
  private final Set<String> roomIds;
  private final List<Opening> openings = new ArrayList<>();

  /**
   * Makes the cutter.
   *
   * @param shells rooms that could be raised, by id
   * @param roomIds ids of all rooms of the file
   */
  Openings(Scope scope, Map<String, Shell> shells, Set<String> roomIds) {
    this.scope = scope;
    this.shells = shells;
    this.roomIds = roomIds;
  }

  List<Opening> cut() {
    for (Shell shell : shells.values()) {
      List<OpeningFile> written = shell.file().openings();
      Set<String> ids = new HashSet<>();
      for (OpeningFile o : written == null ? List.<OpeningFile>of() : written) {
        if (!ids.add(o.id().text())) {
          scope.fault(o, "id", "the id \"" + o.id().text() + "\" is used twice", "give another");
          continue;
        }
        if (o.kind() == OpeningKind.SKYLIGHT) {
          skylight(shell, o);
        } else {
          inWall(shell, o);
        }
      }
    }
    return openings;
  }

  private void skylight(Shell shell, OpeningFile o) {
    String needs = "a skylight needs ";
    boolean gap = scope.lacks(o, "at", o.at(), needs + "at", "give its middle in plan, [x, y]");
    gap |= scope.lacks(o, "width", o.width(), needs + "width", "give its size along x");
    gap |= scope.lacks(o, "depth", o.depth(), needs + "depth", "give its size along y");
    if (gap) {
      return;
    }
    double w = o.width().metres() / 2;
    double d = o.depth().metres() / 2;
    Vec2 c = o.at().flat();
    List<Vec2> plan = Plan.rectangle(c.x() - w, c.y() - d, c.x() + w, c.y() + d);
    for (Draft draft : shell.ceilings()) {
      boolean upright = Math.abs(draft.frame().n().z()) < 1e-3;
      if (!upright && Face.inside(draft.outer(), Marks.lift(draft.frame(), c))) {
        List<Vec2> ring =
            Plan.counterClockwise(plan.stream().map(p -> Marks.lift(draft.frame(), p)).toList());
        if (fits(draft, ring, o, "at", "skylight")) {
          draft.holes.add(ring);
          add(shell, o, draft, ring);
        }
        return;
      }
    }
    scope.fault(
        o, "at", "the skylight lies outside the ceiling of " + shell.id(), "move it inside");
  }

  private void inWall(Shell shell, OpeningFile o) {
    String needs = "a " + word(o) + " needs ";
    boolean gap = scope.lacks(o, "wall", o.wall(), needs + "wall", "say which wall it is in");
    gap |= scope.lacks(o, "width", o.width(), needs + "width", "give its clear width");
    if (gap) {
      return;
    }
    Optional<Shell.Wall> wall = shell.wall(o.wall().text());
    if (wall.isEmpty()) {
      scope.unknown(
          o,
          "wall",
          "there is no wall \"" + o.wall().text() + "\" in " + shell.id(),
          shell.walls().stream().map(w -> w.names().get(1)).toList());
      return;
    }
    Optional<List<Vec2>> hole = rectangle(o, wall.get());
    if (hole.isEmpty() || !fits(wall.get().draft(), hole.get(), o, "offset", word(o))) {
      return;
    }
    if (o.kind() == OpeningKind.PASSAGE) {
      passage(shell, wall.get().draft(), o, hole.get());
    } else {
      wall.get().draft().holes.add(hole.get());
      add(shell, o, wall.get().draft(), hole.get());
    }
  }

  /** The hole in the wall's plane; empty, with faults added, when its numbers do not fit. */
  private Optional<List<Vec2>> rectangle(OpeningFile o, Shell.Wall wall) {
    double sill = metres(o.sill(), 0);
    boolean told = o.head() == null && scope.binder().has(o, "head");
    told |= o.height() == null && scope.binder().has(o, "height");
    if (told) {
      return Optional.empty();
    }
    if ((o.head() == null) == (o.height() == null)) {
      scope.fault(
          o,
          "the " + word(o) + (o.head() == null ? " has no height" : " has height and head"),
          "give height or head, not both");
      return Optional.empty();
    }
    double head = o.head() != null ? o.head().metres() : sill + o.height().metres();
    if (head < sill + 0.02) {
      scope.fault(
          o,
          "head",
          word(o) + " head " + scope.length(head) + " is not above its sill " + scope.length(sill),
          "raise the head or lower the sill");
      return Optional.empty();
    }
    double width = o.width().metres();
    double offset = o.offset() == null ? (wall.length() - width) / 2 : o.offset().metres();
    double top = wall.draft().outer().stream().mapToDouble(Vec2::y).max().orElseThrow();
    boolean sound = true;
    if (head > top + Plan.SAME) {
      scope.fault(
          o,
          o.head() != null ? "head" : "height",
          word(o) + " head " + scope.length(head) + " is above the wall's " + scope.length(top),
          "lower it or raise the wall");
      sound = false;
    }
    if (offset < -Plan.SAME || offset + width > wall.length() + Plan.SAME) {
      scope.fault(
          o,
          o.offset() == null ? "width" : "offset",
          word(o)
              + " runs to "
              + scope.length(Math.max(offset, 0) + width)
              + " along a wall of "
              + scope.length(wall.length()),
          "move it or make it narrower");
      sound = false;
    }
    if (!sound) {
      return Optional.empty();
    }
    double u0 = Math.max(0, offset);
    double u1 = Math.min(wall.length(), offset + width);
    return Optional.of(Plan.rectangle(u0, sill, u1, Math.min(top, head)));
  }

  private boolean fits(Draft draft, List<Vec2> ring, OpeningFile o, String key, String word) {
    double beyond = Plan.difference(Plan.polygon(ring), Plan.polygon(draft.outer())).getArea();
    if (beyond > 1e-5) {
      scope.fault(
          o,
          key,
          "the " + word + " reaches beyond " + draft.label + " by " + scope.area(beyond),
          "move it or make it smaller: the surface is not a rectangle there");
      return false;
    }
    return clear(draft, ring, o, key, word);
  }

  private boolean clear(Draft draft, List<Vec2> ring, OpeningFile o, String key, String word) {
    for (List<Vec2> other : draft.holes) {
      if (Plan.polygon(other).isWithinDistance(Plan.polygon(ring), Plan.SAME / 2)) {
        scope.fault(
            o,
            key,
            "the " + word + " overlaps or touches another opening of " + draft.label,
            "leave at least 1 mm between them; a passage is written in one of its rooms only");
        return false;
      }
    }
    return true;
  }

  private void add(Shell shell, OpeningFile o, Draft draft, List<Vec2> ring) {
    boolean door = o.kind() == OpeningKind.DOOR;
    double frame = o.frame() == null ? (door ? 1 : 0.15) : o.frame();
    String label = label(shell, o);
    Face face = Face.of(draft.frame(), ring);
    if (door && frame >= SOLID) {
      Finish leaf = unboarded(draft.finish, new Paint(0.7, Sheen.SEMI_GLOSS));
      shell
          .others()
          .add(
              new Draft(
                  shell.id() + "/" + o.id().text(),
                  label,
                  shell.id(),
                  SurfaceKind.OTHER,
                  face,
                  leaf));
      return;
    }
    int panes = o.panes() == null ? 2 : o.panes();
    double reveal = o.kind() == OpeningKind.SKYLIGHT ? 0.3 : 0.1;
    openings.add(
        new Opening(
            shell.id() + "/" + o.id().text(),
            label,
            shell.id(),
            o.kind(),
            draft.id,
            Optional.empty(),
            face,
            o.transmittance() == null ? usualTransmittance(panes) : o.transmittance(),
            panes,
            frame,
            metres(o.reveal(), reveal),
            shade(o)));
  }

  /** Clear glass at normal incidence, none to triple (double 0.81: published tables). */
  private static double usualTransmittance(int panes) {
    return new double[] {1, 0.90, 0.81, 0.74}[panes];
  }

  private static Optional<Shade> shade(OpeningFile o) {
    return Optional.ofNullable(o.shade())
        .map(s -> new Shade(s.transmittance(), s.diffusing() == null || s.diffusing()));
  }

  private static Finish unboarded(Finish like, Paint paint) {
    return new Finish(
        SurfaceKind.OTHER,
        paint,
        false,
        false,
        Optional.empty(),
        like.spacing(),
        0,
        Optional.empty(),
        like.level());
  }

  private void passage(Shell shell, Draft draft, OpeningFile o, List<Vec2> ring) {
    if (scope.lacks(o, "to", o.to(), "a passage needs to", "name the room behind it")) {
      return;
    }
    Shell behind = shells.get(o.to());
    boolean itself = o.to().equals(shell.id());
    if (behind == null || itself) {
      if (itself || !roomIds.contains(o.to())) {
        List<String> others = roomIds.stream().filter(r -> !r.equals(shell.id())).sorted().toList();
        scope.unknown(o, "to", "there is no other room \"" + o.to() + "\"", others);
      }
      return;
    }
    Optional<Facing> facing = facing(draft.frame(), ring, behind);
    if (facing.isEmpty()) {
      scope.fault(
          o,
          "to",
          "no wall of "
              + behind.id()
              + " faces this passage within "
              + scope.length(THICKEST)
              + " all the way across",
          "move the passage or the room; walls between rooms are the gap between two outlines");
      return;
    }
    Facing f = facing.get();
    if (!clear(f.draft(), f.ring(), o, "offset", "passage")) {
      return;
    }
    draft.holes.add(ring);
    f.draft().holes.add(f.ring());
    if (f.gap() > Plan.SAME) {
      jambs(shell, draft, o, ring, f.gap());
    }
    openings.add(
        new Opening(
            shell.id() + "/" + o.id().text(),
            label(shell, o),
            shell.id(),
            OpeningKind.PASSAGE,
            draft.id,
            Optional.of(behind.id()),
            Face.of(draft.frame(), ring),
            1,
            0,
            0,
            0,
            Optional.empty()));
  }

  /** The wall behind a passage, the hole in its plane, and the thickness between. */
  private record Facing(Draft draft, List<Vec2> ring, double gap) {}

  private static Optional<Facing> facing(Frame frame, List<Vec2> ring, Shell behind) {
    Facing best = null;
    for (Shell.Wall w : behind.walls()) {
      Frame other = w.draft().frame();
      double gap = -frame.height(other.origin());
      boolean faces = frame.n().dot(other.n()) < -0.99999;
      if (!faces || gap < -Plan.SAME || gap > THICKEST || (best != null && gap >= best.gap())) {
        continue;
      }
      List<Vec2> hole =
          Plan.counterClockwise(ring.stream().map(p -> other.toPlane(frame.toWorld(p))).toList());
      if (Plan.difference(Plan.polygon(hole), Plan.polygon(w.draft().outer())).getArea() < 1e-5) {
        best = new Facing(w.draft(), hole, gap);
      }
    }
    return Optional.ofNullable(best);
  }

  /** The four sides of a passage through the thickness of the wall, facing its middle. */
  private void jambs(Shell shell, Draft draft, OpeningFile o, List<Vec2> ring, double gap) {
    Frame f = draft.frame();
    Vec2 a = ring.get(0);
    Vec2 b = ring.get(2);
    double w = b.x() - a.x();
    double h = b.y() - a.y();
    Vec3 out = f.n().times(-1);
    Finish wall = unboarded(draft.finish, draft.finish.paint());
    Finish sill = a.y() < 0.01 ? unboarded(wall, shell.floorDraft().finish.paint()) : wall;
    jamb(shell, o, "left", Frame.of(f.toWorld(a), out, f.u()), gap, h, wall);
    jamb(
        shell,
        o,
        "right",
        Frame.of(f.toWorld(new Vec2(b.x(), a.y()), -gap), f.n(), f.u().times(-1)),
        gap,
        h,
        wall);
    jamb(
        shell,
        o,
        "head",
        Frame.of(f.toWorld(new Vec2(a.x(), b.y()), -gap), f.u(), f.v().times(-1)),
        w,
        gap,
        wall);
    jamb(shell, o, "sill", Frame.of(f.toWorld(a), f.u(), f.v()), w, gap, sill);
  }

  private static void jamb(
      Shell shell, OpeningFile o, String side, Frame frame, double w, double h, Finish finish) {
    String id = shell.id() + "/" + o.id().text() + "-" + side;
    String label = shell.label() + " " + o.id().text() + " " + side;
    Face face = Face.of(frame, Plan.rectangle(0, 0, w, h));
    shell.others().add(new Draft(id, label, shell.id(), SurfaceKind.OTHER, face, finish));
  }

  private static String label(Shell shell, OpeningFile o) {
    return o.label() != null
        ? o.label()
        : shell.label() + " " + o.id().text().replace('-', ' ').replace('_', ' ');
  }

  private static String word(RoomFile.OpeningFile o) {
    return o.kind().name().toLowerCase(java.util.Locale.ROOT);
  }

  private static double metres(Length l, double otherwise) {
    return l == null ? otherwise : l.metres();
  }

  /** States that a surface is no drywall unless someone says so. */
  static final FinishFile UNBOARDED = new FinishFile(null, false, null, null, null, null);
}
