package slantlight.scene.file;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Words for directions in plan. */
public final class Compass {
  /** The eight winds from the drawing's up, clockwise. */
  public static final List<String> WINDS =
      List.of(
          "north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west");

  private static final List<String> SHORT = List.of("n", "ne", "e", "se", "s", "sw", "w", "nw");

  private Compass() {}

  /** Degrees clockwise from north of a compass word such as south, SE or north-west. */
  public static OptionalDouble degrees(String word) {
    String w = word.toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    int i = Math.max(WINDS.indexOf(w), SHORT.indexOf(w));
    for (int k = 0; i < 0 && k < WINDS.size(); k++) {
      i = WINDS.get(k).replace("-", "").equals(w) ? k : -1;
    }
    return i < 0 ? OptionalDouble.empty() : OptionalDouble.of(45.0 * i);
  }

  /** The main wind within 22.5 degrees of an azimuth in degrees, else the wind between. */
  public static String word(double azimuthDeg) {
    double a = ((azimuthDeg % 360) + 360) % 360;
    return WINDS.get((int) Math.floor((a + 22.5 + 1e-9) / 45) % 8);
  }
}
