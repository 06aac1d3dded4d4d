package slantlight.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import slantlight.geom.Face;
import slantlight.geom.Vec2;

/**
 * A surface cut along a grid that passes through every corner of its outline and holes, so that
 * rectangular surfaces need no cut cells. Light is known at the nodes and linear between them.
 */
final class SurfaceGrid {
  /** How far from an edge light is sampled instead of on it, as a share of the cell. */
  private static final double INSET = 0.12;

  private final double[] us;
  private final double[] vs;
  private final List<Vec2> points = new ArrayList<>();
  private final List<Integer> triangles = new ArrayList<>();
  private final Vec2[] samples;

  /**
   * Cuts a face.
   *
   * @param step largest cell side, m
   */
  SurfaceGrid(Face face, double step) {
    us = lines(face, true, step);
    vs = lines(face, false, step);
    samples = new Vec2[us.length * vs.length];
    boolean square = square(face);
    Geometry region = square ? Outlines.nothing() : Outlines.of(face);
    PreparedGeometry prepared = PreparedGeometryFactory.prepare(region);
    int[] nodePoint = new int[samples.length];
    Arrays.fill(nodePoint, -1);
    Vec2[] pull = new Vec2[samples.length];
    int[] pulls = new int[samples.length];
    for (int j = 0; j + 1 < vs.length; j++) {
      for (int i = 0; i + 1 < us.length; i++) {
        Vec2 centre = new Vec2((us[i] + us[i + 1]) / 2, (vs[j] + vs[j + 1]) / 2);
        Geometry part = Outlines.nothing();
        boolean full = square;
        Vec2 middle = centre;
        if (square) {
          if (!face.contains(centre)) {
            continue;
          }
        } else {
          Geometry cell = cell(i, j);
          if (!prepared.intersects(cell)) {
            continue;
          }
          full = prepared.covers(cell);
          part = full ? cell : Outlines.common(region, cell);
          if (Outlines.polygons(part).isEmpty()) {
            continue;
          }
          middle = new Vec2(part.getCentroid().getX(), part.getCentroid().getY());
        }
        int[] corners = {node(i, j), node(i + 1, j), node(i + 1, j + 1), node(i, j + 1)};
        for (int n : corners) {
          pull[n] = pull[n] == null ? middle : pull[n].plus(middle);
          pulls[n]++;
        }
        if (full) {
          int[] p = new int[4];
          for (int k = 0; k < 4; k++) {
            if (nodePoint[corners[k]] < 0) {
              nodePoint[corners[k]] = points.size();
              points.add(at(corners[k]));
            }
            p[k] = nodePoint[corners[k]];
          }
          triangles.addAll(List.of(p[0], p[1], p[2], p[0], p[2], p[3]));
        } else {
          Outlines.triangles(
              part,
              t -> {
                for (Vec2 corner : t) {
                  triangles.add(points.size());
                  points.add(corner);
                }
              });
        }
      }
    }
    for (int n = 0; n < samples.length; n++) {
      if (pulls[n] > 0) {
        samples[n] = inside(face, at(n), pull[n].times(1.0 / pulls[n]));
      }
    }
  }

  private Geometry cell(int i, int j) {
    return Outlines.polygon(
        List.of(
            new Vec2(us[i], vs[j]),
            new Vec2(us[i + 1], vs[j]),
            new Vec2(us[i + 1], vs[j + 1]),
            new Vec2(us[i], vs[j + 1])));
  }

  /** True when every edge runs along u or v, so that each cell is wholly in or wholly out. */
  private static boolean square(Face face) {
    List<List<Vec2>> rings = new ArrayList<>(face.holes());
    rings.add(face.outer());
    for (List<Vec2> ring : rings) {
      for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
        Vec2 d = ring.get(i).minus(ring.get(j));
        if (Math.abs(d.x()) > 1e-3 && Math.abs(d.y()) > 1e-3) {
          return false;
        }
      }
    }
    return true;
  }

  /** The node moved off the edge toward its cells, as far as it takes to be on the face. */
  private static Vec2 inside(Face face, Vec2 node, Vec2 cells) {
    for (double t = INSET; t < 1; t += INSET) {
      Vec2 p = node.lerp(cells, t);
      if (face.contains(p)) {
        return p;
      }
    }
    return cells;
  }

  private static double[] lines(Face face, boolean u, double step) {
    TreeSet<Double> at = new TreeSet<>();
    List<List<Vec2>> rings = new ArrayList<>(face.holes());
    rings.add(face.outer());
    for (List<Vec2> ring : rings) {
      for (Vec2 p : ring) {
        // Corners closer than a millimetre share a line.
        at.add(Math.round((u ? p.x() : p.y()) * 1000) / 1000.0);
      }
    }
    double low = face.outer().stream().mapToDouble(p -> u ? p.x() : p.y()).min().orElseThrow();
    double high = face.outer().stream().mapToDouble(p -> u ? p.x() : p.y()).max().orElseThrow();
    at.pollFirst();
    at.pollLast();
    at.add(low);
    at.add(high);
    List<Double> out = new ArrayList<>();
    Double last = null;
    for (double x : at) {
      if (last != null) {
        int parts = (int) Math.ceil((x - last) / step - 1e-9);
        for (int i = 1; i < parts; i++) {
          out.add(last + (x - last) * i / parts);
        }
      }
      out.add(x);
      last = x;
    }
    return out.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private int node(int i, int j) {
    return j * us.length + i;
  }

  private Vec2 at(int node) {
    return new Vec2(us[node % us.length], vs[node / us.length]);
  }

  /** How many nodes the grid has, used or not. */
  int nodes() {
    return samples.length;
  }

  /** Where light is sampled for a node, plane coordinates, or null when no cell uses it. */
  Vec2 sample(int node) {
    return samples[node];
  }

  /** Corners of the triangles, plane coordinates. */
  List<Vec2> points() {
    return points;
  }

  /** Three indices of {@link #points} a triangle, counter-clockwise seen from inside. */
  List<Integer> triangles() {
    return triangles;
  }

  /** Nodes and weights that give the value at a plane point. */
  Blend blend(Vec2 p) {
    int i = cell(us, p.x());
    int j = cell(vs, p.y());
    double fu = clamp((p.x() - us[i]) / (us[i + 1] - us[i]));
    double fv = clamp((p.y() - vs[j]) / (vs[j + 1] - vs[j]));
    int[] nodes = {node(i, j), node(i + 1, j), node(i, j + 1), node(i + 1, j + 1)};
    double[] weights = {(1 - fu) * (1 - fv), fu * (1 - fv), (1 - fu) * fv, fu * fv};
    double sum = 0;
    for (int k = 0; k < 4; k++) {
      if (samples[nodes[k]] == null) {
        weights[k] = 0;
      }
      sum += weights[k];
    }
    for (int k = 0; k < 4; k++) {
      weights[k] = sum == 0 ? 0 : weights[k] / sum;
    }
    return new Blend(nodes, weights);
  }

  private static int cell(double[] lines, double x) {
    int i = Arrays.binarySearch(lines, x);
    int low = i >= 0 ? i : -i - 2;
    return Math.max(0, Math.min(lines.length - 2, low));
  }

  private static double clamp(double t) {
    return Math.max(0, Math.min(1, t));
  }

  /** Four nodes and their weights, which sum to 1. */
  static final class Blend {
    final int[] nodes;
    final double[] weights;

    private Blend(int[] nodes, double[] weights) {
      this.nodes = nodes;
      this.weights = weights;
    }
  }
}
