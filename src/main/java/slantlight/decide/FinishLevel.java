package slantlight.decide;

/**
 * What each finish level asks of the finisher, in short; a paraphrase of GA-214 and ASTM C840, each
 * level standing alone.
 */
public enum FinishLevel {
  L0("No taping, finishing or accessories"),
  L1("Tape set in joint compound; surface free of excess compound, tool marks and ridges allowed"),
  L2("Tape embedded and wiped, one coat over fasteners and accessories; tool marks allowed"),
  L3("Tape and one coat on joints and angles, two on fasteners; smooth, no tool marks or ridges"),
  L4("Tape and two coats on flat joints, one on angles, three on fasteners; smooth throughout"),
  L5("As level 4, then a thin skim coat, or a material made for it, over the entire surface");

  private final String work;

  FinishLevel(String work) {
    this.work = work;
  }

  /** The level of that number, 0 to 5. */
  public static FinishLevel of(int level) {
    return values()[level];
  }

  /** The work, in one line. */
  public String work() {
    return work;
  }
}
