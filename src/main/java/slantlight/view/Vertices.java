package slantlight.view;

import java.util.Arrays;
import slantlight.geom.Vec3;

/** Vertex values and indices gathered before they go to the card. */
final class Vertices {
  private final int stride;
  private float[] data = new float[1024];
  private int[] index = new int[512];
  private int size;
  private int indices;

  /**
   * An empty list.
   *
   * @param stride floats a vertex
   */
  Vertices(int stride) {
    this.stride = stride;
  }

  Vertices add(double v) {
    if (size == data.length) {
      data = Arrays.copyOf(data, 2 * size);
    }
    data[size++] = (float) v;
    return this;
  }

  Vertices add(Vec3 v) {
    return add(v.x()).add(v.y()).add(v.z());
  }

  /** Colour as red, green, blue (0 to 1) and alpha, sRGB values. */
  Vertices add(int rgb, double alpha) {
    return add((rgb >> 16 & 255) / 255.0)
        .add((rgb >> 8 & 255) / 255.0)
        .add((rgb & 255) / 255.0)
        .add(alpha);
  }

  /** How many whole vertices there are. */
  int vertices() {
    return size / stride;
  }

  void index(int i) {
    if (indices == index.length) {
      index = Arrays.copyOf(index, 2 * indices);
    }
    index[indices++] = i;
  }

  /** How many indices there are. */
  int indices() {
    return indices;
  }

  /** A line of constant width from a to b. */
  void line(Vec3 a, Vec3 b, int rgb, double alpha) {
    int first = vertices();
    // The second end looks on beyond itself, so that both ends have the same left and right.
    Vec3 beyond = b.plus(b.minus(a));
    add(a).add(b).add(1).add(rgb, alpha);
    add(a).add(b).add(-1).add(rgb, alpha);
    add(b).add(beyond).add(1).add(rgb, alpha);
    add(b).add(beyond).add(-1).add(rgb, alpha);
    for (int k : new int[] {0, 1, 2, 1, 3, 2}) {
      index(first + k);
    }
  }

  float[] data() {
    return Arrays.copyOf(data, size);
  }

  int[] index() {
    return Arrays.copyOf(index, indices);
  }
}
