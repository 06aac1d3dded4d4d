package slantlight.light;

import java.util.ArrayList;
import java.util.List;
import slantlight.geom.Occluders;
import slantlight.geom.Vec3;
import slantlight.sky.GlassPane;
import slantlight.sky.SkyZones;

/**
 * A piece of a wall outside, or of a cloth behind glass, lit by sky, sun and ground. Light that
 * comes to it from other walls is left out.
 */
final class FacingCell extends OutsideCell {
  private static final double FAR = 1e5;
  private static final int RINGS = 6;
  private static final int SECTORS = 16;

  private final Outdoors outdoors;
  private final Vec3 normal;
  private final double[] points;
  private final double factor;
  private final int panes;
  private List<Piece> groundPieces;

  private record Piece(GroundCell cell, double weight) {}

  /**
   * @param points places at which shade is tested, x, y, z in turn, a little in front
   * @param factor luminance per lx: reflectance / pi, or the cloth's and glass's transmittance / pi
   * @param panes panes of glass in front, 0 for none
   */
  FacingCell(Outdoors outdoors, Vec3 normal, double[] points, double factor, int panes) {
    this.outdoors = outdoors;
    this.normal = normal;
    this.points = points;
    this.factor = factor;
    this.panes = panes;
  }

  @Override
  void fillDense(float[] out) {
    for (int z = 0; z < SkyZones.COUNT; z++) {
      double omega = SkyZones.solidAngle(z) / SkyZones.parts();
      for (int k = 0; k < SkyZones.parts(); k++) {
        Vec3 d = SkyZones.part(z, k);
        double cos = d.dot(normal);
        if (cos > 0) {
          out[z] += (float) (received(cos) * omega * lit(d.x(), d.y(), d.z()));
        }
      }
    }
    for (Piece p : ground()) {
      float[] r = p.cell.response(outdoors.columns());
      for (int c = 0; c < outdoors.columns().dense; c++) {
        out[c] += (float) (p.weight * r[c]);
      }
    }
  }

  @Override
  void addSun(double dx, double dy, double dz, double weight, double[] groups) {
    addBeam(dx, dy, dz, weight, groups);
    for (Piece p : ground()) {
      p.cell.addSun(dx, dy, dz, weight * p.weight, groups);
    }
  }

  @Override
  void addNode(int node, Columns columns, double weight, double[] groups) {
    Vec3 d = columns.nodes.get(node);
    addBeam(d.x(), d.y(), d.z(), weight, groups);
    for (Piece p : ground()) {
      p.cell.addNode(node, columns, weight * p.weight, groups);
    }
  }

  private void addBeam(double dx, double dy, double dz, double weight, double[] groups) {
    double cos = dx * normal.x() + dy * normal.y() + dz * normal.z();
    if (dz > 0 && cos > 0) {
      groups[Columns.INSIDE] += weight * received(cos) * lit(dx, dy, dz);
    }
  }

  private double received(double cos) {
    return factor * cos * GlassPane.relativeTransmittance(cos, panes);
  }

  private double lit(double dx, double dy, double dz) {
    Occluders shell = outdoors.shell();
    int open = 0;
    for (int i = 0; i < points.length; i += 3) {
      if (shell.any(points[i], points[i + 1], points[i + 2], dx, dy, dz, 1e-4, FAR) < 0) {
        open++;
      }
    }
    return open / (points.length / 3.0);
  }

  /** The ground seen in pieces of equal solid angle of the lower hemisphere. */
  private synchronized List<Piece> ground() {
    if (groundPieces == null) {
      List<Piece> list = new ArrayList<>();
      double omega = 2 * Math.PI / (RINGS * SECTORS);
      double x = points[0];
      double y = points[1];
      double z = points[2];
      for (int r = 0; r < RINGS; r++) {
        double dz = -(r + 0.5) / RINGS;
        double s = Math.sqrt(1 - dz * dz);
        for (int c = 0; c < SECTORS; c++) {
          double a = 2 * Math.PI * (c + 0.5) / SECTORS;
          double dx = s * Math.sin(a);
          double dy = s * Math.cos(a);
          double cos = dx * normal.x() + dy * normal.y() + dz * normal.z();
          if (cos > 0) {
            GroundCell cell = outdoors.diffuseGround(x, y, z, dx, dy, dz);
            if (cell != null) {
              list.add(new Piece(cell, received(cos) * omega));
            }
          }
        }
      }
      groundPieces = list;
    }
    return groundPieces;
  }
}
