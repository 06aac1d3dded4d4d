package slantlight.decide;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import slantlight.board.Stock;
import slantlight.scene.BoardRun;

/**
 * One surface as the taper and the painter need it.
 *
 * @param level finish level to specify
 * @param work the level in the words of the standard
 * @param regional the same in the scene's regional scale
 * @param area to be finished, covered parts left out, m2
 * @param tapered length of tapered joints, m
 * @param butt length of butt and cut joints, m
 * @param run direction of the boards
 * @param boards to buy for this surface by itself; a house takes fewer than its surfaces together
 * @param notes advice
 */
public record ScheduleRow(
    String surfaceId,
    String label,
    String room,
    int level,
    String work,
    String regional,
    double area,
    double tapered,
    double butt,
    BoardRun run,
    SortedMap<Stock, Integer> boards,
    List<String> notes) {
  public ScheduleRow {
    boards = Collections.unmodifiableSortedMap(new TreeMap<>(boards));
    notes = List.copyOf(notes);
  }
}
