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
import slantlight.scene.Block;
import slantlight.scene.GroundKind;
import slantlight.scene.GroundZone;
import slantlight.scene.Outside;
import slantlight.scene.file.OutsideFile;
import slantlight.scene.file.OutsideFile.BlockFile;
import slantlight.scene.file.OutsideFile.OverhangFile;
import slantlight.scene.file.OutsideFile.ZoneFile;
import slantlight.scene.file.Values;

/** Resolves the ground and the things outside. */
final class Surroundings {
  /** Distance of an overhang's inner edge from the inner wall face, so that they never touch, m. */
  private static final double CLEAR = 0.01;

  /** Wind over water when nothing is stated, a light breeze, m/s. */
  private static final double USUAL_WIND = 3;

  private final Scope scope;
  private final Map<String, Shell> shells;
  private final Set<String> roomIds;
  private final double usualReflectance;
  private final Set<String> ids = new HashSet<>();

  Surroundings(
      Scope scope, Map<String, Shell> shells, Set<String> roomIds, double usualReflectance) {
    this.scope = scope;
    this.shells = shells;
    this.roomIds = roomIds;
    this.usualReflectance = usualReflectance;
  }

  Outside outside(OutsideFile file) {
    if (file == null) {
      return new Outside(0, List.of(), List.of());
    }
    double ground = file.ground() == null ? 0 : file.ground().metres();
    List<GroundZone> zones = new ArrayList<>();
    for (ZoneFile z : file.zones() == null ? List.<ZoneFile>of() : file.zones()) {
      zone(z, ground).ifPresent(zones::add);
    }
    List<Block> blocks = new ArrayList<>();
    for (BlockFile b : file.blocks() == null ? List.<BlockFile>of() : file.blocks()) {
      List<Face> faces = faces(b);
      if (fresh(b, b.id()) && !faces.isEmpty()) {
        String label = b.label() == null ? Shell.labelOf(b.id().text()) : b.label();
        blocks.add(
            new Block(
                b.id().text(), label, faces, b.reflectance() == null ? 0.2 : b.reflectance()));
      }
    }
    return new Outside(ground, zones, blocks);
  }

  private boolean fresh(Object record, Values.Id id) {
    if (ids.add(id.text())) {
      return true;
    }
    scope.fault(record, "id", "the id \"" + id.text() + "\" is used twice", "give another");
    return false;
  }

  private Optional<GroundZone> zone(ZoneFile z, double ground) {
    List<Vec2> ring = new ArrayList<>(z.outline().stream().map(Values.Point::flat).toList());
    if (ring.size() > 3 && ring.get(0).distance(ring.get(ring.size() - 1)) < Plan.SAME) {
      ring.remove(ring.size() - 1);
    }
    Optional<String> fault = Plan.fault(ring);
    if (fault.isPresent()) {
      scope.fault(z, "outline", "the outline " + fault.get(), "list its corners in order");
    }
    if (!fresh(z, z.id()) || fault.isPresent()) {
      return Optional.empty();
    }
    return Optional.of(
        new GroundZone(
            z.id().text(),
            z.label() == null ? Shell.labelOf(z.id().text()) : z.label(),
            z.kind(),
            Plan.counterClockwise(ring),
            z.level() == null ? ground : z.level().metres(),
            z.reflectance() == null ? usual(z.kind()) : z.reflectance(),
            z.wet() != null && z.wet(),
            z.wind() == null ? USUAL_WIND : z.wind()));
  }

  /** Published albedo tables for snow and paving; water's upwelling light and ice from memory. */
  private double usual(GroundKind kind) {
    return switch (kind) {
      case GROUND -> usualReflectance;
      case SNOW -> 0.8;
      case PAVING -> 0.3;
      case WATER -> 0.04;
      case ICE -> 0.4;
    };
  }

  private List<Face> faces(BlockFile b) {
    int given = 0;
    for (Object o : new Object[] {b.polygons(), b.box(), b.overhang()}) {
      given += o == null ? 0 : 1;
    }
    if (given != 1) {
      scope.fault(
          b,
          given == 0 ? "the block has no shape" : "the block has several shapes",
          "give one of polygons, box and overhang");
      return List.of();
    }
    if (b.box() != null) {
      return box(b.box());
    }
    return b.overhang() != null ? overhang(b.overhang()) : polygons(b);
  }

  private List<Face> polygons(BlockFile b) {
    List<Face> out = new ArrayList<>();
    for (List<Values.Point> points : b.polygons()) {
      Free.face(scope, b, "polygons", points).ifPresent(out::add);
    }
    return out;
  }

  private List<Face> box(OutsideFile.BlockBoxFile box) {
    if (box.from().z().isEmpty() || box.to().z().isEmpty()) {
      scope.fault(box, "the corners of a box need heights", "give from and to as [x, y, z]");
      return List.of();
    }
    Vec3 low = box.from().at(0);
    Vec3 high = box.to().at(0);
    if (high.x() - low.x() < Plan.SAME
        || high.y() - low.y() < Plan.SAME
        || high.z() - low.z() < Plan.SAME) {
      scope.fault(
          box, "to", "the box has no volume", "let to exceed from by 1 mm or more each way");
      return List.of();
    }
    return Free.box(low, high);
  }

  private List<Face> overhang(OverhangFile o) {
    Shell shell = shells.get(o.room());
    if (shell == null) {
      if (!roomIds.contains(o.room())) {
        scope.unknown(
            o, "room", "there is no room \"" + o.room() + "\"", roomIds.stream().sorted().toList());
      }
      return List.of();
    }
    Optional<Shell.Wall> wall = shell.wall(o.wall().text());
    if (wall.isEmpty()) {
      scope.unknown(
          o,
          "wall",
          "there is no wall \"" + o.wall().text() + "\" in " + shell.id(),
          shell.walls().stream().map(w -> w.names().get(1)).toList());
      return List.of();
    }
    double beyond = o.beyond() == null ? 0 : o.beyond().metres();
    double depth = o.depth().metres();
    if (depth <= CLEAR) {
      scope.fault(o, "depth", "the overhang does not stand out", "make it deeper");
      return List.of();
    }
    Frame f = wall.get().draft().frame();
    Vec3 origin = f.toWorld(new Vec2(-beyond, o.height().metres()), -CLEAR);
    Frame under = Frame.of(origin, f.u(), Vec3.DOWN);
    // Seen from below, v = n x u points away from the room.
    double width = wall.get().length() + 2 * beyond;
    boolean outward = under.v().dot(f.n()) < 0;
    Face face =
        Face.of(
            under,
            outward
                ? Plan.rectangle(0, 0, width, depth - CLEAR)
                : Plan.rectangle(0, -(depth - CLEAR), width, 0));
    return List.of(face);
  }
}
