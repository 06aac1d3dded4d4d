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
 * A house as plates for rays.
 *
 * <p>What openings do: clear glass lets through its stated transmittance x the change with angle x
 * what frame and shade leave; the reveal is a black tunnel of the wall's thickness; a cloth
 * scatters evenly. Openings that are not passages stand between inside and outside.
 */
final class Scenery {
  private static final double NEAR = 1e-7;

  final House house;
  final Plate[] surfaces;
  final double[] reflectance;
  private final Plate[] blocks;
  final double[] blockReflectance;
  final Pane[] panes;

  Scenery(House house) {
    this.house = house;
    int n = house.surfaces().size();
    surfaces = new Plate[n];
    reflectance = new double[n];
    for (int i = 0; i < n; i++) {
      Surface s = house.surfaces().get(i);
      surfaces[i] = new Plate(s.face());
      reflectance[i] = s.paint().lrv();
    }
    List<Plate> sides = new ArrayList<>();
    List<Double> shares = new ArrayList<>();
    for (Block b : house.outside().blocks()) {
      for (Face f : b.faces()) {
        sides.add(new Plate(f));
        shares.add(b.reflectance());
      }
    }
    blocks = sides.toArray(Plate[]::new);
    blockReflectance = shares.stream().mapToDouble(Double::doubleValue).toArray();
    panes =
        house.openings().stream()
            .filter(o -> o.kind() != OpeningKind.PASSAGE)
            .map(Pane::new)
            .toArray(Pane[]::new);
  }

  Plate block(int index) {
    return blocks[index];
  }

  /** Follows a ray that may cross glass. */
  void trace(
      double ox, double oy, double oz, double dx, double dy, double dz, double far, Hit hit) {
    nearestOpaque(ox, oy, oz, dx, dy, dz, far, hit);
    nearestCloth(ox, oy, oz, dx, dy, dz, hit);
    hit.through = 1;
    hit.crossed = hit.what == Hit.What.CLOTH ? 1 : 0;
    for (Pane pane : panes) {
      if (pane.cloth > 0) {
        continue;
      }
      double t = pane.plate.distance(ox, oy, oz, dx, dy, dz, NEAR, hit.distance);
      if (t < hit.distance) {
        hit.crossed++;
        hit.through *= pane.clear(ox + t * dx, oy + t * dy, oz + t * dz, dx, dy, dz);
      }
    }
  }

  /** Follows a ray among the outside things alone; the house itself is not there. */
  void traceOutside(double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
    hit.what = Hit.What.OUTSIDE;
    hit.distance = Double.POSITIVE_INFINITY;
    hit.through = 1;
    nearestBlock(ox, oy, oz, dx, dy, dz, hit);
  }

  private void nearestOpaque(
      double ox, double oy, double oz, double dx, double dy, double dz, double far, Hit hit) {
    hit.what = Hit.What.OUTSIDE;
    hit.distance = far;
    for (int i = 0; i < surfaces.length; i++) {
      Plate p = surfaces[i];
      double t = p.distance(ox, oy, oz, dx, dy, dz, NEAR, hit.distance);
      if (t < hit.distance) {
        hit.distance = t;
        hit.index = i;
        hit.what = p.nx * dx + p.ny * dy + p.nz * dz < 0 ? Hit.What.SURFACE : Hit.What.SKIN;
      }
    }
    nearestBlock(ox, oy, oz, dx, dy, dz, hit);
  }

  private void nearestCloth(
      double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
    for (int i = 0; i < panes.length; i++) {
      if (panes[i].cloth > 0) {
        double t = panes[i].plate.distance(ox, oy, oz, dx, dy, dz, NEAR, hit.distance);
        if (t < hit.distance) {
          hit.distance = t;
          hit.index = i;
          hit.what = Hit.What.CLOTH;
        }
      }
    }
  }

  private void nearestBlock(
      double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
    for (int i = 0; i < blocks.length; i++) {
      double t = blocks[i].distance(ox, oy, oz, dx, dy, dz, NEAR, hit.distance);
      if (t < hit.distance) {
        hit.distance = t;
        hit.index = i;
        hit.what = Hit.What.BLOCK;
      }
    }
  }

  /** Glass, frame and shade of an opening to the outside. */
  static final class Pane {
    final Opening opening;
    final Plate plate;

    /** Share that a scattering cloth lets through; 0 without one. */
    final double cloth;

    private final double normalShare;

    Pane(Opening opening) {
      this.opening = opening;
      this.plate = new Plate(opening.face());
      boolean scatters = opening.shade().map(s -> s.diffusing()).orElse(false);
      double shade = opening.shade().map(s -> s.transmittance()).orElse(1.0);
      this.cloth = scatters ? shade : 0;
      this.normalShare =
          opening.transmittance() * (1 - opening.frameShare()) * (scatters ? 1 : shade);
    }

    /** Share of a ray let through at a point of the hole: glass, frame, clear shade, reveal. */
    double clear(double px, double py, double pz, double dx, double dy, double dz) {
      double cos = Math.abs(plate.nx * dx + plate.ny * dy + plate.nz * dz);
      double depth = opening.revealDepth();
      if (depth > 0) {
        double back = depth * (plate.nx * dx + plate.ny * dy + plate.nz * dz > 0 ? 1 : -1);
        double t = depth / cos;
        double gx = px + t * dx - back * plate.nx;
        double gy = py + t * dy - back * plate.ny;
        double gz = pz + t * dz - back * plate.nz;
        // Where the ray meets the glass, moved square to the wall into the plane of the hole.
        if (plate.distance(
                gx + plate.nx, gy + plate.ny, gz + plate.nz, -plate.nx, -plate.ny, -plate.nz, 0, 2)
            == Double.POSITIVE_INFINITY) {
          return 0;
        }
      }
      return normalShare * GlassPane.relativeTransmittance(cos, opening.panes());
    }
  }
}
