package slantlight.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import slantlight.board.Joint;
import slantlight.board.Layout;
import slantlight.board.LayoutSolver;
import slantlight.board.ShowWeight;
import slantlight.geom.Vec2;
import slantlight.light.Basis;
import slantlight.light.Kernel;
import slantlight.light.LightModel;
import slantlight.light.SamplePoint;
import slantlight.light.SunBeams;
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
  private final LightModel light;
  private final House house;
  private final ScoreOptions options;
  private final Progress progress;
  private final RidgeTable table = RidgeTable.standard();
  private final EyeChoice eyes;

  private Scorer(LightModel light, ScoreOptions options, Progress progress) {
    this.light = light;
    this.house = light.house();
    this.options = options;
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
            new Scorer(Transport.of(house, TransportOptions.DEFAULT, progress), options, progress)
                .run()
                .score());
  }

  /**
   * Scores a house whose light is known already.
   *
   * @throws CancellationException if {@code progress} asks to stop
   */
  public static HouseScore score(LightModel light, ScoreOptions options, Progress progress) {
    return inPool(options, () -> new Scorer(light, options, progress).run().score());
  }

  /**
   * A score and what tells its joints' showing at single moments.
   *
   * @param moments holds the responses of all points of joints: tens of megabytes for a house
   */
  public record Followed(HouseScore score, JointMoments moments) {}

  /**
   * Scores a house whose light is known already and keeps what tells single moments.
   *
   * @throws CancellationException if {@code progress} asks to stop
   */
  public static Followed follow(LightModel light, ScoreOptions options, Progress progress) {
    return inPool(options, () -> new Scorer(light, options, progress).run());
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

  /** One joint, or the spots of one surface. */
  private record Task(Surface surface, Joint joint, List<PointOptics> points) {
    boolean spots() {
      return joint.kind() == JointKind.SPOT;
    }
  }

  /**
   * What became of a task.
   *
   * @param profile largest showing at level 4 of each point
   */
  private record Result(Tally tally, List<Double> profile, Optional<Peak> peak) {}

  private Followed run() {
    List<Surface> surfaces =
        house.surfaces().stream()
            .filter(Surface::boarded)
            .filter(s -> options.surfaces().isEmpty() || options.surfaces().contains(s.id()))
            .toList();
    Map<String, Layout> layouts = layouts(surfaces);
    List<Supplier<Task>> open =
        surfaces.stream().flatMap(s -> tasks(s, layouts.get(s.id())).stream()).toList();
    List<Task> tasks = made(open.size(), i -> open.get(i).get());
    Map<PointOptics, Integer> places = new HashMap<>();
    List<PointOptics> seen = new ArrayList<>();
    for (Task task : tasks) {
      for (PointOptics p : task.points()) {
        if (p.eyes() > 0) {
          places.put(p, seen.size());
          seen.add(p);
        }
      }
    }
    List<SamplePoint> samples = seen.stream().map(p -> p.point().sample()).toList();
    Basis basis =
        light.basis(samples, seen.stream().map(p -> (Kernel) p.kernel()).toList(), progress);
    LitYear year = LitYear.of(light, options);
    SunBeams beams = light.beams(samples);
    YearScan scan = new YearScan(basis, beams, places, year);
    Map<String, List<PointOptics>> joints = new LinkedHashMap<>();
    tasks.stream().filter(t -> !t.spots()).forEach(t -> joints.put(t.joint().id(), t.points()));
    JointMoments moments = new JointMoments(house, options, basis, beams, places, joints);
    PeakReasons reasons = new PeakReasons(light, year);
    Map<String, Tally> bySurface = new LinkedHashMap<>();
    surfaces.forEach(s -> bySurface.put(s.id(), new Tally(year)));
    AtomicInteger done = new AtomicInteger();
    List<Result> results =
        made(
            tasks.size(),
            i -> {
              Task task = tasks.get(i);
              Result r = result(task, scan, reasons);
              if (!task.spots()) {
                bySurface.get(task.surface().id()).merge(r.tally());
              }
              progress.at(
                  "the year, joint by joint", done.incrementAndGet() / (double) tasks.size());
              return r;
            });
    HouseScore score =
        new HouseScore(
            house,
            surfaces.stream()
                .map(
                    s ->
                        assemble(
                            s, layouts.get(s.id()), tasks, results, bySurface.get(s.id()), year))
                .toList(),
            options.year(),
            options.stepMinutes(),
            seen.size(),
            year.moments());
    return new Followed(score, moments);
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
    Map<String, ShowWeight> fields =
        ShowField.of(
            light,
            open.stream().filter(s -> s.joints().isEmpty()).toList(),
            table,
            options,
            progress);
    Map<String, Layout> out = new ConcurrentHashMap<>(options.layouts());
    Workers.each(
        open.size(),
        i -> {
          Surface s = open.get(i);
          out.put(s.id(), LayoutSolver.solve(s, fields.getOrDefault(s.id(), ShowWeight.PLAIN)));
        });
    return out;
  }

  /** The tasks of a surface, to be made ready. */
  private List<Supplier<Task>> tasks(Surface surface, Layout layout) {
    List<Supplier<Task>> out = new ArrayList<>();
    boolean backBlocked = options.backBlocked().contains(surface.id());
    for (Joint joint : layout.joints()) {
      Vec2 along = joint.to().minus(joint.from()).unit();
      List<Vec2> places = JointPath.steps(joint, options.spacing());
      out.add(() -> task(surface, joint, places, along, backBlocked));
    }
    if (!layout.fasteners().isEmpty()) {
      List<Vec2> places = Spots.chosen(surface, layout.fasteners());
      out.add(() -> task(surface, Spots.joint(surface.id()), places, new Vec2(0, 1), false));
    }
    return out;
  }

  private Task task(
      Surface surface, Joint joint, List<Vec2> places, Vec2 along, boolean backBlocked) {
    JointRidge[] ridges = PointOptics.ridges(table, joint, backBlocked);
    boolean spots = joint.kind() == JointKind.SPOT;
    return new Task(
        surface,
        joint,
        places.stream().map(at -> optics(surface, at, along, ridges, spots)).toList());
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

  private Result result(Task task, YearScan scan, PeakReasons reasons) {
    Tally tally = new Tally(scan.year());
    double step = task.spots() ? 1 : task.joint().length() / task.points().size();
    List<Double> profile = new ArrayList<>();
    PointOptics worstPoint = null;
    Ingredients.Kitchen worstKitchen = null;
    PointTrace.Worst worst = new PointTrace.Worst();
    for (PointOptics point : task.points()) {
      float[] own = new float[3];
      if (point.eyes() > 0) {
        Ingredients.Kitchen kitchen = scan.kitchen(scan.place(point));
        PointTrace.Worst here = scan.follow(point, kitchen, tally.showing(), own);
        tally.addLength(step, own);
        if (here.showing() > worst.showing()) {
          worst = here;
          worstPoint = point;
          worstKitchen = kitchen;
        }
      }
      profile.add((double) own[1]);
    }
    Optional<Peak> peak =
        worstPoint == null
            ? Optional.empty()
            : Optional.of(reasons.of(worstPoint, worstKitchen, worst));
    return new Result(tally, profile, peak);
  }

  private static SurfaceScore assemble(
      Surface surface,
      Layout layout,
      List<Task> tasks,
      List<Result> results,
      Tally whole,
      LitYear year) {
    List<JointScore> joints = new ArrayList<>();
    Optional<SpotScore> spots = Optional.empty();
    for (int i = 0; i < tasks.size(); i++) {
      Task task = tasks.get(i);
      Result r = results.get(i);
      if (!task.surface().id().equals(surface.id())) {
        continue;
      }
      if (task.spots()) {
        spots =
            Optional.of(
                new SpotScore(
                    layout.fasteners().size(),
                    (int) Math.round(r.tally().length()),
                    r.tally().scores(year),
                    r.peak()));
      } else {
        whole.mergeLengths(r.tally());
        joints.add(
            new JointScore(
                task.joint(), r.tally().length(), r.tally().scores(year), r.peak(), r.profile()));
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
