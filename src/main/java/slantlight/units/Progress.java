package slantlight.units;

/**
 * Hears how far a long computation has come. Called from any thread; an implementation may throw
 * {@link java.util.concurrent.CancellationException} to stop the work.
 */
@FunctionalInterface
public interface Progress {
  /** Says nothing. */
  Progress NONE = (stage, share) -> {};

  /**
   * Tells how far a stage has come.
   *
   * @param stage what is being done, for a person, such as "light between surfaces"
   * @param share share of this stage done, 0 to 1
   */
  void at(String stage, double share);
}
