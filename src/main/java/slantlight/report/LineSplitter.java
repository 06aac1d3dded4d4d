package slantlight.report;

import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiSplitterFactory;
import com.openhtmltopdf.bidi.BidiTextRun;
import java.text.Bidi;

/** Splits a paragraph into runs of one direction, in visual order (UAX 9 by the JDK). */
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
    int count = bidi.getRunCount();
    byte[] levels = new byte[count];
    runs = new BidiTextRun[count];
    for (int i = 0; i < count; i++) {
      levels[i] = (byte) bidi.getRunLevel(i);
      int start = bidi.getRunStart(i);
      byte direction = levels[i] % 2 == 0 ? LTR : RTL;
      runs[i] = new BidiTextRun(start, bidi.getRunLimit(i) - start, direction);
    }
    if (count > 0) {
      Bidi.reorderVisually(levels, 0, runs, 0, count);
    }
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
