package slantlight.report;

import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiSplitterFactory;
import com.openhtmltopdf.bidi.BidiTextRun;
import java.text.Bidi;
import java.util.ArrayList;
import java.util.List;

/**
 * Splits a paragraph into left-to-right text and the rest (UAX 9 by the JDK). The page library sets
 * runs one after another, so what is nested in right-to-left text, a number or a Latin word, stays
 * in its run and {@link LineReorderer} turns it: a right-to-left paragraph is one run.
 */
final class LineSplitter implements BidiSplitter {
  private BidiTextRun[] runs = {};

  /** Makes one for every paragraph. */
  static final class Factory implements BidiSplitterFactory {
    @Override
    public BidiSplitter createBidiSplitter() {
      return new LineSplitter();
    }
  }

  @Override
  public void setParagraph(String text, byte base) {
    int flag =
        base == RTL
            ? Bidi.DIRECTION_RIGHT_TO_LEFT
            : base == LTR ? Bidi.DIRECTION_LEFT_TO_RIGHT : Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT;
    Bidi bidi = new Bidi(text, flag);
    List<BidiTextRun> found = new ArrayList<>();
    int start = 0;
    for (int i = 0; i < bidi.getRunCount(); i++) {
      byte direction = direction(bidi, i);
      if (i + 1 == bidi.getRunCount() || direction(bidi, i + 1) != direction) {
        int end = bidi.getRunLimit(i);
        found.add(new BidiTextRun(start, end - start, direction));
        start = end;
      }
    }
    runs = found.toArray(BidiTextRun[]::new);
  }

  private static byte direction(Bidi bidi, int run) {
    return bidi.baseIsLeftToRight() && bidi.getRunLevel(run) == 0 ? LTR : RTL;
  }

  @Override
  public int countTextRuns() {
    return runs.length;
  }

  @Override
  public BidiTextRun getVisualRun(int index) {
    return runs[index];
  }

  @Override
  public byte getBaseDirection(String text) {
    Bidi bidi = new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
    return bidi.baseIsLeftToRight() ? LTR : RTL;
  }
}
