package slantlight.report;

import java.util.List;

/** What must be said wherever results are printed. */
public final class Cautions {
  /** What the forecast is and is not. */
  public static final String FORECAST =
      "This is a forecast of visibility from stated assumptions, not a warranty of appearance.";

  /** Who decides on the finish. */
  public static final String CONTRACT =
      "Finish levels, and the light in which the work will be judged, are agreed in the contract"
          + " before work starts.";

  /** Who decides on everything else. */
  public static final String CODES =
      "Follow local codes and the board and compound makers' instructions; anything structural,"
          + " electrical or fire-rated belongs to a licensed professional.";

  /** Eyes and falls. */
  public static final String INSPECTION =
      "On inspection never look at the sun, directly or in a mirror; set ladders and platforms on"
          + " level ground and do not overreach.";

  /** Dust and old coatings. */
  public static final String SANDING =
      "Sand with extraction and a fitted dust mask. In older buildings have paint, board and"
          + " texture tested for lead and asbestos before anything is cut or sanded.";

  /** All of them, in order. */
  public static final List<String> ALL = List.of(FORECAST, CONTRACT, CODES, INSPECTION, SANDING);

  private Cautions() {}
}
