package slantlight.report;

import com.ibm.icu.text.ArabicShaping;
import com.ibm.icu.text.ArabicShapingException;
import com.ibm.icu.text.Bidi;
import com.openhtmltopdf.bidi.BidiReorderer;

/**
 * Sets right-to-left text for the PDF: Arabic letters are joined, as presentation forms, by the
 * rules of The Unicode Standard, section 9.2, and a run is turned into the order in which it is
 * printed (Unicode Standard Annex 9), brackets mirrored, marks behind their letters.
 */
final class LineReorderer implements BidiReorderer {
  private static final int LOGICAL = ArabicShaping.TEXT_DIRECTION_LOGICAL;
  private static final ArabicShaping JOIN =
      new ArabicShaping(ArabicShaping.LETTERS_SHAPE | ArabicShaping.LENGTH_GROW_SHRINK | LOGICAL);
  private static final ArabicShaping PART =
      new ArabicShaping(ArabicShaping.LETTERS_UNSHAPE | ArabicShaping.LENGTH_GROW_SHRINK | LOGICAL);

  @Override
  public String reorderRTLTextToLTR(String text) {
    return new Bidi(text, Bidi.RTL).writeReordered(Bidi.DO_MIRRORING | Bidi.KEEP_BASE_COMBINING);
  }

  @Override
  public String shapeText(String text) {
    return shaped(JOIN, text);
  }

  @Override
  public String deshapeText(String text) {
    return shaped(PART, text);
  }

  @Override
  public boolean isLiveImplementation() {
    return true;
  }

  private static String shaped(ArabicShaping way, String text) {
    try {
      return way.shape(text);
    } catch (ArabicShapingException e) {
      throw new IllegalStateException("text of growing length always has room", e);
    }
  }
}
