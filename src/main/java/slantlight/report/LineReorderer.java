package slantlight.report;

import com.openhtmltopdf.bidi.BidiReorderer;

/**
 * Turns a run of right-to-left text into the order in which it is printed. Letters are not joined:
 * Arabic script is legible in the browser but not well set in the PDF.
 */
final class LineReorderer implements BidiReorderer {
  private static final String MIRRORED = "()[]{}<>\u00ab\u00bb";

  @Override
  public String reorderRTLTextToLTR(String text) {
    StringBuilder out = new StringBuilder(text).reverse();
    for (int i = 0; i < out.length(); i++) {
      int at = MIRRORED.indexOf(out.charAt(i));
      if (at >= 0) {
        out.setCharAt(i, MIRRORED.charAt(at ^ 1));
      }
    }
    return out.toString();
  }

  @Override
  public String shapeText(String text) {
    return text;
  }

  @Override
  public String deshapeText(String text) {
    return text;
  }

  @Override
  public boolean isLiveImplementation() {
    return true;
  }
}
