package slantlight.decide;

import slantlight.scene.LevelScale;

/**
 * The name of a finish level in another region's scale: a display choice. The scales are not
 * one-to-one; this is the mapping of practice (from memory), not of any standard.
 */
public final class RegionalScale {
  private static final String[] EUROPE = {"-", "Q1", "Q1", "Q2", "Q2 to Q3", "Q4"};
  private static final String[] AUSTRALASIA = {"-", "-", "L3", "L3", "L4", "L5"};

  private RegionalScale() {}

  /**
   * How the scale names a level, or "-" where it has no such class.
   *
   * @param level GA-214 level, 0 to 5
   */
  public static String name(LevelScale scale, int level) {
    return switch (scale) {
      case GA_214 -> "Level " + level;
      case EUROPE_Q -> EUROPE[level];
      case AS_NZS -> AUSTRALASIA[level];
    };
  }

  /** Title of the scale. */
  public static String title(LevelScale scale) {
    return switch (scale) {
      case GA_214 -> "GA-214 / ASTM C840";
      case EUROPE_Q -> "Q classes (Eurogypsum; IGG Merkblatt 2)";
      case AS_NZS -> "AS/NZS 2589:2017";
    };
  }
}
