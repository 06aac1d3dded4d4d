package slantlight.sheet;

/**
 * What a mark is coloured with: an ink, which paper and night print each in its way, or one rgb.
 */
public sealed interface Colour permits Ink, Colour.Plain {
  /** Colour on light paper, 0xRRGGBB, sRGB. */
  int onLight();

  /** Colour on light paper as in CSS. */
  default String hex() {
    return Ink.hex(onLight());
  }

  /** A colour of its own, such as one of a scale, 0xRRGGBB, sRGB. */
  record Plain(int onLight) implements Colour {}
}
