package slantlight.sight;

import java.util.EnumMap;
import java.util.Map;

/**
 * Ridge shapes by what left them and by finish level, from {@code ridges.csv}, and the sheen
 * mismatch by level, from {@code mismatch.csv}. Each row carries its source; none is a measurement.
 */
public final class RidgeTable {
  private static final int LEVELS = 6;
  private static final RidgeTable STANDARD = load();

  private final Map<RidgeKind, JointRidge[]> ridges;
  private final double[] roughnessGain;

  private RidgeTable(Map<RidgeKind, JointRidge[]> ridges, double[] roughnessGain) {
    this.ridges = ridges;
    this.roughnessGain = roughnessGain;
  }

  /** The table that ships with the program. */
  public static RidgeTable standard() {
    return STANDARD;
  }

  /**
   * Ridge left at a finish level.
   *
   * @param level 0 to 5
   */
  public JointRidge ridge(RidgeKind kind, int level) {
    return ridges.get(kind)[checked(level)];
  }

  /**
   * Share by which the paint's lobe is rougher over compound than over paper.
   *
   * @param level 0 to 5
   */
  public double roughnessGain(int level) {
    return roughnessGain[checked(level)];
  }

  private static int checked(int level) {
    if (level < 0 || level >= LEVELS) {
      throw new IllegalArgumentException("a finish level is 0 to 5, not " + level);
    }
    return level;
  }

  private static RidgeTable load() {
    Map<RidgeKind, JointRidge[]> ridges = new EnumMap<>(RidgeKind.class);
    for (String[] row : DataTable.read("ridges.csv").rows()) {
      RidgeKind kind = RidgeKind.valueOf(row[0]);
      JointRidge[] levels = ridges.computeIfAbsent(kind, k -> new JointRidge[LEVELS]);
      levels[Integer.parseInt(row[1])] =
          new JointRidge(
              new RaisedCosine(metres(row[2]), metres(row[3])),
              new RaisedCosine(metres(row[4]), metres(row[5])),
              Double.parseDouble(row[6]),
              Double.parseDouble(row[7]),
              row[8]);
    }
    double[] gain = new double[LEVELS];
    for (String[] row : DataTable.read("mismatch.csv").rows()) {
      gain[Integer.parseInt(row[0])] = Double.parseDouble(row[1]);
    }
    return new RidgeTable(ridges, gain);
  }

  private static double metres(String mm) {
    return Double.parseDouble(mm) / 1000;
  }
}
