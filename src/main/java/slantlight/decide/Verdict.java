package slantlight.decide;

import java.util.List;

/**
 * The finish level to specify for one surface, and why.
 *
 * @param level 0 to 5: the stricter of the two below, or the user's own when fixed
 * @param byShowing lowest level whose peak stays under the room's limit; 5 when none does
 * @param byStandard lowest level that GA-214 / ASTM C840 assign by use, paint and light
 * @param standardReason the rule that applies, in words, with its name
 * @param reason one plain sentence: what shows, when, from where, why
 * @param unsolved true when even level 5 stays above the room's limit
 * @param notes advice such as "run boards with the light"
 */
public record Verdict(
    String surfaceId,
    int level,
    int byShowing,
    int byStandard,
    String standardReason,
    String reason,
    boolean unsolved,
    List<String> notes) {
  public Verdict {
    notes = List.copyOf(notes);
  }
}
