package slantlight.scene.resolve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.SurfaceKind;
import slantlight.scene.file.FinishFile;
import slantlight.scene.file.RoomFile;
import slantlight.scene.file.RoomFile.CeilingFile;
import slantlight.scene.file.RoomFile.CeilingKind;
import slantlight.scene.file.Values;

/** Lays a room's ceiling: flat, shed, gable or the user's own polygons. */
final class Ceilings {
  /** Gaps and overlaps of a ceiling in plan below this are drawing noise, m2. */
  private static final double NOISE = 1e-3;

  private final Scope scope;
  private final RoomFile file;
  private final Polygon region;
  private final double floor;
  private final double height;
  private final Function<FinishFile, Finish> finish;
  private final List<RoofFace> roofs = new ArrayList<>();
  private final List<Draft> drafts = new ArrayList<>();

  Ceilings(
      Scope scope,
      RoomFile file,
      Polygon region,
      double floor,
      double height,
      Function<FinishFile, Finish> finish) {
    this.scope = scope;
    this.file = file;
    this.region = region;
    this.floor = floor;
    this.height = height;
    this.finish = finish;
  }

  List<RoofFace> roofs() {
    return roofs;
  }

  List<Draft> drafts() {
    return drafts;
  }

  /** Builds the faces; false, with faults added, when they make no ceiling. */
  boolean build() {
    CeilingFile c = file.ceiling();
    CeilingKind kind = c == null || c.kind() == null ? CeilingKind.FLAT : c.kind();
    boolean sound =
        switch (kind) {
          case FLAT -> flat();
          case SHED -> shed(c);
          case GABLE -> gable(c);
          case POLYGONS -> polygons(c);
        };
    if (sound && c != null && drafts.size() > 0) {
      new Marks(scope, Marks.IN_PLAN).spread(drafts, c.covered(), c.joints());
    }
    return sound;
  }

  private boolean flat() {
    roofs.add(new RoofFace(region, floor + height, 0, 0));
    nameRoofs();
    return true;
  }

  private boolean shed(CeilingFile c) {
    if (c.falls() == null || c.falls().azimuthDeg().isEmpty()) {
      scope.fault(c, "a shed ceiling needs falls", "say which way it falls, such as \"south\"");
      return false;
    }
    if (!rises(c)) {
      return false;
    }
    Vec2 d = c.falls().unit();
    double[] s = range(d);
    double slope = (c.high().metres() - height) / (s[1] - s[0]);
    roofs.add(new RoofFace(region, floor + height + slope * s[1], -slope * d.x(), -slope * d.y()));
    nameRoofs();
    return true;
  }

  private boolean gable(CeilingFile c) {
    if (c.ridge() == null || c.ridge().azimuthDeg().isEmpty()) {
      scope.fault(
          c, "a gable ceiling needs ridge", "say which way the ridge runs, such as \"east-west\"");
      return false;
    }
    if (!rises(c)) {
      return false;
    }
    Vec2 r = c.ridge().unit();
    Vec2 across = new Vec2(r.y(), -r.x());
    double[] s = range(across);
    double ridge = (s[0] + s[1]) / 2 + (c.shift() == null ? 0 : c.shift().metres());
    if (ridge < s[0] + 0.05 || ridge > s[1] - 0.05) {
      scope.fault(c, "shift", "the ridge lies outside the room", "shift it less");
      return false;
    }
    double slope = (c.high().metres() - height) / Math.max(ridge - s[0], s[1] - ridge);
    for (int side = -1; side <= 1; side += 2) {
      for (Polygon piece : Plan.polygons(Plan.intersection(region, half(r, across, ridge, side)))) {
        Vec2 g = across.times(-slope * side);
        roofs.add(
            new RoofFace(piece, floor + c.high().metres() + slope * side * ridge, g.x(), g.y()));
      }
    }
    nameRoofs();
    return true;
  }

  /** The half of the plan beyond the ridge line on one side, as a large rectangle. */
  private static Polygon half(Vec2 along, Vec2 across, double at, int side) {
    double far = 50_000;
    Vec2 near = across.times(at);
    Vec2 off = across.times(at + side * far);
    return Plan.polygon(
        Plan.counterClockwise(
            List.of(
                near.plus(along.times(-far)),
                near.plus(along.times(far)),
                off.plus(along.times(far)),
                off.plus(along.times(-far)))));
  }

  private boolean rises(CeilingFile c) {
    if (c.high() == null || c.high().metres() < height + 0.01) {
      scope.fault(
          c,
          "high",
          "the ceiling's high is "
              + (c.high() == null ? "missing" : scope.length(c.high().metres())),
          "give a height above the room's height of " + scope.length(height));
      return false;
    }
    return true;
  }

  private double[] range(Vec2 direction) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Vec2 p : Plan.outer(region)) {
      low = Math.min(low, p.dot(direction));
      high = Math.max(high, p.dot(direction));
    }
    return new double[] {low, high};
  }

  private void nameRoofs() {
    Map<String, Integer> count = new HashMap<>();
    Map<String, Integer> met = new HashMap<>();
    roofs.forEach(r -> count.merge(part(r), 1, Integer::sum));
    for (RoofFace r : roofs) {
      String part = part(r);
      int k = met.merge(part, 1, Integer::sum);
      String numbered = count.get(part) > 1 ? part + "-" + k : part;
      draft(numbered, label(numbered), r.face(), finish.apply(null));
    }
  }

  private String part(RoofFace r) {
    return roofs.size() == 1 ? "ceiling" : "ceiling-" + r.side();
  }

  private String label(String part) {
    String room = file.label() == null ? Shell.labelOf(file.id().text()) : file.label();
    return part.equals("ceiling") ? room + " ceiling" : room + " " + part.substring(8) + " slope";
  }

  private Draft draft(String part, String label, Face face, Finish f) {
    Draft draft =
        new Draft(
            file.id().text() + "/" + part, label, file.id().text(), SurfaceKind.CEILING, face, f);
    drafts.add(draft);
    return draft;
  }

  private boolean polygons(CeilingFile c) {
    if (c.polygons() == null || c.polygons().isEmpty()) {
      scope.fault(c, "a ceiling of polygons has no polygons", "list them under polygons");
      return false;
    }
    boolean sound = true;
    for (RoomFile.SurfaceFile s : c.polygons()) {
      Optional<Face> free = Free.face(scope, s);
      if (free.isEmpty()) {
        sound = false;
        continue;
      }
      sound &= addPolygon(s, free.get());
    }
    return sound && covers(c);
  }

  private boolean addPolygon(RoomFile.SurfaceFile s, Face free) {
    Vec3 n = free.frame().n();
    String label = s.label() == null ? Shell.labelOf(s.id().text()) : s.label();
    if (Math.abs(n.z()) < 1e-3) {
      Draft step = draft(s.id().text(), label, free, finish.apply(s.finish()));
      new Marks(scope, Marks.IN_SPACE).add(step, s.covered(), s.joints());
      return true;
    }
    Vec3 o = free.frame().origin();
    double gx = -n.x() / n.z();
    double gy = -n.y() / n.z();
    List<Vec2> plan = s.points().stream().map(Values.Point::flat).toList();
    RoofFace roof =
        new RoofFace(
            Plan.polygon(Plan.counterClockwise(plan)), o.z() - gx * o.x() - gy * o.y(), gx, gy);
    roofs.add(roof);
    Draft draft = draft(s.id().text(), label, roof.face(), finish.apply(s.finish()));
    new Marks(scope, Marks.IN_SPACE).add(draft, s.covered(), s.joints());
    return true;
  }

  private boolean covers(CeilingFile c) {
    double sum = 0;
    Geometry union = null;
    for (RoofFace r : roofs) {
      sum += r.plan().getArea();
      union = union == null ? r.plan() : Plan.union(union, r.plan());
    }
    if (union == null) {
      scope.fault(c, "polygons", "every polygon stands upright", "add the ones overhead");
      return false;
    }
    double open = Plan.difference(region, union).getArea();
    double beyond = Plan.difference(union, region).getArea();
    double twice = sum - union.getArea();
    if (open > NOISE) {
      scope.fault(
          c,
          "polygons",
          "the ceiling leaves " + scope.area(open) + " of the room open",
          "its polygons must cover the outline");
    }
    if (beyond > NOISE) {
      scope.fault(
          c,
          "polygons",
          "the ceiling reaches " + scope.area(beyond) + " beyond the outline",
          "its polygons must end at the walls");
    }
    if (twice > NOISE) {
      scope.fault(
          c,
          "polygons",
          "the ceiling's polygons overlap by " + scope.area(twice),
          "let them meet edge to edge");
    }
    return open <= NOISE && beyond <= NOISE && twice <= NOISE;
  }
}
