package slantlight.validation;

import java.util.Locale;

/**
 * One value held against the outside world; a row of docs/validation.md.
 *
 * @param subject heading it is filed under, such as "Sun position"
 * @param what the quantity and its inputs
 * @param source author, year, table or equation; "common practice, no source" or "from memory"
 *     where that is the truth
 * @param published the outside value, already formatted
 * @param ours our value, already formatted to no more digits than are stable
 * @param difference difference, already formatted
 * @param holds whether the check holds
 */
public record Check(
    String subject,
    String what,
    String source,
    String published,
    String ours,
    String difference,
    boolean holds) {

  /**
   * A number that must lie within an absolute tolerance of a published one.
   *
   * @param digits digits after the point to print
   */
  public static Check near(
      String subject,
      String what,
      String source,
      double published,
      double ours,
      double tolerance,
      int digits) {
    String f = "%." + digits + "f";
    return new Check(
        subject,
        what,
        source,
        String.format(Locale.ROOT, f, published),
        String.format(Locale.ROOT, f, ours),
        String.format(Locale.ROOT, "within " + tolerance),
        Math.abs(ours - published) <= tolerance);
  }

  /** A number that must lie within a share of a published one. */
  public static Check within(
      String subject,
      String what,
      String source,
      double published,
      double ours,
      double share,
      int digits) {
    String f = "%." + digits + "f";
    return new Check(
        subject,
        what,
        source,
        String.format(Locale.ROOT, f, published),
        String.format(Locale.ROOT, f, ours),
        String.format(Locale.ROOT, "within %s %%", share * 100),
        Math.abs(ours - published) <= share * Math.abs(published));
  }

  /** A statement that must be true. */
  public static Check fact(String subject, String what, String source, String ours, boolean holds) {
    return new Check(subject, what, source, "true", ours, holds ? "holds" : "fails", holds);
  }
}
