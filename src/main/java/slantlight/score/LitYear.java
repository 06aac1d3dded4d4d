package slantlight.score;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import slantlight.geom.Vec3;
import slantlight.light.Basis;
import slantlight.light.LightModel;
import slantlight.light.LightState;
import slantlight.light.Suns;
import slantlight.scene.House;
import slantlight.scene.Site;
import slantlight.sky.SkyModel;
import slantlight.sky.SkyState;
import slantlight.sky.Sun;
import slantlight.sky.SunGrid;
import slantlight.sky.SunPath;
import slantlight.sky.Weather;

/**
 * The moments of a year at which anything shines, gathered into distinct states of light.
 *
 * <p>Every clear daylight moment is a state of its own. Nights differ only by the lamps that are
 * on, so one state stands for all nights with the same lamps. An overcast vault has one pattern and
 * a strength that follows the sun's altitude, so overcast moments share states by altitude (bins of
 * {@value #OVERCAST_BIN_DEG} degrees), ground and lamps.
 */
final class LitYear {
  private static final double OVERCAST_BIN_DEG = 2.5;

  private final House house;
  private final SkyModel model;
  private final ScoreOptions options;
  private final List<State> states = new ArrayList<>();
  private final List<int[]> moments = new ArrayList<>();
  private final List<LightState> ingredients;
  private final Ingredients pantry;
  private final Ingredients.Menu menu;
  private final double[] suns;
  private final Suns sunsOfFlecks;
  private final int[] fleck;
  private final double[] beams;
  private final boolean[] clear;

  /** One state of light; {@code beam} is of the sun alone. */
  private static final class State {
    private final ZonedDateTime at;
    private final Weather weather;
    private final Sun place;
    private final double beam;
    private final List<Double> lamps;
    private final Ingredients.Recipe recipe;
    private double clearHours;
    private double expectedHours;

    private State(
        ZonedDateTime at,
        Weather weather,
        Sun place,
        double beam,
        List<Double> lamps,
        Ingredients.Recipe recipe) {
      this.at = at;
      this.weather = weather;
      this.place = place;
      this.beam = beam;
      this.lamps = lamps;
      this.recipe = recipe;
    }
  }

  private LitYear(House house, ScoreOptions options, SunGrid grid, Optional<Moment> only) {
    this.house = house;
    this.options = options;
    this.model = SkyModel.of(house.site());
    if (only.isPresent() && house.prescribed().isEmpty()) {
      this.pantry = null;
      this.ingredients = List.of(whole(only.get()));
    } else if (house.prescribed().isPresent()) {
      this.pantry = null;
      this.ingredients = List.of(prescribe());
    } else {
      this.pantry = new Ingredients(house, model, grid);
      gather();
      sort();
      this.ingredients = pantry.states();
    }
    this.menu = new Ingredients.Menu(states.stream().map(s -> s.recipe).toList());
    this.suns = new double[3 * states.size()];
    this.beams = new double[states.size()];
    this.clear = new boolean[states.size()];
    for (int s = 0; s < states.size(); s++) {
      Vec3 sun = states.get(s).place.direction();
      suns[3 * s] = sun.x();
      suns[3 * s + 1] = sun.y();
      suns[3 * s + 2] = sun.z();
      beams[s] = states.get(s).beam;
      clear[s] = states.get(s).weather != Weather.OVERCAST;
    }
    this.fleck = new int[states.size()];
    this.sunsOfFlecks = sunsThatShine();
  }

  /** Gathers the states of the options' days and step. */
  static LitYear of(LightModel light, ScoreOptions options) {
    return new LitYear(light.house(), options, light.sunGrid(), Optional.empty());
  }

  /** The same for the usual grid of suns. */
  static LitYear of(House house, ScoreOptions options) {
    SunGrid grid = SunGrid.of(house.site().latitudeDeg());
    return new LitYear(house, options, grid, Optional.empty());
  }

  /** One moment of a year, its sources asked of the basis instead of made of ingredients. */
  static LitYear at(House house, ScoreOptions options, ZonedDateTime at, Weather weather) {
    return new LitYear(house, options, null, Optional.of(new Moment(at, weather)));
  }

  private record Moment(ZonedDateTime at, Weather weather) {}

  int states() {
    return states.size();
  }

  /** The lights of which the states are made. */
  List<LightState> ingredients() {
    return ingredients;
  }

  /** Amounts of the ingredients in every state; the sun's own beam is not among them. */
  Ingredients.Menu menu() {
    return menu;
  }

  /** Suns of the states that send a beam: a bundle for the probes of each run, one for the rest. */
  Suns sunsOfFlecks() {
    return sunsOfFlecks;
  }

  /** Place of a state's sun in its bundle, or -1 where it sends no beam. */
  int fleck(int s) {
    return fleck[s];
  }

  /**
   * A point's rows under each ingredient made ready for the recipes.
   *
   * @param rows [ingredient][row]
   * @param sample of the basis that they come from
   */
  Ingredients.Kitchen kitchen(float[][] rows, Basis basis, int sample) {
    return pantry == null
        ? Ingredients.Kitchen.plain(rows)
        : pantry.kitchen(rows, new Dapple(basis, sample, this));
  }

  /** Unit vectors toward the sun: x, y and z of each state in turn. */
  double[] suns() {
    return suns;
  }

  /** Illuminance of the sun's beam square to it, outside, lx. */
  double beam(int s) {
    return beams[s];
  }

  /** The complete light of a state. */
  LightState light(int s) {
    State state = states.get(s);
    SkyState sky =
        house.prescribed().isPresent()
            ? ingredients.get(0).sky()
            : model.at(state.place, state.at.getDayOfYear(), state.at.getMonth(), state.weather);
    return new LightState(sky, state.lamps);
  }

  ZonedDateTime when(int s) {
    return states.get(s).at;
  }

  Weather weather(int s) {
    return states.get(s).weather;
  }

  /** True when the state belongs to clear weather or to night. */
  boolean clear(int s) {
    return clear[s];
  }

  /** Hours a year of this state if every day were clear. */
  double clearHours(int s) {
    return states.get(s).clearHours;
  }

  /** Hours a year of this state by the site's monthly share of clear sky. */
  double expectedHours(int s) {
    return states.get(s).expectedHours;
  }

  /** How many moments of clear weather or night had light. */
  int moments() {
    return moments.size();
  }

  /** Spreads a value per state over the days and times of day. */
  Calendar calendar(float[] perState) {
    float[][] grid = new float[options.days().size()][1440 / options.stepMinutes()];
    for (int[] m : moments) {
      grid[m[0]][m[1]] = perState[m[2]];
    }
    return new Calendar(options.days(), options.stepMinutes(), grid);
  }

  private void gather() {
    Site site = house.site();
    double yearDays = LocalDate.ofYearDay(options.year(), 1).lengthOfYear();
    double each = options.stepMinutes() / 60.0 * yearDays / options.days().size();
    Map<List<Double>, Integer> nights = new HashMap<>();
    Map<List<Object>, Integer> overcasts = new HashMap<>();
    List<List<SunAt>> days = options.days().parallelStream().map(day -> sunsOf(day, site)).toList();
    for (int row = 0; row < days.size(); row++) {
      LocalDate date = LocalDate.ofYearDay(options.year(), options.days().get(row));
      double share = site.clearShare().get(date.getMonthValue() - 1);
      double ground = site.groundReflectance().get(date.getMonthValue() - 1);
      for (SunAt moment : days.get(row)) {
        ZonedDateTime at = moment.at();
        Sun sun = moment.sun();
        int column = (at.getHour() * 60 + at.getMinute()) / options.stepMinutes();
        List<Double> lamps = house.lampShares(at.toLocalTime(), sun.altitude());
        if (sun.altitude() > 0) {
          int s = clear(at, sun, lamps, ground);
          count(s, each, each * share);
          moments.add(new int[] {row, column, s});
          int bin = (int) (Math.toDegrees(sun.altitude()) / OVERCAST_BIN_DEG);
          int grey =
              overcasts.computeIfAbsent(
                  List.of(bin, ground, lamps), k -> overcast(at, sun, lamps, ground));
          count(grey, 0, each * (1 - share));
        } else if (lamps.stream().anyMatch(l -> l > 0)) {
          int s = nights.computeIfAbsent(lamps, k -> night(at, sun, lamps));
          count(s, each, each);
          moments.add(new int[] {row, column, s});
        }
      }
    }
  }

  /** Puts states that are made of the same ingredients together. */
  private void sort() {
    int[] order = Ingredients.Menu.order(states.stream().map(s -> s.recipe).toList());
    int[] place = new int[order.length];
    for (int i = 0; i < place.length; i++) {
      place[order[i]] = i;
    }
    List<State> sorted = IntStream.of(order).mapToObj(states::get).toList();
    states.clear();
    states.addAll(sorted);
    moments.forEach(m -> m[2] = place[m[2]]);
  }

  /** A moment of the clock and where the sun then stands. */
  private record SunAt(ZonedDateTime at, Sun sun) {}

  /** A day's moments, without those of the hour that the clocks skip in spring. */
  private List<SunAt> sunsOf(int day, Site site) {
    LocalDateTime midnight = LocalDate.ofYearDay(options.year(), day).atStartOfDay();
    List<SunAt> out = new ArrayList<>();
    for (int minute = 0; minute < 1440; minute += options.stepMinutes()) {
      LocalDateTime clock = midnight.plusMinutes(minute);
      ZonedDateTime at = clock.atZone(site.zone());
      if (at.toLocalDateTime().equals(clock)) {
        out.add(new SunAt(at, sunAt(at)));
      }
    }
    return out;
  }

  private Sun sunAt(ZonedDateTime at) {
    Site site = house.site();
    return SunPath.at(site.latitudeDeg(), site.longitudeDeg(), site.elevation(), at.toInstant());
  }

  /** The suns of the states that send a beam; notes the place of each in its bundle. */
  private Suns sunsThatShine() {
    int[] starts = new int[2 * menu.runs() + 1];
    double[] out = new double[suns.length];
    int count = 0;
    for (int run = 0; run < menu.runs(); run++) {
      for (int part = 0; part < 2; part++) {
        int bundle = 2 * run + part;
        starts[bundle] = count;
        int from = part == 0 ? menu.start(run) : menu.probed(run);
        int to = part == 0 ? menu.probed(run) : menu.start(run + 1);
        for (int s = from; s < to; s++) {
          fleck[s] = beams[s] == 0 ? -1 : count - starts[bundle];
          if (beams[s] != 0) {
            System.arraycopy(suns, 3 * s, out, 3 * count++, 3);
          }
        }
      }
    }
    starts[2 * menu.runs()] = count;
    return new Suns(Arrays.copyOf(out, 3 * count), starts);
  }

  private int clear(ZonedDateTime at, Sun sun, List<Double> lamps, double ground) {
    SkyModel.Amounts amounts = model.amounts(sun, at.getDayOfYear(), Weather.CLEAR);
    double beam = model.clears(sun.direction()) ? amounts.beam() : 0;
    Ingredients.Recipe recipe = pantry.clear(sun.direction(), amounts, beam, ground);
    pantry.addLamps(recipe, lamps);
    return add(new State(at, Weather.CLEAR, sun, beam, lamps, recipe));
  }

  private int overcast(ZonedDateTime at, Sun sun, List<Double> lamps, double ground) {
    SkyModel.Amounts amounts = model.amounts(sun, at.getDayOfYear(), Weather.OVERCAST);
    Ingredients.Recipe recipe = pantry.overcast(amounts.diffuse(), ground);
    pantry.addLamps(recipe, lamps);
    return add(new State(at, Weather.OVERCAST, sun, 0, lamps, recipe));
  }

  private int night(ZonedDateTime at, Sun sun, List<Double> lamps) {
    Ingredients.Recipe recipe = pantry.black();
    pantry.addLamps(recipe, lamps);
    return add(new State(at, Weather.CLEAR, sun, 0, lamps, recipe));
  }

  private LightState whole(Moment m) {
    Sun sun = sunAt(m.at);
    SkyState sky = model.at(sun, m.at.getDayOfYear(), m.at.getMonth(), m.weather);
    List<Double> lamps = house.lampShares(m.at.toLocalTime(), sun.altitude());
    add(new State(m.at, m.weather, sun, sky.sunNormalLux(), lamps, Ingredients.Recipe.only(0)));
    return new LightState(sky, lamps);
  }

  /** A prescribed light stands still: one state for every hour of the year. */
  private LightState prescribe() {
    ZonedDateTime noon =
        LocalDate.ofYearDay(options.year(), options.days().get(0))
            .atTime(12, 0)
            .atZone(house.site().zone());
    SkyState sky = model.prescribed(house.prescribed().orElseThrow(), noon.getMonth());
    List<Double> lamps = house.lamps().stream().map(l -> l.on().isEmpty() ? 0.0 : 1.0).toList();
    Sun sun = new Sun(sky.sun().azimuth(), sky.sun().altitude());
    int s =
        add(
            new State(
                noon, Weather.CLEAR, sun, sky.sunNormalLux(), lamps, Ingredients.Recipe.only(0)));
    double yearHours = 24.0 * LocalDate.ofYearDay(options.year(), 1).lengthOfYear();
    count(s, yearHours, yearHours);
    for (int row = 0; row < options.days().size(); row++) {
      for (int column = 0; column < 1440 / options.stepMinutes(); column++) {
        moments.add(new int[] {row, column, s});
      }
    }
    return new LightState(sky, lamps);
  }

  private int add(State state) {
    states.add(state);
    return states.size() - 1;
  }

  private void count(int s, double clear, double expected) {
    states.get(s).clearHours += clear;
    states.get(s).expectedHours += expected;
  }
}
