package slantlight.decide;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import slantlight.units.Measures;

/**
 * One remedy or combination weighed on one surface.
 *
 * @param changes what is done, house-wide changes first
 * @param level finish level with it
 * @param before largest showing of the year as it is
 * @param after largest showing of the year with the changes
 * @param limit what the room accepts
 * @param solves true when the room bears what still shows
 * @param price in units of the {@link Pricing}; empty when the scene has no rate for it
 */
public record RemedyLine(
    String surfaceId,
    List<Remedy> changes,
    int level,
    double before,
    double after,
    double limit,
    boolean solves,
    OptionalLong price) {
  public RemedyLine {
    changes = List.copyOf(changes);
  }

  /** What is done, in words; metric. */
  public String words() {
    return words(Measures.METRIC);
  }

  /** What is done, in the reader's measures. */
  public String words(Measures reader) {
    return changes.stream().map(c -> c.words(reader)).collect(Collectors.joining(" + "));
  }

  /** Who has to agree. */
  public Set<Agreement> agree() {
    Set<Agreement> out = EnumSet.noneOf(Agreement.class);
    changes.forEach(c -> out.addAll(c.agree()));
    return out;
  }

  public boolean free() {
    return price.isPresent() && price.getAsLong() <= 0;
  }
}
