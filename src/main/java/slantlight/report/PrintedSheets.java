package slantlight.report;

import slantlight.decide.Showing;
import slantlight.decide.Verdict;
import slantlight.score.Band;
import slantlight.score.SurfaceScore;

/** Which surfaces have their full sheet on paper; on the screen all have. */
public enum PrintedSheets {
  THAT_MATTER(
      "Sheets stand here for the surfaces that need level 5 because of what shows, and for those"
          + " that still show plainly, "
          + Band.PLAIN.from()
          + "\u00d7 or more, at the smooth level specified.") {
    @Override
    boolean has(ReportData data, SurfaceScore s) {
      return data.verdict(s.surfaceId()).map(v -> matters(v, s)).orElse(true);
    }
  },
  ALL("Every surface has its sheet here.") {
    @Override
    boolean has(ReportData data, SurfaceScore s) {
      return true;
    }
  };

  /** From this level on a surface is meant to be smooth. */
  private static final int SMOOTH = 3;

  /** The rule in one sentence, as the report says it. */
  final String rule;

  PrintedSheets(String rule) {
    this.rule = rule;
  }

  abstract boolean has(ReportData data, SurfaceScore s);

  private static boolean matters(Verdict v, SurfaceScore s) {
    return v.byShowing() >= 5
        || (v.level() >= SMOOTH && Showing.at(s, v.level()) >= Band.PLAIN.from());
  }
}
