package slantlight.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slantlight.board.Quantities;
import slantlight.decide.Verdict;
import slantlight.score.HouseScore;
import slantlight.sheet.FrontierSheet;

/**
 * Everything a report tells; what was not computed is empty and the report says so.
 *
 * @param verdicts one a scored surface
 * @param quantities one a scored surface, in the order of the score
 * @param pictures the worst moment as lit, at level 4 and then at the recommended level
 */
public record ReportData(
    HouseScore score,
    List<Verdict> verdicts,
    Provenance made,
    List<SurfaceQuantities> quantities,
    Optional<Money> money,
    List<InspectionStep> inspection,
    List<Picture> pictures) {
  public ReportData {
    verdicts = List.copyOf(verdicts);
    quantities = List.copyOf(quantities);
    inspection = List.copyOf(inspection);
    pictures = List.copyOf(pictures);
  }

  /** Material for one surface at its recommended level. */
  public record SurfaceQuantities(String surfaceId, Quantities quantities) {}

  /**
   * What money buys.
   *
   * @param unit what prices are counted in
   * @param byArea true when that is an area of work, for want of rates
   * @param frontier every plan worth having, cheapest first
   * @param proposal the lines of the plan that is proposed
   * @param free remedies that cost nothing
   */
  public record Money(
      String unit,
      boolean byArea,
      List<FrontierSheet.Step> frontier,
      List<String> proposal,
      List<String> free) {
    public Money {
      frontier = List.copyOf(frontier);
      proposal = List.copyOf(proposal);
      free = List.copyOf(free);
    }

    /**
     * At most so many plans of the frontier: the first, the last, the proposed one, and those that
     * take off most showing over the one before.
     */
    List<FrontierSheet.Step> telling(int most) {
      if (frontier.size() <= most) {
        return frontier;
      }
      List<Integer> order = new ArrayList<>();
      for (int i = 0; i < frontier.size(); i++) {
        order.add(i);
      }
      order.sort(Comparator.comparingDouble((Integer i) -> -weight(i)).thenComparingInt(i -> i));
      return order.stream().limit(most).sorted().map(frontier::get).toList();
    }

    private double weight(int i) {
      boolean always = i == 0 || i == frontier.size() - 1 || frontier.get(i).marked();
      return always
          ? Double.POSITIVE_INFINITY
          : frontier.get(i - 1).excess() - frontier.get(i).excess();
    }

    /** The plan that is proposed. */
    Optional<FrontierSheet.Step> proposed() {
      return frontier.stream().filter(FrontierSheet.Step::marked).findFirst();
    }
  }

  /**
   * One look at one surface before primer and paint.
   *
   * @param when date and hour at which the sun itself shows it, or why there is none
   * @param stand where to stand
   * @param lamp where to hold a lamp that rakes it at least as hard
   */
  public record InspectionStep(String surfaceId, String when, String stand, String lamp) {}

  /**
   * A picture.
   *
   * @param png the file's bytes
   * @param alt what it shows, for a person who cannot see it
   * @param caption below it
   */
  @SuppressWarnings("ArrayRecordComponent") // the bytes are written once and never compared
  public record Picture(byte[] png, String alt, String caption) {}

  /** The verdict on a surface. */
  Optional<Verdict> verdict(String surfaceId) {
    return verdicts.stream().filter(v -> v.surfaceId().equals(surfaceId)).findFirst();
  }
}
