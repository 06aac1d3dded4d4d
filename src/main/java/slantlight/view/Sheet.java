package slantlight.view;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.scene.SurfaceKind;
import slantlight.sheet.PaperMap;
import slantlight.view.draw.Box;

/**
 * A drawing to scale: the reflected ceiling plan (as in a mirror on the floor: north up, east
 * right) or one wall's elevation seen from inside.
 *
 * @param title over the drawing
 * @param parts surfaces drawn
 * @param plan whether it is the ceiling plan
 * @param low least corner of what is drawn, m on the sheet
 * @param high greatest corner
 */
record Sheet(String title, List<Surface> parts, boolean plan, Vec2 low, Vec2 high) {
  /** The sheet for what is chosen: a wall's elevation, else the ceilings of its room or all. */
  static Sheet of(House house, Optional<String> surfaceId) {
    if (surfaceId.isPresent()) {
      Surface s = house.surface(surfaceId.get());
      if (s.kind() == SurfaceKind.WALL
          || (s.kind() == SurfaceKind.OTHER && Math.abs(s.face().frame().n().z()) < 0.5)) {
        return drawn("Elevation: " + s.label(), List.of(s), false);
      }
    }
    Optional<String> room = surfaceId.map(id -> house.surface(id).roomId());
    List<Surface> ceilings =
        house.surfaces().stream()
            .filter(s -> s.face().frame().n().z() < -0.2)
            .filter(s -> s.kind() == SurfaceKind.CEILING || s.boarded())
            .filter(s -> room.isEmpty() || room.get().equals(s.roomId()))
            .toList();
    String title =
        "Reflected ceiling plan" + room.map(r -> ": " + house.room(r).label()).orElse("");
    return ceilings.isEmpty() ? of(house, Optional.empty()) : drawn(title, ceilings, true);
  }

  private static Sheet drawn(String title, List<Surface> parts, boolean plan) {
    double[] b = {1e9, 1e9, -1e9, -1e9};
    for (Surface s : parts) {
      for (Vec2 p : s.face().outer()) {
        Vec2 q = onSheet(s, p, plan);
        b[0] = Math.min(b[0], q.x());
        b[1] = Math.min(b[1], q.y());
        b[2] = Math.max(b[2], q.x());
        b[3] = Math.max(b[3], q.y());
      }
    }
    return new Sheet(title, parts, plan, new Vec2(b[0], b[1]), new Vec2(b[2], b[3]));
  }

  /** Sheet coordinates of a plane point, m. */
  private static Vec2 onSheet(Surface s, Vec2 p, boolean plan) {
    if (!plan) {
      return p;
    }
    Vec3 w = s.face().frame().toWorld(p);
    return new Vec2(w.x(), w.y());
  }

  /** Layout units a metre so that the sheet fits the box. */
  double scale(Box box) {
    double w = Math.max(0.1, high.x() - low.x());
    double h = Math.max(0.1, high.y() - low.y());
    return Math.min(box.w() / w, box.h() / h);
  }

  /** From sheet coordinates to the screen. */
  Function<Vec2, Vec2> toScreen(Box box) {
    double k = scale(box);
    Vec2 middle = low.lerp(high, 0.5);
    return p ->
        new Vec2(box.midX() + (p.x() - middle.x()) * k, box.midY() - (p.y() - middle.y()) * k);
  }

  /** The place on a surface under a point of the screen, if there is one. */
  Optional<Picked> pick(ViewModel model, Box box, double x, double y) {
    double k = scale(box);
    Vec2 middle = low.lerp(high, 0.5);
    Vec2 at = new Vec2(middle.x() + (x - box.midX()) / k, middle.y() - (y - box.midY()) / k);
    for (Surface s : parts) {
      Vec2 p = plan ? PaperMap.above(s.face().frame(), at) : at;
      if (s.face().contains(p)) {
        return Optional.of(Picked.of(model, s, p));
      }
    }
    return Optional.empty();
  }

  /** From a surface's plane to the paper that a painter paints. */
  PaperMap map(Surface s, Box box, MarkPainter painter) {
    double k = scale(box) / MarkPainter.SCALE;
    Vec2 origin = painter.paper(toScreen(box).apply(new Vec2(0, 0)));
    return plan ? PaperMap.plan(s.face().frame(), k, origin) : PaperMap.elevation(k, origin);
  }
}
