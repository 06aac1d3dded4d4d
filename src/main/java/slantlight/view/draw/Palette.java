package slantlight.view.draw;

import java.util.List;
import slantlight.score.Band;

/**
 * The colours. Showing runs from pale to dark, so that it reads in grey and with any colour-vision
 * deficiency; hue only helps. Values are 0xRRGGBB, sRGB.
 */
public final class Palette {
  /** Ground of all panels: drawing paper. */
  public static final int PAPER = 0xf6f3ec;

  /** Panels that stand on the paper. */
  public static final int SHEET = 0xfffdf8;

  /** Lines between panels. */
  public static final int RULE = 0xd9d3c6;

  /** Main type and lines. */
  public static final int INK = 0x22282c;

  /** Secondary type. */
  public static final int SOFT_INK = 0x5d6468;

  /** What the user has chosen, and what can be pulled. */
  public static final int ACCENT = 0x1f5f73;

  /** The sun. */
  public static final int SUN = 0xe8a317;

  /** Night, and the surround when presenting. */
  public static final int NIGHT = 0x1b2126;

  /** Type on {@link #NIGHT}. */
  public static final int CHALK = 0xf2eee4;

  /** Secondary type on {@link #NIGHT}. */
  public static final int SOFT_CHALK = 0xb9b6ac;

  /** Plaster of the model where nothing is said about it. */
  public static final int PLASTER = 0xece7dc;

  /** Floors of the model. */
  public static final int BOARDS = 0xd3c4ab;

  /** Glass of the model. */
  public static final int GLASS = 0xa9c6d3;

  private static final int[] SHOWING = {0xc6d0cf, 0xd8962f, 0xb04020, 0x4a1236};
  private static final int[] LEVELS = {
    0xf3efe7, 0xf0ebe0, 0xece7dc, 0xe2e6df, 0xb9d2d0, 0x7fadb5,
  };

  private Palette() {}

  /** Flat colour of a band. */
  public static int of(Band band) {
    return SHOWING[List.of(Band.values()).indexOf(band)];
  }

  /** Type that reads on the colour of a band. */
  public static int on(Band band) {
    return band == Band.QUIET || band == Band.TRACE ? INK : SHEET;
  }

  /** The colours of the bands, quiet first. */
  public static List<Integer> bands() {
    return java.util.Arrays.stream(SHOWING).boxed().toList();
  }

  /** Colour of a showing: band colours at the middle of each band, mixed between in log steps. */
  public static int ofShowing(double showing) {
    double[] at = {0.6, 1.5, 3.8, 9};
    if (!(showing > at[0])) {
      return SHOWING[0];
    }
    for (int i = 1; i < at.length; i++) {
      if (showing < at[i]) {
        return mix(
            SHOWING[i - 1],
            SHOWING[i],
            Math.log(showing / at[i - 1]) / Math.log(at[i] / at[i - 1]));
      }
    }
    return SHOWING[at.length - 1];
  }

  /** Tint of a surface that needs a finish level from 0 to 5. */
  public static int ofLevel(int level) {
    return LEVELS[Math.max(0, Math.min(5, level))];
  }

  /** Mix in the sRGB values, t from 0 (a) to 1 (b). */
  public static int mix(int a, int b, double t) {
    int out = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
      int from = a >> shift & 255;
      int to = b >> shift & 255;
      out |= (int) Math.round(from + (to - from) * t) << shift;
    }
    return out;
  }
}
