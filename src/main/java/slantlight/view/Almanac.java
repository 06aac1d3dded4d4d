package slantlight.view;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slantlight.scene.House;
import slantlight.scene.Lamp;
import slantlight.scene.Site;
import slantlight.score.Calendar;
import slantlight.score.Peak;
import slantlight.score.SurfaceScore;
import slantlight.sky.Sun;
import slantlight.sky.SunPath;

/** What the ribbons and the readout tell about days and hours, for the whole house or a part. */
final class Almanac {
  /** Minutes a step of the day ribbon. */
  static final int STEP_MINUTES = 15;

  private final List<SurfaceScore> scores;

  /** Of the surfaces named, or of all scored ones when none is. */
  Almanac(ViewModel model, Optional<String> surfaceId) {
    scores =
        model.score().stream()
            .flatMap(s -> s.surfaces().stream())
            .filter(s -> surfaceId.isEmpty() || surfaceId.get().equals(s.surfaceId()))
            .toList();
  }

  /** Place of the sun. */
  static Sun sun(House house, ZonedDateTime at) {
    Site s = house.site();
    return SunPath.at(s.latitudeDeg(), s.longitudeDeg(), s.elevation(), at.toInstant());
  }

  /** The lamps that are on. */
  static List<Lamp> lampsOn(House house, ZonedDateTime at) {
    double altitude = sun(house, at).altitude();
    return house.lamps().stream().filter(l -> l.lit(at.toLocalTime(), altitude)).toList();
  }

  /** Largest showing of each step of a day; the scored day nearest to it stands for it. */
  double[] day(LocalDate date) {
    double[] out = new double[24 * 60 / STEP_MINUTES];
    for (SurfaceScore s : scores) {
      Calendar c = s.calendar();
      int row = row(c, date.getDayOfYear());
      for (int i = 0; row >= 0 && i < out.length; i++) {
        int column = Math.min(c.columns() - 1, i * STEP_MINUTES / c.stepMinutes());
        out[i] = Math.max(out[i], c.showing(row, column));
      }
    }
    return out;
  }

  /** Largest showing of each day of a year of 365 days. */
  double[] year() {
    double[] out = new double[365];
    for (SurfaceScore s : scores) {
      Calendar c = s.calendar();
      for (int day = 0; day < 365; day++) {
        int row = row(c, day + 1);
        for (int k = 0; row >= 0 && k < c.columns(); k++) {
          out[day] = Math.max(out[day], c.showing(row, k));
        }
      }
    }
    return out;
  }

  /** The scored day nearest to a day of the year, or -1. */
  static int row(Calendar c, int dayOfYear) {
    int best = -1;
    for (int i = 0; i < c.days().size(); i++) {
      if (best < 0
          || Math.abs(c.days().get(i) - dayOfYear) < Math.abs(c.days().get(best) - dayOfYear)) {
        best = i;
      }
    }
    return best;
  }

  /** The moment at which most shows. */
  Optional<Peak> worst() {
    return scores.stream()
        .flatMap(s -> s.worst().stream())
        .max(Comparator.comparingDouble(Peak::showing));
  }

  /** Scored surfaces, worst first. */
  List<SurfaceScore> ranked() {
    return scores.stream()
        .filter(s -> s.worst().isPresent())
        .sorted(Comparator.comparingDouble(s -> -s.worst().get().showing()))
        .toList();
  }
}
