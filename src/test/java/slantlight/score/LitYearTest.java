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
