package slantlight.scene.file;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slantlight.scene.Fault;

/** Gathers the faults of one file. */
public final class Faults {
  /** No more faults than this are told; nobody mends a thousand at a time. */
  public static final int MOST = 200;

  private final String file;
  private final List<Fault> all = new ArrayList<>();
  private int untold;

  public Faults(String file) {
    this.file = file;
  }

  /** Adds a fault at a place. */
  public void add(Node.Place at, String what, String expected) {
    add(at, what, expected, Optional.empty());
  }

  /** Adds a fault at a place, with the nearest valid choice. */
  public void add(Node.Place at, String what, String expected, Optional<String> nearest) {
    if (full()) {
      untold++;
      return;
    }
    all.add(new Fault(file, at.line(), at.column(), at.path(), plain(what), expected, nearest));
  }

  /** Adds a fault of the file as a whole. */
  public void whole(String what, String expected) {
    all.add(new Fault(file, 0, 0, "$", plain(what), expected, Optional.empty()));
  }

  /** Text of a file may steer a terminal: control characters, those above 127 too, go out as ?. */
  private static String plain(String what) {
    return what.replaceAll("\\p{Cc}", "?");
  }

  /** True when no more faults will be told, so that no choice need be looked for. */
  boolean full() {
    return all.size() >= MOST;
  }

  public boolean none() {
    return all.isEmpty();
  }

  /** The faults in the order of the file, repeated ones once. */
  public List<Fault> sorted() {
    List<Fault> out =
        new ArrayList<>(
            all.stream()
                .distinct()
                .sorted(Comparator.comparingInt(Fault::line).thenComparingInt(Fault::column))
                .toList());
    if (untold > 0) {
      out.add(
          new Fault(
              file,
              0,
              0,
              "$",
              "there are " + untold + " more faults",
              "mend these first and check again",
              Optional.empty()));
    }
    return out;
  }

  /**
   * The choice most like a word, by the number of single-letter edits, if it is near enough to be
   * meant.
   */
  public static Optional<String> nearest(String word, Collection<String> choices) {
    String w = word.toLowerCase(Locale.ROOT);
    if (w.length() > 80) {
      return Optional.empty();
    }
    return choices.stream()
        .min(
            Comparator.comparingInt((String c) -> edits(w, c.toLowerCase(Locale.ROOT)))
                .thenComparing(Comparator.naturalOrder()))
        .filter(c -> edits(w, c.toLowerCase(Locale.ROOT)) <= Math.max(2, c.length() / 2));
  }

  /** Edits between two words, a swap of neighbours counting one (optimal string alignment). */
  static int edits(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int k = 0; k <= b.length(); k++) {
        if (i == 0 || k == 0) {
          d[i][k] = i + k;
          continue;
        }
        int same = a.charAt(i - 1) == b.charAt(k - 1) ? 0 : 1;
        d[i][k] = Math.min(Math.min(d[i - 1][k], d[i][k - 1]) + 1, d[i - 1][k - 1] + same);
        if (i > 1
            && k > 1
            && a.charAt(i - 1) == b.charAt(k - 2)
            && a.charAt(i - 2) == b.charAt(k - 1)) {
          d[i][k] = Math.min(d[i][k], d[i - 2][k - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
