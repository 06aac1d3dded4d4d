package slantlight.decide;

import java.util.Locale;

/** Who has to agree before a remedy can be carried out. */
public enum Agreement {
  BUILDER,
  DESIGNER,
  CLIENT;

  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
