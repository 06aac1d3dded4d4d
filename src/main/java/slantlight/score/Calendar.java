package slantlight.score;

import java.util.List;

/** Largest showing by day and time of day, level 4, clear weather. */
public final class Calendar {
  private final List<Integer> days;
  private final int stepMinutes;
  private final float[][] showing;

  /**
   * @param days day-of-year numbers (1 to 366) of the rows
   * @param stepMinutes minutes of local clock time per column; column 0 begins at midnight
   * @param showing showing[row][column], 0 where nothing shines; copied
   */
  public Calendar(List<Integer> days, int stepMinutes, float[][] showing) {
    this.days = List.copyOf(days);
    this.stepMinutes = stepMinutes;
    this.showing = new float[showing.length][];
    for (int i = 0; i < showing.length; i++) {
      this.showing[i] = showing[i].clone();
    }
  }

  public List<Integer> days() {
    return days;
  }

  public int stepMinutes() {
    return stepMinutes;
  }

  /** Columns of a row: one per step of the day. */
  public int columns() {
    return 24 * 60 / stepMinutes;
  }

  /** Largest showing on the row's day in the column's step. */
  public float showing(int row, int column) {
    return showing[row][column];
  }
}
