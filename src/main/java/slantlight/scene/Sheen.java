package slantlight.scene;

/**
 * Gloss levels of paint by the ranges of the MPI gloss classes G1 to G7 (60 degree units, ASTM
 * D523), each with the representative value used here.
 */
public enum Sheen {
  FLAT(1, 2.5),
  VELVET(2, 7),
  EGGSHELL(3, 17),
  SATIN(4, 28),
  SEMI_GLOSS(5, 52),
  GLOSS(6, 78),
  HIGH_GLOSS(7, 90);

  private final int level;
  private final double gloss60;

  Sheen(int level, double gloss60) {
    this.level = level;
    this.gloss60 = gloss60;
  }

  /** 1 to 7, as in G1 to G7. */
  public int level() {
    return level;
  }

  /** Representative specular gloss at 60 degrees, gloss units. */
  public double gloss60() {
    return gloss60;
  }
}
