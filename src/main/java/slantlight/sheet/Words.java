package slantlight.sheet;

import java.time.format.DateTimeFormatter;
import java.util.Locale;
import slantlight.score.Band;
import slantlight.score.JointScore;
import slantlight.score.Peak;
import slantlight.units.LengthUnit;
import slantlight.units.Measures;

/** Short texts that sheets and reports share. */
public final class Words {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("d MMMM 'at' HH:mm", Locale.ENGLISH);

  private static final Measures METRIC = Measures.printed(LengthUnit.M);
  private static final Measures FEET = Measures.printed(LengthUnit.FT);

  private Words() {}

  /** A showing such as {@code 6.8x}. */
  public static String times(double showing) {
    return String.format(Locale.ROOT, showing < 9.95 ? "%.1f\u00d7" : "%.0f\u00d7", showing);
  }

  /** A length in both manners, such as {@code 5.20 m (17' 0 3/4")}. */
  public static String length(double metres) {
    return METRIC.length(metres) + " (" + FEET.length(metres) + ")";
  }

  /** An area in both manners. */
  public static String area(double squareMetres) {
    return METRIC.area(squareMetres) + ", " + FEET.area(squareMetres);
  }

  /** Day and local clock time. */
  public static String when(Peak peak) {
    return WHEN.format(peak.at());
  }

  /** The part of a joint's id that is unique on its surface, such as {@code B3}. */
  public static String shortId(String jointId) {
    return jointId.substring(jointId.lastIndexOf('#') + 1);
  }

  /** Everything that a pointer on a joint should tell. */
  public static String joint(JointScore j) {
    double showing = j.atLevel(4).peakShowing();
    String kind = word(j.joint().kind());
    String head =
        shortId(j.joint().id())
            + ": "
            + kind
            + " joint, "
            + length(j.joint().length())
            + "; level 3 "
            + times(j.atLevel(3).peakShowing())
            + ", level 4 "
            + times(showing)
            + " ("
            + word(Band.of(showing))
            + "), level 5 "
            + times(j.atLevel(5).peakShowing());
    return j.peak()
        .map(p -> head + "; worst " + when(p) + ", " + p.source().label() + ", grazing " + deg(p))
        .orElse(head + "; nobody sees it");
  }

  /** The grazing angle in whole degrees. */
  public static String deg(Peak peak) {
    return Math.round(Math.toDegrees(peak.grazing())) + "\u00b0";
  }

  /** An enum constant as a word. */
  public static String word(Enum<?> e) {
    return e.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
