package slantlight.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slantlight.scene.House;
import slantlight.score.HouseScore;

/** What was assumed, in words a builder can check. */
final class Assumptions {
  private Assumptions() {}

  /** Pairs of what and how. */
  static List<String[]> of(HouseScore score) {
    House house = score.house();
    List<String[]> out = new ArrayList<>();
    out.add(
        new String[] {
          "Sun",
          "NREL solar position, clock time of "
              + house.site().zone().getId()
              + ", the year "
              + score.year()
              + " in steps of "
              + score.stepMinutes()
              + " minutes ("
              + String.format(Locale.ROOT, "%,d", score.moments())
              + " moments with light)."
        });
    out.add(
        new String[] {
          "Weather",
          "Peaks are for clear weather. Expected hours weigh clear and overcast days by the site's"
              + " monthly share of clear sky as the scene states it."
        });
    out.add(
        new String[] {
          "Ground",
          "Reflectance by month as stated in the scene; bright ground, snow and water outside are"
              + " what rakes a ceiling, since the sun itself never strikes it from above."
        });
    out.add(
        new String[] {
          "Ridges",
          "Heights and widths of taped joints by kind and level are typical values of trade"
              + " practice, from memory, not measurements of this house; a crew's own measurements can"
              + " replace them in the scene."
        });
    out.add(
        new String[] {
          "Paint",
          "A diffuse coat of the stated light reflectance value with the sheen of its gloss class;"
              + " evenly applied. Texture and roller stipple, which hide joints, are not counted."
        });
    out.add(
        new String[] {
          "Eye",
          "Contrast sensitivity after Barten (2003) at the brightness of the room, divided by a field"
              + " factor of 2.5 for what is noticed unasked. People differ by a factor of two or so."
        });
    out.add(
        new String[] {
          "Accepted",
          "A showpiece room accepts 1\u00d7, an everyday room 2.5\u00d7, a service room 6\u00d7,"
              + " and more for 10, 50 and 200 hours a year. These limits are a choice, not a standard."
        });
    out.add(
        new String[] {
          "Not covered",
          "Framing out of plane, sagging boards, shrinking framing, cracks, bad paint work, furniture"
              + " and curtains that are not in the scene."
        });
    return out;
  }
}
