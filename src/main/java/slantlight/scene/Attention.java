package slantlight.scene;

/** How hard a room is looked at; it sets how much showing the room can bear. */
public enum Attention {
  /** Nothing may show. */
  SHOWPIECE(1.0),
  /** A trace is accepted, plain joints are not. */
  EVERYDAY(2.5),
  /** Plain joints are accepted, loud ones are not. */
  SERVICE(6.0);

  private final double limit;

  Attention(double limit) {
    this.limit = limit;
  }

  /** Largest showing (multiples of the noticed-unasked threshold) that the room accepts. */
  public double limit() {
    return limit;
  }
}
