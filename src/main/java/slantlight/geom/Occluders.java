package slantlight.geom;

import java.util.Arrays;
import java.util.List;

/**
 * Opaque flat faces with holes that stop light from both sides, in a bounding-box tree laid out in
 * plain arrays in depth-first order, each node knowing where to go on when it is missed. Safe for
 * several threads.
 */
public final class Occluders {
  private static final int LEAF = 2;

  /** Boxes are widened by this much, m, so that faces in a box's own side are not missed. */
  private static final double MARGIN = 1e-6;

  /** Share of the way at either end of a line of sight that is left out. */
  private static final double END = 1e-6;

  private final int faces;
  private final double[] plane;
  private final int[] drop;
  private final int[] edgeStart;
  private final double[] edges;
  private final double[] box;
  private final int[] skip;
  private final int[] leafStart;
  private final int[] leafCount;
  private final int[] order;
  private int nodes;

  private Occluders(List<Face> list) {
    faces = list.size();
    plane = new double[4 * faces];
    drop = new int[faces];
    edgeStart = new int[faces + 1];
    int count = 0;
    for (Face f : list) {
      count += f.outer().size();
      for (List<Vec2> h : f.holes()) {
        count += h.size();
      }
    }
    edges = new double[4 * count];
    double[] bounds = new double[6 * faces];
    int e = 0;
    for (int i = 0; i < faces; i++) {
      Face f = list.get(i);
      Vec3 n = f.frame().n();
      plane[4 * i] = n.x();
      plane[4 * i + 1] = n.y();
      plane[4 * i + 2] = n.z();
      plane[4 * i + 3] = n.dot(f.frame().origin());
      double ax = Math.abs(n.x());
      double ay = Math.abs(n.y());
      double az = Math.abs(n.z());
      drop[i] = az >= ax && az >= ay ? 2 : ay >= ax ? 1 : 0;
      edgeStart[i] = e;
      e = addRing(f.frame(), f.outer(), drop[i], e);
      for (List<Vec2> hole : f.holes()) {
        e = addRing(f.frame(), hole, drop[i], e);
      }
      fillBounds(f, bounds, 6 * i);
    }
    edgeStart[faces] = e;
    order = new int[faces];
    for (int i = 0; i < faces; i++) {
      order[i] = i;
    }
    int capacity = Math.max(1, 2 * faces);
    box = new double[6 * capacity];
    skip = new int[capacity];
    leafStart = new int[capacity];
    leafCount = new int[capacity];
    if (faces > 0) {
      build(bounds, 0, faces);
    }
  }

  public static Occluders of(List<Face> faces) {
    return new Occluders(faces);
  }

  public int size() {
    return faces;
  }

  private int addRing(Frame frame, List<Vec2> ring, int axis, int start) {
    int e = start;
    for (int i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
      Vec3 a = frame.toWorld(ring.get(j));
      Vec3 b = frame.toWorld(ring.get(i));
      edges[4 * e] = axis == 0 ? a.y() : a.x();
      edges[4 * e + 1] = axis == 2 ? a.y() : a.z();
      edges[4 * e + 2] = axis == 0 ? b.y() : b.x();
      edges[4 * e + 3] = axis == 2 ? b.y() : b.z();
      e++;
    }
    return e;
  }

  private static void fillBounds(Face f, double[] b, int at) {
    Arrays.fill(b, at, at + 3, Double.POSITIVE_INFINITY);
    Arrays.fill(b, at + 3, at + 6, Double.NEGATIVE_INFINITY);
    for (Vec3 p : f.corners()) {
      b[at] = Math.min(b[at], p.x() - MARGIN);
      b[at + 1] = Math.min(b[at + 1], p.y() - MARGIN);
      b[at + 2] = Math.min(b[at + 2], p.z() - MARGIN);
      b[at + 3] = Math.max(b[at + 3], p.x() + MARGIN);
      b[at + 4] = Math.max(b[at + 4], p.y() + MARGIN);
      b[at + 5] = Math.max(b[at + 5], p.z() + MARGIN);
    }
  }

  /** Splits at the median of the longest side of the centres. */
  private void build(double[] bounds, int from, int to) {
    int node = nodes++;
    double[] centre = new double[6];
    Arrays.fill(centre, 0, 3, Double.POSITIVE_INFINITY);
    Arrays.fill(centre, 3, 6, Double.NEGATIVE_INFINITY);
    Arrays.fill(box, 6 * node, 6 * node + 3, Double.POSITIVE_INFINITY);
    Arrays.fill(box, 6 * node + 3, 6 * node + 6, Double.NEGATIVE_INFINITY);
    for (int i = from; i < to; i++) {
      int b = 6 * order[i];
      for (int a = 0; a < 3; a++) {
        box[6 * node + a] = Math.min(box[6 * node + a], bounds[b + a]);
        box[6 * node + 3 + a] = Math.max(box[6 * node + 3 + a], bounds[b + 3 + a]);
        double c = bounds[b + a] + bounds[b + 3 + a];
        centre[a] = Math.min(centre[a], c);
        centre[3 + a] = Math.max(centre[3 + a], c);
      }
    }
    if (to - from <= LEAF) {
      leafStart[node] = from;
      leafCount[node] = to - from;
    } else {
      int axis = 0;
      for (int a = 1; a < 3; a++) {
        if (centre[3 + a] - centre[a] > centre[3 + axis] - centre[axis]) {
          axis = a;
        }
      }
      final int longest = axis;
      Integer[] part = new Integer[to - from];
      for (int i = from; i < to; i++) {
        part[i - from] = order[i];
      }
      Arrays.sort(
          part,
          (p, q) ->
              Double.compare(
                  bounds[6 * p + longest] + bounds[6 * p + 3 + longest],
                  bounds[6 * q + longest] + bounds[6 * q + 3 + longest]));
      for (int i = from; i < to; i++) {
        order[i] = part[i - from];
      }
      int middle = (from + to) >>> 1;
      build(bounds, from, middle);
      build(bounds, middle, to);
    }
    skip[node] = nodes;
  }

  /** True when a face lies between two points, ends left out by a millionth of the way. */
  public boolean between(double ax, double ay, double az, double bx, double by, double bz) {
    return any(ax, ay, az, bx - ax, by - ay, bz - az, END, 1 - END) >= 0;
  }

  /**
   * Faces that may lie between places of two polygons: those that reach into the box of both and
   * whose plane parts some corner of the one from some corner of the other.
   *
   * @param from corners, x, y and z of each in turn; one for a single point
   * @param to corners of the other
   * @param out receives the faces; {@link #size()} places are enough
   * @return how many
   */
  public int between(double[] from, double[] to, int[] out) {
    double[] all = new double[6];
    Arrays.fill(all, 0, 3, Double.POSITIVE_INFINITY);
    Arrays.fill(all, 3, 6, Double.NEGATIVE_INFINITY);
    widen(all, from);
    widen(all, to);
    int found = 0;
    int node = 0;
    while (node < nodes) {
      int b = 6 * node;
      if (box[b] > all[3]
          || box[b + 3] < all[0]
          || box[b + 1] > all[4]
          || box[b + 4] < all[1]
          || box[b + 2] > all[5]
          || box[b + 5] < all[2]) {
        node = skip[node];
        continue;
      }
      for (int k = leafStart[node], end = k + leafCount[node]; k < end; k++) {
        if (parts(order[k], from, to)) {
          out[found++] = order[k];
        }
      }
      node++;
    }
    return found;
  }

  private static void widen(double[] all, double[] corners) {
    for (int i = 0; i < corners.length; i++) {
      all[i % 3] = Math.min(all[i % 3], corners[i]);
      all[3 + i % 3] = Math.max(all[3 + i % 3], corners[i]);
    }
  }

  /** True when the plane of a face has corners of two polygons on its two sides. */
  private boolean parts(int face, double[] from, double[] to) {
    boolean fromAbove = false;
    boolean fromBelow = false;
    for (int i = 0; i < from.length; i += 3) {
      double h = height(face, from[i], from[i + 1], from[i + 2]);
      fromAbove |= h > 0;
      fromBelow |= h < 0;
    }
    for (int i = 0; i < to.length; i += 3) {
      double h = height(face, to[i], to[i + 1], to[i + 2]);
      if (h > 0 ? fromBelow : h < 0 && fromAbove) {
        return true;
      }
    }
    return false;
  }

  private double height(int face, double x, double y, double z) {
    int p = 4 * face;
    return plane[p] * x + plane[p + 1] * y + plane[p + 2] * z - plane[p + 3];
  }

  /**
   * True when one of some faces lies between two points, ends left out by a millionth of the way.
   *
   * @param count how many of {@code some} count
   */
  public boolean between(
      int[] some, int count, double ax, double ay, double az, double bx, double by, double bz) {
    for (int k = 0; k < count; k++) {
      double t = hit(some[k], ax, ay, az, bx - ax, by - ay, bz - az);
      if (t > END && t < 1 - END) {
        return true;
      }
    }
    return false;
  }

  /**
   * Some face met by the ray {@code o + t d} with {@code t0 < t < t1}, or -1: the cheapest answer
   * to "is it blocked".
   */
  public int any(
      double ox, double oy, double oz, double dx, double dy, double dz, double t0, double t1) {
    double ix = 1 / dx;
    double iy = 1 / dy;
    double iz = 1 / dz;
    int node = 0;
    while (node < nodes) {
      if (!meets(node, ox, oy, oz, ix, iy, iz, t0, t1)) {
        node = skip[node];
        continue;
      }
      int count = leafCount[node];
      for (int k = leafStart[node], end = k + count; k < end; k++) {
        int f = order[k];
        double t = hit(f, ox, oy, oz, dx, dy, dz);
        if (t > t0 && t < t1) {
          return f;
        }
      }
      node++;
    }
    return -1;
  }

  /**
   * The nearest face met by the ray with {@code t0 < t < t1}, or -1.
   *
   * @param tOut receives the parameter of the hit
   */
  public int nearest(
      double ox,
      double oy,
      double oz,
      double dx,
      double dy,
      double dz,
      double t0,
      double t1,
      double[] tOut) {
    double ix = 1 / dx;
    double iy = 1 / dy;
    double iz = 1 / dz;
    double best = t1;
    int found = -1;
    int node = 0;
    while (node < nodes) {
      if (!meets(node, ox, oy, oz, ix, iy, iz, t0, best)) {
        node = skip[node];
        continue;
      }
      int count = leafCount[node];
      for (int k = leafStart[node], end = k + count; k < end; k++) {
        int f = order[k];
        double t = hit(f, ox, oy, oz, dx, dy, dz);
        if (t > t0 && t < best) {
          best = t;
          found = f;
        }
      }
      node++;
    }
    tOut[0] = best;
    return found;
  }

  private boolean meets(
      int node,
      double ox,
      double oy,
      double oz,
      double ix,
      double iy,
      double iz,
      double t0,
      double t1) {
    int b = 6 * node;
    int sx = ix >= 0 ? 0 : 3;
    int sy = iy >= 0 ? 0 : 3;
    int sz = iz >= 0 ? 0 : 3;
    double near = (box[b + sx] - ox) * ix;
    double far = (box[b + 3 - sx] - ox) * ix;
    double y0 = (box[b + 1 + sy] - oy) * iy;
    double y1 = (box[b + 4 - sy] - oy) * iy;
    double z0 = (box[b + 2 + sz] - oz) * iz;
    double z1 = (box[b + 5 - sz] - oz) * iz;
    near = y0 > near ? y0 : near;
    near = z0 > near ? z0 : near;
    far = y1 < far ? y1 : far;
    far = z1 < far ? z1 : far;
    // NaN (a ray in the plane of a box side) must count as a hit: hence the negated tests.
    return !(near > far) && !(far < t0) && !(near > t1);
  }

  private double hit(int f, double ox, double oy, double oz, double dx, double dy, double dz) {
    int p = 4 * f;
    double nx = plane[p];
    double ny = plane[p + 1];
    double nz = plane[p + 2];
    double facing = nx * dx + ny * dy + nz * dz;
    double t = (plane[p + 3] - nx * ox - ny * oy - nz * oz) / facing;
    if (!(t > 0)) {
      return -1;
    }
    int axis = drop[f];
    double a = axis == 0 ? oy + t * dy : ox + t * dx;
    double b = axis == 2 ? oy + t * dy : oz + t * dz;
    boolean in = false;
    for (int e = 4 * edgeStart[f], end = 4 * edgeStart[f + 1]; e < end; e += 4) {
      double b0 = edges[e + 1];
      double b1 = edges[e + 3];
      if ((b0 > b) != (b1 > b)) {
        double a0 = edges[e];
        if (a < (edges[e + 2] - a0) * (b - b0) / (b1 - b0) + a0) {
          in = !in;
        }
      }
    }
    return in ? t : -1;
  }
}
