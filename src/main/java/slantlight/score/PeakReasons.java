package slantlight.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import slantlight.geom.Vec3;
import slantlight.light.IncidentField;
import slantlight.light.LightModel;
import slantlight.light.LightState;
import slantlight.light.Source;
import slantlight.light.SourceKind;
import slantlight.scene.Eye;

/** Says where the contrast of a worst moment comes from. */
final class PeakReasons {
  private static final Source BOUNCED = new Source(SourceKind.BOUNCE, "", "light bounced inside");

  private final LightModel light;
  private final LitYear year;

  PeakReasons(LightModel light, LitYear year) {
    this.light = light;
    this.year = year;
  }

  /**
   * One source's part in what the eye sees.
   *
   * @param change luminance change per radian of tilt, cd/m2
   * @param luminance cd/m2
   * @param illuminance lx
   * @param vector light vector, lx
   */
  private record Part(
      Source source, double change, double luminance, double illuminance, Vec3 vector) {
    static final Part NONE = new Part(BOUNCED, 0, 0, 0, Vec3.ZERO);

    Part plus(Part o) {
      return new Part(
          source,
          change + o.change,
          luminance + o.luminance,
          illuminance + o.illuminance,
          vector.plus(o.vector));
    }

    Part minus(Part o) {
      return new Part(
          source,
          change - o.change,
          luminance - o.luminance,
          illuminance - o.illuminance,
          vector.minus(o.vector));
    }
  }

  /**
   * Reasons of a point's worst moment.
   *
   * @param kitchen of the point
   */
  Peak of(PointOptics optics, Ingredients.Kitchen kitchen, PointTrace.Worst worst) {
    LightState state = year.light(worst.state());
    List<Part> parts = new ArrayList<>();
    Part sum = Part.NONE;
    Part beam = Part.NONE;
    IncidentField direct = light.direct(optics.point().sample(), state);
    for (Map.Entry<Source, IncidentField> entry : direct.bySource().entrySet()) {
      Part part = part(entry.getKey(), entry.getValue(), optics, worst.eye());
      parts.add(part);
      sum = sum.plus(part);
      beam = part.source().kind() == SourceKind.SUN ? beam.plus(part) : beam;
    }
    Part total =
        ofRows(BOUNCED, rows(optics, kitchen, worst.state()), optics, worst.eye()).plus(beam);
    parts.add(total.minus(sum));
    Part main =
        parts.stream()
            .max(
                Comparator.comparingDouble((Part p) -> p.change() * Math.signum(total.change()))
                    .thenComparing(p -> p.source().label()))
            .orElseThrow();
    return peak(optics, worst, total, main);
  }

  private Peak peak(PointOptics optics, PointTrace.Worst worst, Part total, Part main) {
    Vec3 n = optics.frame().n();
    double grazing = Math.asin(Math.max(0, Math.min(1, main.vector().unit().dot(n))));
    boolean beam =
        main.source().kind() == SourceKind.SUN || main.source().kind() == SourceKind.WATER;
    double q = Math.abs(total.change()) / total.luminance();
    Eye eye = optics.point().eyes().get(worst.eye());
    double across = total.vector().dot(optics.frame().u());
    double along = optics.lean() == Lean.ALL ? total.vector().dot(optics.frame().v()) : 0;
    return new Peak(
        worst.showing(),
        Math.min(1, q * optics.edgeSlope(1)),
        year.when(worst.state()),
        year.weather(worst.state()),
        optics.frame().origin(),
        eye.id(),
        eye.position().distance(optics.frame().origin()),
        main.source(),
        total.change() == 0 ? 0 : Math.min(1, main.change() / total.change()),
        grazing,
        beam ? optics.crownHeight(1) / Math.tan(Math.max(1e-3, grazing)) : Double.NaN,
        total.illuminance(),
        Math.hypot(across, along) / total.illuminance());
  }

  private static Part part(Source source, IncidentField field, PointOptics optics, int eye) {
    double[] w = new double[optics.kernel().rows()];
    double[] rows = new double[w.length];
    field
        .incidents()
        .forEach(
            i -> {
              Vec3 d = optics.frame().directionToLocal(i.direction());
              if (d.z() > 0) {
                optics.kernel().weigh(d.x(), d.y(), d.z(), w);
                for (int r = 0; r < rows.length; r++) {
                  rows[r] += w[r] * i.normalLux();
                }
              }
            });
    return ofRows(source, rows, optics, eye);
  }

  /** Change per radian and light vector out of kernel rows. */
  private static Part ofRows(Source source, double[] rows, PointOptics optics, int eye) {
    ReliefKernel kernel = optics.kernel();
    double across = rows[kernel.row(eye, ReliefKernel.CHANGE_ACROSS)];
    double along = optics.lean() == Lean.ALL ? rows[kernel.row(eye, ReliefKernel.CHANGE_ALONG)] : 0;
    double change =
        optics.lean() == Lean.ALL
            ? Math.copySign(Math.hypot(across, along), across + along)
            : across;
    Vec3 vector =
        optics
            .frame()
            .directionToWorld(
                new Vec3(
                    rows[kernel.lightAcross()],
                    rows[kernel.lightAlong()],
                    rows[kernel.illuminance()]));
    double luminance = rows[kernel.row(eye, ReliefKernel.LUMINANCE)];
    return new Part(source, change, luminance, rows[kernel.illuminance()], vector);
  }

  private double[] rows(PointOptics optics, Ingredients.Kitchen kitchen, int state) {
    Ingredients.Menu menu = year.menu();
    int run = menu.runOf(state);
    int from = menu.start(run);
    int to = menu.start(run + 1);
    double[] rows = new double[optics.kernel().rows()];
    float[][] mixed = new float[rows.length][to - from];
    kitchen.cook(menu, from, to, mixed, 0, rows.length);
    kitchen.sharpen(menu, run, mixed, 0, rows.length);
    for (int r = 0; r < rows.length; r++) {
      rows[r] = mixed[r][state - from];
    }
    return rows;
  }
}
