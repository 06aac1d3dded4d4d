package slantlight.reference;

import java.util.ArrayList;
import java.util.List;
import slantlight.geom.Face;
import slantlight.scene.Block;
import slantlight.scene.House;
import slantlight.scene.Opening;
import slantlight.scene.OpeningKind;
import slantlight.scene.Surface;
import slantlight.sky.GlassPane;

/**
 * A house as plates for rays: its inside, and its shell as others see it from outside, where every
 * opening counts as wall.
 *
 * <p>What openings do: clear glass lets through its stated transmittance x the change with angle x
 * what frame and shade leave; the reveal is a black tunnel of the wall's thickness; a cloth
 * scatters evenly.
 */
final class Scenery {
  /** Reflectance that the program takes for outer walls, whose paint no scene states. */
  private static final double OUTER_WALL = 0.3;

  private static final double NEAR = 1e-7;
  private static final double SAME = 1e-9;

  final Plate[] surfaces;
  final double[] reflectance;
  final Plate[] shell;
  final double[] shellReflectance;
  final Pane[] panes;

  Scenery(House house) {
    int n = house.surfaces().size();
    surfaces = new Plate[n];
    reflectance = new double[n];
    List<Plate> outside = new ArrayList<>();
    List<Double> shares = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Surface s = house.surfaces().get(i);
      surfaces[i] = new Plate(s.face());
      reflectance[i] = s.paint().lrv();
      outside.add(new Plate(Face.of(s.face().frame(), s.face().outer())));
      shares.add(OUTER_WALL);
    }
    for (Block b : house.outside().blocks()) {
      for (Face f : b.faces()) {
        outside.add(new Plate(f));
        shares.add(b.reflectance());
      }
    }
    shell = outside.toArray(Plate[]::new);
    shellReflectance = shares.stream().mapToDouble(Double::doubleValue).toArray();
    panes =
        house.openings().stream()
            .filter(o -> o.kind() != OpeningKind.PASSAGE)
            .map(Pane::new)
            .toArray(Pane[]::new);
  }

  /** Follows a ray inside the house until it meets a surface or a pane. */
  void inside(
      double ox, double oy, double oz, double dx, double dy, double dz, double far, Hit hit) {
    hit.what = Hit.What.NOTHING;
    hit.distance = far;
    for (int i = 0; i < surfaces.length; i++) {
      Plate p = surfaces[i];
      boolean front = p.nx * dx + p.ny * dy + p.nz * dz < 0;
      // Back to back walls may share a plane: the side that faces the ray is the one met.
      double reach = hit.distance + (front ? SAME : -SAME);
      double t = p.distance(ox, oy, oz, dx, dy, dz, NEAR, reach);
      if (t < reach) {
        hit.distance = t;
        hit.index = i;
        hit.what = front ? Hit.What.SURFACE : Hit.What.BACK;
      }
    }
    for (int i = 0; i < panes.length; i++) {
      double t = panes[i].plate.distance(ox, oy, oz, dx, dy, dz, NEAR, hit.distance);
      if (t < hit.distance) {
        hit.distance = t;
        hit.index = i;
        hit.what = Hit.What.PANE;
      }
    }
  }

  /** Follows a ray outside among walls and blocks. */
  void outside(double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
    hit.what = Hit.What.NOTHING;
    hit.distance = Double.POSITIVE_INFINITY;
    for (int i = 0; i < shell.length; i++) {
      double t = shell[i].distance(ox, oy, oz, dx, dy, dz, 1e-5, hit.distance);
      if (t < hit.distance) {
        hit.distance = t;
        hit.index = i;
        hit.what = Hit.What.SHELL;
      }
    }
  }

  /** Glass, frame and shade of an opening to the outside. */
  static final class Pane {
    final Opening opening;
    final Plate plate;
    final boolean cloth;
    private final double normalShare;

    Pane(Opening opening) {
      this.opening = opening;
      this.plate = new Plate(opening.face());
      this.cloth = opening.shade().map(s -> s.diffusing()).orElse(false);
      double shade = opening.shade().map(s -> s.transmittance()).orElse(1.0);
      this.normalShare = opening.transmittance() * (1 - opening.frameShare()) * shade;
    }

    /** Distance from the hole to just outside the glass along a direction, m. */
    double depth(double dx, double dy, double dz) {
      return opening.revealDepth() / cosine(dx, dy, dz) + 1e-6;
    }

    /** Share of a ray let through at a point of the hole: glass, frame, shade, reveal. */
    double share(double px, double py, double pz, double dx, double dy, double dz) {
      double depth = opening.revealDepth();
      double cos = cosine(dx, dy, dz);
      if (depth > 0) {
        // The glass seen square on, from one metre inside the place where the ray meets it.
        double t = depth / cos;
        double gx = px + t * dx + plate.nx * (depth + 1);
        double gy = py + t * dy + plate.ny * (depth + 1);
        double gz = pz + t * dz + plate.nz * (depth + 1);
        double met = plate.distance(gx, gy, gz, -plate.nx, -plate.ny, -plate.nz, 0, 2);
        if (met == Double.POSITIVE_INFINITY) {
          return 0;
        }
      }
      return normalShare * GlassPane.relativeTransmittance(cos, opening.panes());
    }

    private double cosine(double dx, double dy, double dz) {
      return Math.abs(plate.nx * dx + plate.ny * dy + plate.nz * dz);
    }
  }
}
