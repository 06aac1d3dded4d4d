package slantlight.score;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import slantlight.board.Joint;
import slantlight.board.ShowWeight;
import slantlight.geom.Vec2;
import slantlight.light.Basis;
import slantlight.light.LightModel;
import slantlight.light.SamplePoint;
import slantlight.light.SunBeams;
import slantlight.scene.Eye;
import slantlight.scene.JointKind;
import slantlight.scene.Surface;
import slantlight.sight.EyeModel;
import slantlight.sight.JointRidge;
import slantlight.sight.RidgeTable;
import slantlight.units.Progress;
import slantlight.units.Workers;

/**
 * How much a metre of joint would show anywhere on a surface, before any board is placed: the
 * year's largest showing at level 4 on a lattice, for joints along and across the framing. A coarse
 * sample of the year is enough to rank places; the joints that result are scored in full.
 */
final class ShowField implements ShowWeight {
  private static final double STEP = 1.2;

  /** Keeps ties in order where nothing shows: fewer and tapered joints still win. */
  private static final double TIE = 1e-3;

  private final Vec2 axis;
  private final Vec2 origin;
  private final int columns;
  private final int rows;
  private final float[][] along;
  private final float[][] across;

  private ShowField(
      Vec2 axis, Vec2 origin, int columns, int rows, float[][] along, float[][] across) {
    this.axis = axis;
    this.origin = origin;
    this.columns = columns;
    this.rows = rows;
    this.along = along;
    this.across = across;
  }

  @Override
  public double at(Vec2 at, Vec2 direction, JointKind kind) {
    int k = kind == JointKind.TAPERED ? 0 : 1;
    Vec2 d = at.minus(origin);
    double x = clamp(d.dot(axis) / STEP, columns - 1);
    double y = clamp(axis.cross(d) / STEP, rows - 1);
    double c = direction.dot(axis);
    double c2 = c * c / direction.dot(direction);
    return c2 * mix(along[k], x, y)
        + (1 - c2) * mix(across[k], x, y)
        + TIE * ShowWeight.PLAIN.at(at, direction, kind);
  }

  private static double clamp(double x, int max) {
    return Math.max(0, Math.min(max, x));
  }

  private double mix(float[] values, double x, double y) {
    int i = Math.max(0, Math.min(columns - 2, (int) x));
    int j = Math.max(0, Math.min(rows - 2, (int) y));
    double s = x - i;
    double t = y - j;
    int i1 = Math.min(i + 1, columns - 1);
    int j1 = Math.min(j + 1, rows - 1);
    double low = values[j * columns + i] * (1 - s) + values[j * columns + i1] * s;
    double high = values[j1 * columns + i] * (1 - s) + values[j1 * columns + i1] * s;
    return low * (1 - t) + high * t;
  }

  /** Lattice of one surface: axes along and square to the framing. */
  private record Lattice(Surface surface, Vec2 axis, Vec2 origin, int columns, int rows) {
    static Lattice of(Surface surface) {
      double a = surface.framing().map(f -> f.angle()).orElse(0.0);
      Vec2 axis = new Vec2(Math.cos(a), Math.sin(a));
      double x0 = Double.POSITIVE_INFINITY;
      double y0 = Double.POSITIVE_INFINITY;
      double x1 = Double.NEGATIVE_INFINITY;
      double y1 = Double.NEGATIVE_INFINITY;
      for (Vec2 p : surface.face().outer()) {
        x0 = Math.min(x0, p.dot(axis));
        x1 = Math.max(x1, p.dot(axis));
        y0 = Math.min(y0, axis.cross(p));
        y1 = Math.max(y1, axis.cross(p));
      }
      int columns = Math.max(1, (int) Math.round((x1 - x0) / STEP));
      int rows = Math.max(1, (int) Math.round((y1 - y0) / STEP));
      double ox = (x0 + x1 - (columns - 1) * STEP) / 2;
      double oy = (y0 + y1 - (rows - 1) * STEP) / 2;
      return new Lattice(surface, axis, place(axis, ox, oy), columns, rows);
    }

    private static Vec2 place(Vec2 axis, double x, double y) {
      return new Vec2(axis.x() * x - axis.y() * y, axis.y() * x + axis.x() * y);
    }

    Vec2 at(int i, int j) {
      return origin.plus(place(axis, i * STEP, j * STEP));
    }
  }

  /**
   * A place of a lattice.
   *
   * @param optics [0 along, 1 across the framing][0 tapered, 1 butt]
   */
  private record Node(Lattice lattice, int index, PointOptics[][] optics) {
    PointOptics any() {
      return optics[0][0];
    }
  }

  /** Fields of some surfaces, by surface id. */
  static Map<String, ShowWeight> of(
      LightModel light,
      List<Surface> surfaces,
      RidgeTable table,
      ScoreOptions options,
      Progress progress) {
    if (surfaces.isEmpty()) {
      return Map.of();
    }
    LitYear year =
        LitYear.of(light, options.withDays(ScoreOptions.everyDay(options.year(), 23)).withStep(60));
    EyeChoice eyes = new EyeChoice(light);
    List<Lattice> lattices = surfaces.stream().map(Lattice::of).toList();
    List<Node> nodes = nodes(lattices, eyes, table, options.eye());
    Map<String, float[][][]> fields = new HashMap<>();
    for (Lattice l : lattices) {
      fields.put(l.surface().id(), new float[2][2][l.columns() * l.rows()]);
    }
    Set<String> rooms = surfaces.stream().map(Surface::roomId).collect(Collectors.toSet());
    YearScan scan = new YearScan(light, year);
    scan.enter(rooms);
    AtomicInteger done = new AtomicInteger();
    Workers.each(
        nodes.size(),
        i -> {
          Node node = nodes.get(i);
          follow(node, light, scan, fields.get(node.lattice().surface().id()));
          progress.at("where joints would show", done.incrementAndGet() / (double) nodes.size());
        });
    Map<String, ShowWeight> out = new HashMap<>();
    for (Lattice l : lattices) {
      float[][][] f = fields.get(l.surface().id());
      out.put(
          l.surface().id(), new ShowField(l.axis(), l.origin(), l.columns(), l.rows(), f[0], f[1]));
    }
    return out;
  }

  /**
   * Follows a joint at a place in both directions.
   *
   * @param field [along, across][tapered, butt] receives at the place's index
   */
  private static void follow(Node node, LightModel light, YearScan scan, float[][][] field) {
    List<SamplePoint> samples = List.of(node.any().point().sample());
    Basis basis = light.basis(samples, List.of(node.any().kernel()), Progress.NONE);
    SunBeams beams = light.beams(samples);
    LitYear year = scan.year();
    Ingredients.Kitchen kitchen = scan.kitchen(basis, 0);
    for (int turn = 0; turn < 2; turn++) {
      for (int kind = 0; kind < 2; kind++) {
        float[] own = new float[3];
        new PointTrace(node.optics()[turn][kind], beams, 0, year, kitchen)
            .follow(new float[3][year.states()], own);
        field[turn][kind][node.index()] = own[1];
      }
    }
  }

  private static List<Node> nodes(
      List<Lattice> lattices, EyeChoice eyes, RidgeTable table, EyeModel eyeModel) {
    JointRidge[][] ridges = {
      PointOptics.ridges(table, plain(JointKind.TAPERED), false),
      PointOptics.ridges(table, plain(JointKind.BUTT), false)
    };
    List<Node> places = new ArrayList<>();
    for (Lattice l : lattices) {
      for (int j = 0; j < l.rows(); j++) {
        for (int i = 0; i < l.columns(); i++) {
          if (l.surface().face().contains(l.at(i, j))
              && !JointPath.covered(l.surface(), l.at(i, j))) {
            places.add(new Node(l, j * l.columns() + i, new PointOptics[2][2]));
          }
        }
      }
    }
    Workers.each(places.size(), i -> fill(places.get(i), table, ridges, eyes, eyeModel));
    return places;
  }

  /** One kernel serves joints of both directions and kinds, for all the eyes that suit any. */
  private static void fill(
      Node node, RidgeTable table, JointRidge[][] ridges, EyeChoice eyes, EyeModel eyeModel) {
    Lattice l = node.lattice();
    Vec2 at = l.at(node.index() % l.columns(), node.index() / l.columns());
    SamplePoint sample = JointPath.sample(l.surface(), at, l.axis());
    EyeChoice.Acuity acuity = PointOptics.acuity(ridges[0][1], eyeModel);
    Set<Eye> chosen = new LinkedHashSet<>(eyes.likely(sample.frame(), acuity));
    Vec2 square = new Vec2(-l.axis().y(), l.axis().x());
    chosen.addAll(eyes.likely(JointPath.sample(l.surface(), at, square).frame(), acuity));
    FollowedPoint point = new FollowedPoint(sample, List.copyOf(chosen));
    ReliefKernel kernel = ReliefKernel.of(point, l.surface().paint(), table, true);
    for (int kind = 0; kind < 2; kind++) {
      node.optics()[0][kind] =
          new PointOptics(point, kernel, table, ridges[kind], Lean.U, eyeModel);
      node.optics()[1][kind] =
          new PointOptics(point, kernel, table, ridges[kind], Lean.V, eyeModel);
    }
  }

  private static Joint plain(JointKind kind) {
    return new Joint(
        "field",
        kind,
        new Vec2(0, 0),
        new Vec2(1, 0),
        OptionalDouble.empty(),
        OptionalDouble.empty());
  }
}
