package slantlight.decide;

import java.util.List;
import java.util.Map;
import slantlight.scene.BoardRun;
import slantlight.scene.BoardSize;

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
 * @param boards stock boards by size
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
    Map<BoardSize, Integer> boards,
    List<String> notes) {
  public ScheduleRow {
    boards = Map.copyOf(boards);
    notes = List.copyOf(notes);
  }
}
