package slantlight.sheet;

import java.util.Locale;
import slantlight.score.Band;

/**
 * What a mark means, which decides its colour on light paper and on dark. The bands of showing run
 * monotonically away from the paper's lightness, so they read in grey and with any colour-vision
 * deficiency.
 */
public enum Ink implements Colour {
  PAPER(0xfffdf8, 0x1b2126),
  /** Main lines and text. */
  LINE(0x22282c, 0xf2eee4),
  /** Secondary text and dimensions. */
  SOFT(0x5d6468, 0xb9b6ac),
  /** Grids and tick marks. */
  FAINT(0xd9d3c6, 0x434a4f),
  /** Board outlines. */
  BOARD(0xa8a294, 0x6d7478),
  /** Regions nobody sees. */
  COVER(0xece7dc, 0x2a3237),
  GLASS(0xd3e3e9, 0x27414c),
  GLASS_EDGE(0x1f5f73, 0x7fb4c8),
  LAMP(0x7a5200, 0xf0c25a),
  SUN(0xb86e00, 0xf2b63d),
  LIGHT(0x8a5a00, 0xf2b63d),
  GROUND(0xc9bfa9, 0x4a4538),
  ACCENT(0x1f5f73, 0x7fb4c8),
  NIGHT(0xe6e8e6, 0x12171a),
  QUIET(0xb9c4c3, 0x414b4e),
  /** Quiet joints as lines, which must be seen where areas need not. */
  QUIET_LINE(0x7f8b8b, 0x7c8789),
  TRACE(0xd0902c, 0x9a6a1f),
  PLAIN(0xb94a26, 0xe2714a),
  LOUD(0x4a1236, 0xffd0e6);

  private final int light;
  private final int dark;

  Ink(int light, int dark) {
    this.light = light;
    this.dark = dark;
  }

  @Override
  public int onLight() {
    return light;
  }

  /** Colour on dark paper, 0xRRGGBB, sRGB. */
  public int onDark() {
    return dark;
  }

  /** Colour on dark paper as in CSS. */
  public String darkHex() {
    return hex(dark);
  }

  /** The name used in class names and CSS variables. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Area colour of a band. */
  public static Ink of(Band band) {
    return switch (band) {
      case QUIET -> QUIET;
      case TRACE -> TRACE;
      case PLAIN -> PLAIN;
      case LOUD -> LOUD;
    };
  }

  static String hex(int rgb) {
    return String.format(Locale.ROOT, "#%06x", rgb);
  }
}
