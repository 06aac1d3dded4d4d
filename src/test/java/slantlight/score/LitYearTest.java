package slantlight.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import slantlight.TestHouses;
import slantlight.geom.Vec3;
import slantlight.scene.Distribution;
import slantlight.scene.House;
import slantlight.scene.OnHours;
import slantlight.scene.Site;
import slantlight.scene.SkylinePoint;
import slantlight.sky.Weather;

class LitYearTest {
  private static final House ROOM = TestHouses.boxRoom(4, 5, 2.5, 1, 3, 1, 2, 0.8);

  @Test
  void daylightHoursOfAYearAreAboutHalfOfAllHours() {
    // Every place has the sun's centre up for half the year plus about 1 to 3 % for refraction
    // (from memory; Meeus, Astronomical Algorithms, ch. 15, for the refraction of 34').
    LitYear year = LitYear.of(ROOM, every(5));
    assertThat(clearHours(year)).isBetween(8760 * 0.5, 8760 * 0.53);
  }

  @Test
  void clearAndOvercastSharesAddUpToDaylight() {
    LitYear year = LitYear.of(ROOM, every(5));
    double expected = 0;
    for (int s = 0; s < year.states(); s++) {
      expected += year.expectedHours(s);
    }
    assertThat(expected).isCloseTo(clearHours(year), within(1e-6));
  }

  @Test
  void everyNightWithTheSameLampsIsOneState() {
    House lit =
        Variants.lamps(
            ROOM.withOpenings(List.of()),
            Variants.lamp("room", new Vec3(2, 2, 2), Vec3.DOWN, Distribution.Named.BARE, 500));
    LitYear year = LitYear.of(lit, every(5));
    long nights = 0;
    for (int s = 0; s < year.states(); s++) {
      if (year.beam(s) == 0 && year.clear(s)) {
        nights++;
      }
    }
    assertThat(nights).isEqualTo(1);
  }

  @Test
  void polarNightHasNoMomentsAndPolarDayHasAll() {
    House north = at(78, 15, "Arctic/Longyearbyen");
    assertThat(LitYear.of(north, every(1).withDays(List.of(355))).moments()).isZero();
    assertThat(LitYear.of(north, every(1).withDays(List.of(172))).moments()).isEqualTo(144);
  }

  @Test
  void theHourThatClocksSkipInSpringIsLeftOut() {
    // United States rule since 2007: second Sunday of March, 8 March in 2026, at 2:00. The sun is
    // up all day north of the polar circle only later, so a lamp makes every minute count.
    House lit =
        Variants.lamps(
            ROOM,
            Variants.lamp("room", new Vec3(2, 2, 2), Vec3.DOWN, Distribution.Named.BARE, 500));
    int usual = LitYear.of(allNight(lit), every(1).withDays(List.of(66))).moments();
    int short1 = LitYear.of(allNight(lit), every(1).withDays(List.of(67))).moments();
    assertThat(usual).isEqualTo(144);
    assertThat(short1).isEqualTo(138);
  }

  /** Three days stand for a year: each step of a day counts for a third of a year's days. */
  @Test
  void hoursFollowTheClearShareOfTheirMonthAndNightsTheLamps() {
    List<Double> shares = List.of(0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.8, 0.7, 0.6, 0.5);
    House lit =
        Variants.lamps(
            withClear(shares),
            Variants.lamp("room", new Vec3(2, 2, 2), Vec3.DOWN, Distribution.Named.BARE, 500));
    LitYear year = LitYear.of(lit, every(1).withDays(List.of(15, 196)).withStep(30));
    double each = 0.5 * 365 / 2;
    double clearExpected = 0;
    double clear = 0;
    double overcast = 0;
    double night = 0;
    int january = 0;
    int july = 0;
    for (int s = 0; s < year.states(); s++) {
      if (year.weather(s) == Weather.OVERCAST) {
        assertThat(year.clear(s)).isFalse();
        assertThat(year.clearHours(s)).isZero();
        assertThat(year.beam(s)).isZero();
        overcast += year.expectedHours(s);
      } else if (year.beam(s) > 0) {
        assertThat(year.clearHours(s)).isEqualTo(each);
        january += year.when(s).getMonthValue() == 1 ? 1 : 0;
        july += year.when(s).getMonthValue() == 7 ? 1 : 0;
        clear += year.clearHours(s);
        clearExpected += year.expectedHours(s);
      } else {
        assertThat(year.light(s).lampShares()).containsExactly(1.0);
        assertThat(year.expectedHours(s)).isEqualTo(year.clearHours(s));
        night += year.clearHours(s);
      }
    }
    assertThat(clear).isCloseTo((january + july) * each, within(1e-9));
    assertThat(clearExpected).isCloseTo((january * 0.2 + july * 0.8) * each, within(1e-9));
    assertThat(overcast).isCloseTo((january * 0.8 + july * 0.2) * each, within(1e-9));
    // The lamp burns from 17:00, or from sunset, to 23:00: 12 steps in January, fewer in July.
    assertThat(night / each).isBetween(12.0 + 3, 12.0 + 6);
    assertThat(year.moments()).isEqualTo(january + july + (int) Math.round(night / each));
  }

  @Test
  void aCalendarPutsEachClearMomentAtItsDayAndTime() {
    LitYear year = LitYear.of(ROOM, every(1).withDays(List.of(60, 172)).withStep(60));
    float[] mark = new float[year.states()];
    for (int s = 0; s < mark.length; s++) {
      mark[s] = year.clear(s) ? 100 * year.when(s).getDayOfYear() + year.when(s).getHour() : 7;
    }
    Calendar calendar = year.calendar(mark);
    int filled = 0;
    for (int row = 0; row < 2; row++) {
      for (int hour = 0; hour < 24; hour++) {
        float value = calendar.showing(row, hour);
        if (value != 0) {
          assertThat(value).isEqualTo(100 * calendar.days().get(row) + hour);
          filled++;
        }
      }
    }
    assertThat(filled).isEqualTo(year.moments()).isGreaterThan(20);
    assertThat(calendar.showing(1, 0)).isZero();
  }

  /** Behind a hill of 30 degrees all round the low sun sends no beam, the high one does. */
  @Test
  void aSunBehindTheSkylineSendsNoBeam() {
    House valley =
        ROOM.withSite(
            TestHouses.site(
                new SkylinePoint(0, Math.toRadians(30)),
                new SkylinePoint(Math.PI, Math.toRadians(30))));
    LitYear year = LitYear.of(valley, every(1).withDays(List.of(172)).withStep(30));
    int low = 0;
    int high = 0;
    for (int s = 0; s < year.states(); s++) {
      if (year.clear(s)) {
        double altitude = Math.toDegrees(Math.asin(year.suns()[3 * s + 2]));
        assertThat(
                Math.hypot(
                    Math.hypot(year.suns()[3 * s], year.suns()[3 * s + 1]), year.suns()[3 * s + 2]))
            .isCloseTo(1, within(1e-12));
        assertThat(year.beam(s) > 0).isEqualTo(altitude > 30);
        assertThat(year.light(s).sky().sunNormalLux()).isCloseTo(year.beam(s), within(1e-6));
        low += altitude < 30 ? 1 : 0;
        high += altitude > 30 ? 1 : 0;
      }
    }
    assertThat(low).isGreaterThan(5);
    assertThat(high).isGreaterThan(5);
  }

  /** One moment asked alone is the moment of the year. */
  @Test
  void aMomentAloneIsTheMomentOfTheYear() {
    LitYear year = LitYear.of(ROOM, every(1).withDays(List.of(172)).withStep(60));
    for (int s = 0; s < year.states(); s++) {
      LitYear alone = LitYear.at(ROOM, every(1), year.when(s), year.weather(s));
      if (year.clear(s)) {
        assertThat(alone.states()).isEqualTo(1);
        assertThat(alone.ingredients()).hasSize(1);
        assertThat(alone.beam(0)).isCloseTo(year.beam(s), within(1e-6 * year.beam(s)));
        assertThat(alone.suns()[2]).isEqualTo(year.suns()[3 * s + 2]);
        assertThat(alone.when(0)).isEqualTo(year.when(s));
        assertThat(alone.clear(0)).isTrue();
        assertThat(alone.light(0).sky().diffuseHorizontalLux())
            .isCloseTo(year.light(s).sky().diffuseHorizontalLux(), within(1e-6));
      } else {
        assertThat(alone.clear(0)).isFalse();
        assertThat(alone.beam(0)).isZero();
      }
    }
  }

  private static House withClear(List<Double> shares) {
    Site s = ROOM.site();
    return ROOM.withSite(
        new Site(
            s.latitudeDeg(),
            s.longitudeDeg(),
            s.zone(),
            s.elevation(),
            s.groundReflectance(),
            s.haze(),
            shares,
            s.skyline()));
  }

  private static House allNight(House h) {
    OnHours always = new OnHours(LocalTime.MIDNIGHT, LocalTime.MIDNIGHT, false);
    return Variants.lamps(h, h.lamps().get(0).withOn(List.of(always)));
  }

  private static ScoreOptions every(int n) {
    return ScoreOptions.standard().withDays(ScoreOptions.everyDay(ScoreOptions.DEFAULT_YEAR, n));
  }

  private static double clearHours(LitYear year) {
    double sum = 0;
    for (int s = 0; s < year.states(); s++) {
      sum += year.clearHours(s);
    }
    return sum;
  }

  private static House at(double latitude, double longitude, String zone) {
    return ROOM.withSite(
        new Site(
            latitude,
            longitude,
            ZoneId.of(zone),
            0,
            Collections.nCopies(12, 0.2),
            0.21,
            Collections.nCopies(12, 0.5),
            List.of()));
  }
}
