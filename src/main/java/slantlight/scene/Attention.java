package slantlight.scene;

/** How hard a room is looked at; it sets how much showing the room can bear. */
public enum Attention {
  /** Nothing may show. */
  SHOWPIECE(1.0, 10),
  /** A trace is accepted, plain joints are not. */
  EVERYDAY(2.5, 50),
  /** Plain joints are accepted, loud ones are not. */
  SERVICE(6.0, 200);

  private final double limit;
  private final double hours;

  Attention(double limit, double hours) {
    this.limit = limit;
    this.hours = hours;
  }

  /** Largest showing (multiples of the noticed-unasked threshold) that the room accepts. */
  public double limit() {
    return limit;
  }

  /**
   * Hours a year for which more than the limit is borne: a glint that lasts some minutes on some
   * days is not worth a skim coat. Ours, not a standard's.
   */
  public double hours() {
    return hours;
  }
}
