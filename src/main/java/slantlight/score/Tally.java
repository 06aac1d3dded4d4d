package slantlight.score;

import java.util.ArrayList;
import java.util.List;

/** Showing of a joint or a surface at levels 3, 4 and 5 in every state of the year. */
final class Tally {
  private static final float[] FROM = from();

  private final float[][] showing;
  private final double[][] lengths = new double[3][Band.values().length];
  private double length;

  Tally(LitYear year) {
    showing = new float[3][year.states()];
  }

  private static float[] from() {
    float[] out = new float[Band.values().length];
    for (Band b : Band.values()) {
      out[b.index()] = (float) b.from();
    }
    return out;
  }

  float[][] showing() {
    return showing;
  }

  /** Files a stretch of joint by its own worst showing at each level. */
  void addLength(double metres, float[] own) {
    length += metres;
    for (int level = 0; level < 3; level++) {
      lengths[level][Band.of(own[level]).index()] += metres;
    }
  }

  /** Takes over whatever of another tally shows more, and adds its lengths. */
  void merge(Tally other) {
    length += other.length;
    for (int level = 0; level < 3; level++) {
      float[] mine = showing[level];
      float[] theirs = other.showing[level];
      for (int s = 0; s < mine.length; s++) {
        mine[s] = Math.max(mine[s], theirs[s]);
      }
      for (int b = 0; b < lengths[level].length; b++) {
        lengths[level][b] += other.lengths[level][b];
      }
    }
  }

  double length() {
    return length;
  }

  List<LevelScore> scores(LitYear year) {
    List<LevelScore> out = new ArrayList<>(3);
    for (int level = 0; level < 3; level++) {
      out.add(score(level, year));
    }
    return out;
  }

  private LevelScore score(int level, LitYear year) {
    int bands = Band.values().length;
    double[] clear = new double[bands];
    double[] expected = new double[bands];
    float peak = 0;
    for (int s = 0; s < year.states(); s++) {
      float value = showing[level][s];
      if (year.clear(s)) {
        peak = Math.max(peak, value);
      }
      for (int b = 0; b < bands && value >= FROM[b]; b++) {
        clear[b] += year.clearHours(s);
        expected[b] += year.expectedHours(s);
      }
    }
    List<Double> shares = new ArrayList<>(bands);
    for (int b = 0; b < bands; b++) {
      shares.add(length > 0 ? lengths[level][b] / length : b == 0 ? 1 : 0.0);
    }
    return new LevelScore(level + 3, peak, shares, boxed(clear), boxed(expected));
  }

  private static List<Double> boxed(double[] values) {
    List<Double> out = new ArrayList<>(values.length);
    for (double v : values) {
      out.add(v);
    }
    return out;
  }
}
