package slantlight.scene.resolve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.Eye;
import slantlight.scene.Opening;
import slantlight.scene.OpeningKind;
import slantlight.scene.RoomUse;
import slantlight.scene.file.Compass;
import slantlight.scene.file.SceneFile.EyeFile;

/**
 * Chooses the places from which people look: the user's own, else a modest set over each room's
 * free floor. The first place is the one farthest from all walls; each next is the one farthest
 * from those chosen; then come the places just inside doors and passages. No chance is involved.
 */
final class Places {
  /** Eye heights above the floor, common practice in lighting: standing and seated, m. */
  static final double STANDING = 1.60;

  static final double SEATED = 1.15;

  /** Uses of rooms in which people sit down; a list, for a use with a fault is null. */
  private static final List<RoomUse> SAT_IN =
      Arrays.asList(RoomUse.LIVING, RoomUse.KITCHEN, RoomUse.BEDROOM, RoomUse.STUDY);

  private static final GeometryFactory POINTS = new GeometryFactory();
  private static final double HEADROOM = 2.0;
  private static final double OFF_WALLS = 0.5;
  private static final double INSIDE_DOORS = 0.7;
  private static final double GRID = 0.25;
  private static final int MOST_PLACES = 6;
  private static final int MOST_DOORS = 2;

  /** Floor that one place speaks for, m2. */
  private static final double FLOOR_PER_PLACE = 6;

  private final Scope scope;
  private final Rooms rooms;

  Places(Scope scope, Rooms rooms) {
    this.scope = scope;
    this.rooms = rooms;
  }

  List<Eye> eyes(List<EyeFile> written, List<Opening> openings) {
    List<Eye> out = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    Set<String> given = new HashSet<>();
    for (EyeFile e : written == null ? List.<EyeFile>of() : written) {
      given.add(e.room());
      if (!ids.add(e.id().text())) {
        scope.fault(e, "id", "the id \"" + e.id().text() + "\" is used twice", "give another");
      }
      own(e).ifPresent(out::add);
    }
    for (Shell shell : rooms.shells().values()) {
      if (!given.contains(shell.id())) {
        out.addAll(over(shell, openings));
      }
    }
    return out;
  }

  private Optional<Eye> own(EyeFile e) {
    Optional<Shell> shell = rooms.room(e, e.room());
    if (shell.isEmpty()) {
      return Optional.empty();
    }
    boolean seated = e.seated() != null && e.seated();
    Vec3 p = e.position().at(shell.get().floor() + (seated ? SEATED : STANDING));
    if (!rooms.inside(shell.get(), e, "position", "the eye", p)) {
      return Optional.empty();
    }
    String label = e.label() == null ? Shell.labelOf(e.id().text()) : e.label();
    return Optional.of(new Eye(e.id().text(), label, shell.get().id(), p, seated));
  }

  private List<Eye> over(Shell shell, List<Opening> openings) {
    List<Vec2> spread = spread(shell);
    List<Eye> out = new ArrayList<>();
    boolean sits = SAT_IN.contains(shell.file().use());
    for (int i = 0; i < spread.size(); i++) {
      // People sit where they also stand; every second place is enough.
      add(out, shell, spread.get(i), false, "standing " + where(shell, spread.get(i)));
      if (sits && i % 2 == 0) {
        add(out, shell, spread.get(i), true, "seated " + where(shell, spread.get(i)));
      }
    }
    doors(shell, openings, out);
    return out;
  }

  private void doors(Shell shell, List<Opening> openings, List<Eye> out) {
    int taken = 0;
    for (Opening o : openings) {
      boolean own = o.roomId().equals(shell.id());
      boolean other = o.toRoomId().filter(r -> r.equals(shell.id())).isPresent();
      boolean way = o.kind() == OpeningKind.DOOR || o.kind() == OpeningKind.PASSAGE;
      if (taken == MOST_DOORS || !way || !(own || other)) {
        continue;
      }
      Frame f = o.face().frame();
      Vec2 c = o.face().centroid();
      double sill = o.face().outer().stream().mapToDouble(Vec2::y).min().orElseThrow();
      Vec3 foot = f.toWorld(new Vec2(c.x(), sill), own ? INSIDE_DOORS : -INSIDE_DOORS - 0.15);
      Vec2 p = new Vec2(foot.x(), foot.y());
      boolean level = Math.abs(foot.z() - shell.floor()) < 0.3;
      if (level && free(shell, p)) {
        add(out, shell, p, false, "standing just inside " + o.label());
        taken++;
      }
    }
  }

  private static void add(List<Eye> out, Shell shell, Vec2 p, boolean seated, String label) {
    double z = shell.floor() + (seated ? SEATED : STANDING);
    if (shell.ceilingAt(p).filter(top -> top > z + 0.02).isEmpty()) {
      return;
    }
    String id = shell.id() + "/eye-" + (out.size() + 1);
    out.add(new Eye(id, label, shell.id(), new Vec3(p.x(), p.y(), z), seated));
  }

  private static boolean free(Shell shell, Vec2 p) {
    return freeFloor(shell).contains(point(p));
  }

  /** The floor without what stands on it or hangs lower than a door over it. */
  private static Geometry freeFloor(Shell shell) {
    double low = shell.floor() + HEADROOM;
    Geometry floor = shell.region();
    for (Shell.Solid s : shell.solids()) {
      if (s.bottom() < low) {
        floor = Plan.difference(floor, s.plan());
      }
    }
    for (Draft d : shell.others()) {
      List<Vec3> corners = d.whole.corners();
      boolean upright = Math.abs(d.frame().n().z()) < 0.05;
      if (!upright && corners.stream().anyMatch(c -> c.z() < low)) {
        List<Vec2> plan = corners.stream().map(c -> new Vec2(c.x(), c.y())).toList();
        floor = Plan.difference(floor, Plan.polygon(plan));
      }
    }
    return floor;
  }

  private static List<Vec2> spread(Shell shell) {
    Geometry floor = freeFloor(shell);
    List<Vec2> candidates = List.of();
    for (double off = OFF_WALLS; candidates.isEmpty() && off > 0.05; off /= 2) {
      candidates = grid(floor.buffer(-off), off < OFF_WALLS ? GRID / 4 : GRID);
    }
    if (candidates.isEmpty()) {
      return List.of();
    }
    IndexedFacetDistance edge = new IndexedFacetDistance(floor.getBoundary());
    List<Vec2> chosen = new ArrayList<>();
    double[] far = new double[candidates.size()];
    for (int i = 0; i < far.length; i++) {
      far[i] = edge.distance(point(candidates.get(i)));
    }
    int wanted =
        (int) Math.max(1, Math.min(MOST_PLACES, Math.round(floor.getArea() / FLOOR_PER_PLACE)));
    while (chosen.size() < Math.min(wanted, candidates.size())) {
      int best = 0;
      for (int i = 1; i < far.length; i++) {
        best = far[i] > far[best] + 1e-9 ? i : best;
      }
      Vec2 p = candidates.get(best);
      for (int i = 0; i < far.length; i++) {
        double d = candidates.get(i).distance(p);
        far[i] = chosen.isEmpty() ? d : Math.min(far[i], d);
      }
      chosen.add(p);
    }
    return chosen;
  }

  private static Geometry point(Vec2 p) {
    return POINTS.createPoint(new Coordinate(p.x(), p.y()));
  }

  /** Grid points of a region, row by row; coarser for large regions so that there are few. */
  private static List<Vec2> grid(Geometry region, double step) {
    Envelope box = region.getEnvelopeInternal();
    List<Vec2> out = new ArrayList<>();
    if (region.isEmpty()) {
      return out;
    }
    IndexedPointInAreaLocator locator = new IndexedPointInAreaLocator(region);
    double cell = Math.max(step, Math.sqrt(box.getArea() / 2500));
    int nx = (int) Math.floor(box.getWidth() / cell);
    int ny = (int) Math.floor(box.getHeight() / cell);
    double x0 = box.getMinX() + (box.getWidth() - nx * cell) / 2;
    double y0 = box.getMinY() + (box.getHeight() - ny * cell) / 2;
    for (int k = 0; k <= ny; k++) {
      for (int i = 0; i <= nx; i++) {
        Vec2 p = new Vec2(x0 + i * cell, y0 + k * cell);
        if (locator.locate(new Coordinate(p.x(), p.y())) != Location.EXTERIOR) {
          out.add(p);
        }
      }
    }
    return out;
  }

  private static String where(Shell shell, Vec2 p) {
    Vec2 c = Face.of(shell.floorDraft().frame(), Plan.outer(shell.region())).centroid();
    Vec2 d = p.minus(c);
    Envelope box = shell.region().getEnvelopeInternal();
    double near = Math.min(box.getWidth(), box.getHeight()) / 6;
    if (d.length() < near) {
      return "in the middle";
    }
    String side = Compass.word(Math.toDegrees(Math.atan2(d.x(), d.y())));
    return side.contains("-") ? "toward the " + side + " corner" : "toward the " + side + " wall";
  }
}
