package slantlight.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slantlight.TestHouses;
import slantlight.geom.Frame;
import slantlight.geom.Vec3;
import slantlight.light.Basis;
import slantlight.light.LightState;
import slantlight.light.SamplePoint;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.Distribution;
import slantlight.scene.House;
import slantlight.scene.Paint;
import slantlight.scene.Sheen;
import slantlight.scene.Site;
import slantlight.sight.Coating;
import slantlight.sky.SkyState;
import slantlight.sky.Weather;
import slantlight.units.Progress;

/** A year made of ingredients against the same moments lit whole. */
class IngredientsTest {
  private static final House ROOM = TestHouses.boxRoom(6, 8, 2.75, 0.5, 5.5, 0, 2.44, 0.85);

  /** Three metres in from the glass, and beside its end. */
  private static final double[][] PLACES = {{3, 3}, {5.5, 1}};

  private static final SkyState DARK = new SkyState(Vec3.DOWN, 0, (x, y, z) -> 0, 0, 0, Double.NaN);

  @Test
  void cookedMomentsAgreeWithWholeOnes() {
    Transport light = Transport.of(ROOM, TransportOptions.DEFAULT, Progress.NONE);
    ScoreOptions options =
        ScoreOptions.standard()
            .withDays(ScoreOptions.everyDay(ScoreOptions.DEFAULT_YEAR, 37))
            .withStep(60);
    LitYear year = LitYear.of(ROOM, options);
    for (double[] place : PLACES) {
      Frame frame =
          new Frame(
              new Vec3(place[0], place[1], 2.749), Vec3.EAST, Vec3.NORTH.times(-1), Vec3.DOWN);
      SamplePoint sample = new SamplePoint(frame, "room");
      FollowedPoint point = new FollowedPoint(sample, ROOM.eyes());
      Coating coating = Coating.of(new Paint(0.85, Sheen.FLAT));
      ReliefKernel kernel = new ReliefKernel(point, coating, coating, false);
      Basis basis = light.basis(List.of(sample), List.of(kernel), Progress.NONE);
      YearScan scan = new YearScan(light, year);
      compare(basis, scan.kitchen(basis, 0), year, kernel);
    }
  }

  /** Snow in winter, grass in summer, a lamp after dark: every kind of state, cooked or whole. */
  @Test
  void groundOfTheMonthOvercastAndLampsAreCookedIn() {
    List<Double> ground = List.of(0.8, 0.8, 0.5, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.3, 0.6);
    House room =
        Variants.lamps(
            ROOM.withSite(onGround(ROOM.site(), ground)),
            Variants.lamp("room", new Vec3(3, 4, 2), Vec3.DOWN, Distribution.Named.BARE, 800));
    Transport light = Transport.of(room, TransportOptions.DEFAULT, Progress.NONE);
    ScoreOptions options = ScoreOptions.standard().withDays(List.of(20, 75, 172)).withStep(120);
    LitYear year = LitYear.of(room, options);
    Frame frame = new Frame(new Vec3(3, 3, 2.749), Vec3.EAST, Vec3.NORTH.times(-1), Vec3.DOWN);
    SamplePoint sample = new SamplePoint(frame, "room");
    FollowedPoint point = new FollowedPoint(sample, room.eyes());
    Coating coating = Coating.of(new Paint(0.85, Sheen.FLAT));
    ReliefKernel kernel = new ReliefKernel(point, coating, coating, false);
    Basis basis = light.basis(List.of(sample), List.of(kernel), Progress.NONE);
    YearScan scan = new YearScan(light, year);
    Ingredients.Kitchen kitchen = scan.kitchen(basis, 0);
    Set<Object> kinds = new HashSet<>();
    for (int s = 0; s < year.states(); s++) {
      LightState state = year.light(s);
      boolean night = year.clear(s) && year.beam(s) == 0 && state.lampShares().get(0) == 1;
      kinds.add(night ? "night" : year.weather(s));
      // A night is as dark as after twilight: its lamps alone.
      LightState asked = night ? new LightState(DARK, state.lampShares()) : state;
      float[][] whole = new float[kernel.rows()][1];
      basis.evaluate(0, basis.block(List.of(asked)), whole);
      float[] cooked = cooked(kitchen, year.menu(), s, kernel.rows());
      double scale = whole[kernel.illuminance()][0];
      assertThat(scale).isPositive();
      for (int r : new int[] {kernel.illuminance(), kernel.lightAcross(), kernel.lightAlong()}) {
        assertThat((double) cooked[r])
            .as("row %s of state %s, %s", r, s, year.when(s))
            .isCloseTo(whole[r][0], within(0.012 * scale));
      }
    }
    assertThat(kinds).containsExactlyInAnyOrder("night", Weather.CLEAR, Weather.OVERCAST);
  }

  /** A bound on a run is told from its probes, so each state must have one that is much like it. */
  @Test
  void runsAreOfAlikeStatesEachCloseToAProbe() {
    Random random = new Random(41);
    for (int n : new int[] {1, 2, 3, 4, 5, 6, 7, 63, 64, 65, 500, 2000}) {
      List<Ingredients.Recipe> asked =
          Stream.generate(() -> Ingredients.Recipe.only(random.nextInt(4))).limit(n).toList();
      int[] order = Ingredients.Menu.order(asked);
      assertThat(IntStream.of(order).sorted().toArray()).isEqualTo(IntStream.range(0, n).toArray());
      List<Ingredients.Recipe> laid = IntStream.of(order).mapToObj(asked::get).toList();
      Ingredients.Menu menu = new Ingredients.Menu(laid);
      for (int run = 0; run < menu.runs(); run++) {
        int[] states = Arrays.copyOfRange(order, menu.start(run), menu.start(run + 1));
        assertThat(states).hasSizeBetween(1, Ingredients.Menu.LONGEST);
        for (int s : states) {
          assertThat(asked.get(s)).isEqualByComparingTo(asked.get(states[0]));
        }
        int[] before = IntStream.of(states).sorted().toArray();
        int[] places = IntStream.of(states).map(s -> Arrays.binarySearch(before, s)).toArray();
        int[] probes = Arrays.copyOf(places, menu.probed(run) - menu.start(run));
        assertThat(probes).hasSizeBetween(1, (states.length + 15) / 16 * 4);
        for (int place : places) {
          assertThat(IntStream.of(probes).map(p -> Math.abs(p - place)).min().getAsInt())
              .as("places from %s of %s to a probe", place, states.length)
              .isLessThan(4);
        }
      }
    }
  }

  private static Site onGround(Site s, List<Double> ground) {
    return new Site(
        s.latitudeDeg(),
        s.longitudeDeg(),
        s.zone(),
        s.elevation(),
        ground,
        s.haze(),
        s.clearShare(),
        s.skyline());
  }

  /** Rows of a state, cooked with its run and its flecks of sun put where they are. */
  private static float[] cooked(
      Ingredients.Kitchen kitchen, Ingredients.Menu menu, int state, int rows) {
    int run = menu.runOf(state);
    int from = menu.start(run);
    float[][] cooked = new float[rows][menu.start(run + 1) - from];
    kitchen.cook(menu, from, menu.start(run + 1), cooked, 0, rows);
    kitchen.sharpen(menu, run, cooked, 0, rows);
    float[] out = new float[rows];
    for (int r = 0; r < rows; r++) {
      out[r] = cooked[r][state - from];
    }
    return out;
  }

  private static void compare(
      Basis basis, Ingredients.Kitchen kitchen, LitYear year, ReliefKernel kernel) {
    float[][] whole = new float[kernel.rows()][1];
    double worst = 0;
    double sum = 0;
    int count = 0;
    for (int s = 0; s < year.states(); s++) {
      float[] cooked = cooked(kitchen, year.menu(), s, kernel.rows());
      basis.evaluate(0, basis.block(List.of(year.light(s))), whole);
      double scale = whole[kernel.illuminance()][0];
      if (scale > 1) {
        for (int r : new int[] {kernel.illuminance(), kernel.lightAcross(), kernel.lightAlong()}) {
          double off = Math.abs(cooked[r] - whole[r][0]) / scale;
          worst = Math.max(worst, off);
          sum += off;
          count++;
        }
      }
    }
    assertThat(count).isGreaterThan(300);
    assertThat(sum / count).isLessThan(0.001);
    assertThat(worst).isLessThan(0.01);
  }
}
