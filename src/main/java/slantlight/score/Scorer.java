package slantlight.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import slantlight.board.Joint;
import slantlight.board.Layout;
import slantlight.board.LayoutSolver;
import slantlight.board.ShowWeight;
import slantlight.geom.Vec2;
import slantlight.light.LightModel;
import slantlight.light.SamplePoint;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.Eye;
import slantlight.scene.House;
import slantlight.scene.JointKind;
import slantlight.scene.Surface;
import slantlight.sight.JointRidge;
import slantlight.sight.RidgeTable;
import slantlight.units.Progress;
import slantlight.units.Workers;

/**
 * Scores every joint of a house over the year.
 *
 * <p>Light is computed once as responses to unit sources; boards are laid where they show least;
 * then each point of each joint is followed through every state of the year's light and the eyes
 * that can see it.
 */
public final class Scorer {
  /** Surface of the rooms whose flecks are held at a time, m2: that of two large houses. */
  private static final double STAGE = 1500;

  private final LightModel light;
  private final House house;
  private final ScoreOptions options;
  private final Progress progress;
  private final RidgeTable table = RidgeTable.standard();
  private final EyeChoice eyes;
  private final JointMemory memory;

  private Scorer(LightModel light, ScoreOptions options, JointMemory memory, Progress progress) {
    this.light = light;
    this.house = light.house();
    this.options = options;
    this.memory = memory;
    this.progress = progress;
    this.eyes = new EyeChoice(light);
  }

  /**
   * Scores a house.
   *
   * @throws CancellationException if {@code progress} asks to stop
   */
  public static HouseScore score(House house, ScoreOptions options, Progress progress) {
    return inPool(
        options,
        () ->
            fresh(Transport.of(house, TransportOptions.DEFAULT, progress), options, progress)
                .run(false)
                .score());
  }

  /**
   * Scores a house whose light is known already.
   *
   * @throws CancellationException if {@code progress} asks to stop
   */
  public static HouseScore score(LightModel light, ScoreOptions options, Progress progress) {
    return inPool(options, () -> fresh(light, options, progress).run(false).score());
  }

  /**
   * Scores a house whose light is known already, and of whose joints perhaps some.
   *
   * @param memory of earlier scores like this one; takes over what is new
   * @throws CancellationException if {@code progress} asks to stop
   */
  public static HouseScore score(
      LightModel light, ScoreOptions options, JointMemory memory, Progress progress) {
    return inPool(options, () -> new Scorer(light, options, memory, progress).run(false).score());
  }

  /**
   * How much a metre of joint would show anywhere on the surfaces whose boards are still to be
   * laid, by surface id. A score lays its boards by it.
   *
   * @throws CancellationException if {@code progress} asks to stop
   */
  public static Map<String, ShowWeight> weights(
      House house, ScoreOptions options, Progress progress) {
    return inPool(
        options,
        () -> {
          Transport light = Transport.of(house, TransportOptions.DEFAULT, progress);
          Scorer scorer = fresh(light, options, progress);
          return scorer.weights(scorer.scored());
        });
  }

  private static Scorer fresh(LightModel light, ScoreOptions options, Progress progress) {
    return new Scorer(light, options, new JointMemory(), progress);
  }

  /**
   * A score and what tells its joints' showing at single moments.
   *
   * @param moments holds the light at all points of joints: hundreds of megabytes for a house
   */
  public record Followed(HouseScore score, JointMoments moments) {}

  /**
   * Scores a house whose light is known already and keeps what tells single moments.
   *
   * @throws CancellationException if {@code progress} asks to stop
   */
  public static Followed follow(LightModel light, ScoreOptions options, Progress progress) {
    return inPool(options, () -> fresh(light, options, progress).run(true));
  }

  private static <T> T inPool(ScoreOptions options, Callable<T> work) {
    ForkJoinPool pool = new ForkJoinPool(options.threads());
    try {
      return pool.submit(work).get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException r) {
        throw r;
      }
      if (e.getCause() instanceof Error error) {
        throw error;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw (CancellationException) new CancellationException("interrupted").initCause(e);
    } finally {
      pool.shutdownNow();
    }
  }

  /**
   * One joint, or the spots of one surface.
   *
   * @param places at which it is followed
   * @param along unit vector along the joint
   */
  private record Task(
      Surface surface, Joint joint, List<Vec2> places, Vec2 along, boolean backBlocked) {
    boolean spots() {
      return joint.kind() == JointKind.SPOT;
    }

    Optional<JointMemory.Shown> in(JointMemory memory) {
      return memory.of(surface, joint, places, backBlocked);
    }

    void keep(JointMemory memory, JointMemory.Shown shown) {
      memory.keep(surface, joint, places, backBlocked, shown);
    }
  }

  /**
   * @param keep whether single moments are wanted, too
   */
  private Followed run(boolean keep) {
    List<Surface> surfaces = scored();
    Map<String, Layout> layouts = layouts(surfaces);
    List<Task> tasks =
        surfaces.stream().flatMap(s -> tasks(s, layouts.get(s.id())).stream()).toList();
    List<Task> open = tasks.stream().filter(t -> t.in(memory).isEmpty()).toList();
    LitYear year = memory.year(light, options);
    YearScan scan = new YearScan(light, year);
    Map<String, PointLights> lights = new ConcurrentHashMap<>();
    PeakReasons reasons = new PeakReasons(light, year);
    AtomicInteger done = new AtomicInteger();
    int seen = 0;
    List<List<Task>> stages = stages(open);
    for (int k = 0; k < stages.size(); k++) {
      List<Task> stage = stages.get(k);
      List<List<PointOptics>> optics = made(stage.size(), i -> optics(stage.get(i)));
      seen += (int) optics.stream().flatMap(List::stream).filter(p -> p.eyes() > 0).count();
      scan.enter(rooms(stage));
      List<JointMemory.Shown> shown =
          made(
              stage.size(),
              i -> {
                Task task = stage.get(i);
                PointLights at = PointLights.of(light, optics.get(i));
                if (keep && !task.spots()) {
                  lights.put(task.joint().id(), at);
                }
                JointMemory.Shown s = shown(task, at, scan, reasons);
                progress.at(
                    "the year, joint by joint", done.incrementAndGet() / (double) open.size());
                return s;
              });
      for (int i = 0; i < stage.size(); i++) {
        stage.get(i).keep(memory, shown.get(i));
      }
      if (k + 1 < stages.size()) {
        scan.keepOnly(rooms(stages.get(k + 1)));
      }
    }
    HouseScore score =
        new HouseScore(
            house,
            made(
                surfaces.size(),
                i -> assemble(surfaces.get(i), layouts.get(surfaces.get(i).id()), tasks, year)),
            options.year(),
            options.stepMinutes(),
            seen,
            year.moments());
    return new Followed(score, new JointMoments(light, options, lights));
  }

  /**
   * Tasks of whole rooms, so many at a time that the flecks of a year fit into memory: all at once
   * in a house, a few rooms in a large building.
   */
  private List<List<Task>> stages(List<Task> tasks) {
    Map<String, List<Task>> byRoom = new LinkedHashMap<>();
    for (Task t : tasks) {
      byRoom.computeIfAbsent(t.surface().roomId(), r -> new ArrayList<>()).add(t);
    }
    Map<String, Double> area =
        house.surfaces().stream()
            .collect(
                Collectors.groupingBy(
                    Surface::roomId, Collectors.summingDouble(s -> s.face().area())));
    List<List<Task>> out = new ArrayList<>();
    double sum = 0;
    for (Map.Entry<String, List<Task>> room : byRoom.entrySet()) {
      double more = area.get(room.getKey());
      if (out.isEmpty() || sum + more > STAGE) {
        out.add(new ArrayList<>());
        sum = 0;
      }
      out.get(out.size() - 1).addAll(room.getValue());
      sum += more;
    }
    return out;
  }

  private static Set<String> rooms(List<Task> tasks) {
    return tasks.stream().map(t -> t.surface().roomId()).collect(Collectors.toSet());
  }

  private List<Surface> scored() {
    return house.surfaces().stream()
        .filter(Surface::boarded)
        .filter(s -> options.surfaces().isEmpty() || options.surfaces().contains(s.id()))
        .toList();
  }

  /** What comes of each number below a count, made by all threads. */
  private static <T> List<T> made(int count, IntFunction<T> how) {
    AtomicReferenceArray<T> out = new AtomicReferenceArray<>(count);
    Workers.each(count, i -> out.set(i, how.apply(i)));
    return IntStream.range(0, count).mapToObj(out::get).toList();
  }

  private Map<String, Layout> layouts(List<Surface> surfaces) {
    List<Surface> open =
        surfaces.stream().filter(s -> !options.layouts().containsKey(s.id())).toList();
    Map<String, ShowWeight> weights = weights(open);
    Map<String, Layout> out = new ConcurrentHashMap<>(options.layouts());
    Workers.each(
        open.size(),
        i -> {
          Surface s = open.get(i);
          out.put(s.id(), LayoutSolver.solve(s, weights.getOrDefault(s.id(), ShowWeight.PLAIN)));
        });
    return out;
  }

  private Map<String, ShowWeight> weights(List<Surface> surfaces) {
    return ShowField.of(
        light,
        surfaces.stream().filter(s -> s.joints().isEmpty()).toList(),
        table,
        options,
        progress);
  }

  private List<Task> tasks(Surface surface, Layout layout) {
    List<Task> out = new ArrayList<>();
    boolean backBlocked = options.backBlocked().contains(surface.id());
    for (Joint joint : layout.joints()) {
      Vec2 along = joint.to().minus(joint.from()).unit();
      out.add(
          new Task(surface, joint, JointPath.steps(joint, options.spacing()), along, backBlocked));
    }
    if (!layout.fasteners().isEmpty()) {
      List<Vec2> places = Spots.chosen(surface, layout.fasteners());
      out.add(new Task(surface, Spots.joint(surface.id()), places, new Vec2(0, 1), false));
    }
    return out;
  }

  private List<PointOptics> optics(Task task) {
    JointRidge[] ridges = PointOptics.ridges(table, task.joint(), task.backBlocked());
    return task.places().stream()
        .map(at -> optics(task.surface(), at, task.along(), ridges, task.spots()))
        .toList();
  }

  private PointOptics optics(
      Surface surface, Vec2 at, Vec2 along, JointRidge[] ridges, boolean spot) {
    SamplePoint sample = JointPath.sample(surface, at, along);
    List<Eye> seeing = JointPath.covered(surface, at) ? List.of() : eyes.seeing(sample.frame());
    FollowedPoint point = new FollowedPoint(sample, seeing);
    return new PointOptics(
        point,
        ReliefKernel.of(point, surface.paint(), table, spot),
        table,
        ridges,
        spot ? Lean.ALL : Lean.U,
        options.eye());
  }

  private static JointMemory.Shown shown(
      Task task, PointLights lights, YearScan scan, PeakReasons reasons) {
    List<PointOptics> points = lights.points();
    Tally tally = new Tally(scan.year());
    double step = task.spots() ? 1 : task.joint().length() / points.size();
    List<Double> profile = new ArrayList<>();
    PointOptics worstPoint = null;
    Ingredients.Kitchen worstKitchen = null;
    PointTrace.Worst worst = new PointTrace.Worst();
    for (int i = 0; i < points.size(); i++) {
      float[] own = new float[3];
      int sample = lights.sample()[i];
      if (sample >= 0) {
        Ingredients.Kitchen kitchen = scan.kitchen(lights.basis(), sample);
        PointTrace.Worst here = scan.follow(lights, i, kitchen, tally.showing(), own);
        tally.addLength(step, own);
        if (here.showing() > worst.showing()) {
          worst = here;
          worstPoint = points.get(i);
          worstKitchen = kitchen;
        }
      }
      profile.add((double) own[1]);
    }
    Optional<Peak> peak =
        worstPoint == null
            ? Optional.empty()
            : Optional.of(reasons.of(worstPoint, worstKitchen, worst));
    return new JointMemory.Shown(tally, profile, peak);
  }

  private SurfaceScore assemble(Surface surface, Layout layout, List<Task> tasks, LitYear year) {
    Tally whole = new Tally(year);
    List<JointScore> joints = new ArrayList<>();
    Optional<SpotScore> spots = Optional.empty();
    for (Task task : tasks) {
      if (!task.surface().id().equals(surface.id())) {
        continue;
      }
      JointMemory.Shown s = task.in(memory).orElseThrow();
      if (task.spots()) {
        spots =
            Optional.of(
                new SpotScore(
                    layout.fasteners().size(),
                    (int) Math.round(s.tally().length()),
                    s.tally().scores(year),
                    s.peak()));
      } else {
        whole.merge(s.tally());
        joints.add(
            new JointScore(
                task.joint(), s.tally().length(), s.tally().scores(year), s.peak(), s.profile()));
      }
    }
    Optional<Peak> worst =
        joints.stream()
            .flatMap(j -> j.peak().stream())
            .max(Comparator.comparingDouble(Peak::showing));
    return new SurfaceScore(
        surface.id(),
        layout,
        joints,
        whole.scores(year),
        worst,
        year.calendar(whole.showing()[1]),
        spots);
  }
}
