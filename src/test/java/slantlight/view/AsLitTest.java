package slantlight.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.light.Incident;
import slantlight.light.IncidentField;
import slantlight.light.LightState;
import slantlight.light.SamplePoint;
import slantlight.scene.House;
import slantlight.scene.Paint;
import slantlight.scene.Sheen;
import slantlight.scene.Surface;
import slantlight.sight.Coating;
import slantlight.sight.FlankLight;
import slantlight.sight.JointRidge;
import slantlight.sight.RidgeKind;
import slantlight.sight.RidgeTable;
import slantlight.view.draw.Box;
import slantlight.view.gl.GlContext;
import slantlight.view.gl.Offscreen;
import slantlight.view.gl.Pixels;
import slantlight.view.gl.Target;

/** Holds pixels of the as-lit picture to luminances computed apart from it. */
class AsLitTest {
  private static final int W = 640;
  private static final int H = 400;
  private static final Box PICTURE = new Box(0, 0, W, H);

  private static Pixels draw(
      ViewModel model,
      LitMoment moment,
      Camera camera,
      double white,
      LitHouse.Half half,
      double x) {
    HouseShape shape = new HouseShape(model);
    try (GlContext gl = Offscreen.open(Offscreen.Way.SOFTWARE);
        LitHouse house = new LitHouse();
        Target target = new Target(W, H, 1)) {
      house.show(model, shape);
      house.fill(moment);
      house.white(white);
      house.draw(target, new int[] {0, 0, W, H}, camera, List.of(half), x, 1);
      Pixels p = target.read();
      gl.check();
      return p;
    }
  }

  /** The stated tone curve: straight to 0.8, then a soft shoulder. */
  private static double curve(double x) {
    return x <= 0.8 ? x : 0.8 + 0.2 * (1 - Math.exp(-(x - 0.8) / 0.2));
  }

  private static double encoded(double y) {
    return 255 * (y <= 0.0031308 ? 12.92 * y : 1.055 * Math.pow(y, 1 / 2.4) - 0.055);
  }

  private static double linear(int value) {
    double v = value / 255.0;
    return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
  }

  /** Linear luminance of a pixel averaged over a few neighbours, which evens out the dither. */
  private static double luminance(Pixels p, int x, int y) {
    double sum = 0;
    for (int j = -2; j <= 2; j++) {
      for (int i = -2; i <= 2; i++) {
        int rgb = p.at(x + i, y + j);
        sum += Hue.luminance(linear(rgb >> 16 & 255), linear(rgb >> 8 & 255), linear(rgb & 255));
      }
    }
    return sum / 25;
  }

  @Test
  void aFlatPatchShowsItsComputedLuminanceThroughTheToneCurve() {
    ViewModel model = ViewModel.unscored(Studio.HOUSE);
    HouseShape shape = new HouseShape(model);
    // Linear sums of light: the kernel splits this beam over cones of the same direction.
    Vec3 local = new Vec3(200, -350, 600);
    LitMoment moment = Studio.even(model, shape, local.x(), local.y(), local.z());
    Camera camera = Camera.from(new Vec3(1, 2, 1.4), new Vec3(4, 7, 2));
    Coating coating = Coating.of(new Paint(0.85, Sheen.FLAT));
    for (double white : new double[] {1200, 400, 150}) {
      Pixels p = draw(model, moment, camera, white, new LitHouse.Half(4, Optional.empty()), 1);
      for (Vec3 place : List.of(new Vec3(3.2, 8, 1.5), new Vec3(5.2, 6, 1.8))) {
        Vec2 at = camera.project(place, PICTURE);
        String wall = place.y() == 8 ? "room/north" : "room/east";
        Frame f = Studio.HOUSE.surface(wall).face().frame();
        Vec3 eye = f.directionToLocal(camera.eye().minus(place).unit());
        Vec3 d = local.unit();
        double expected =
            local.length() * FlankLight.weight(coating, 0, 1, d.x(), d.y(), d.z(), eye);
        int rgb = p.at((int) at.x(), (int) at.y());
        Vec3 hue = Hue.WALL.times(expected / white);
        // One step of eight bits for the dither and one for the table's interpolation.
        assertThat((double) (rgb >> 16 & 255)).isCloseTo(encoded(curve(hue.x())), within(2.0));
        assertThat((double) (rgb >> 8 & 255)).isCloseTo(encoded(curve(hue.y())), within(2.0));
        assertThat((double) (rgb & 255)).isCloseTo(encoded(curve(hue.z())), within(2.0));
      }
    }
  }

  @Test
  void theRoomShowsTheLightThatTheModelComputes() {
    ViewModel model = ViewModel.unscored(Studio.HOUSE);
    LitMoment moment = Studio.moment(Studio.at(5, 18, 9, 0));
    Camera camera = Camera.from(new Vec3(2.6, 6.8, 1.6), new Vec3(2.6, 1, 2.3));
    double white = 3000;
    Pixels p = draw(model, moment, camera, white, new LitHouse.Half(4, Optional.empty()), 1);
    for (Vec3 place :
        List.of(new Vec3(2.2, 3, 2.75), new Vec3(3.4, 4, 2.75), new Vec3(5.2, 2.5, 1.6))) {
      Surface s = Studio.HOUSE.surface(place.z() == 2.75 ? "room/ceiling" : "room/east");
      double expected = luminance(s, place, camera.eye(), moment.state());
      Vec2 at = camera.project(place, PICTURE);
      double shown = luminance(p, (int) at.x(), (int) at.y()) * white;
      // The picture uses the year's basis (sun grid, sky zones), linear between nodes 0.75 m apart
      // and bundled into cones; the list is complete: together within 8 %.
      assertThat(shown).as(place.toString()).isCloseTo(expected, within(0.08 * expected));
    }
  }

  /** Luminance by the complete list of light, cone by cone. */
  private static double luminance(Surface s, Vec3 place, Vec3 eye, LightState state) {
    Frame f = s.face().frame();
    Frame here = new Frame(place, f.u(), f.v(), f.n());
    IncidentField field = Studio.light().incident(new SamplePoint(here, "room"), state);
    double[] directions = new double[3 * field.incidents().size()];
    double[] lux = new double[field.incidents().size()];
    for (int i = 0; i < lux.length; i++) {
      Incident incident = field.incidents().get(i);
      Vec3 d = f.directionToLocal(incident.direction());
      directions[3 * i] = d.x();
      directions[3 * i + 1] = d.y();
      directions[3 * i + 2] = d.z();
      lux[i] = incident.normalLux();
    }
    Vec3 toEye = f.directionToLocal(eye.minus(place).unit());
    return FlankLight.level(directions, lux, Coating.of(s.paint()), toEye);
  }

  @Test
  void aRidgeHasTheContrastOfItsFlanks() {
    ViewModel model = Studio.MODEL;
    HouseShape shape = new HouseShape(model);
    // Light along v of the ceiling, across its tapered joint T3 at v = 3.6576.
    LitMoment moment = Studio.even(model, shape, 0, 700, 350);
    Frame f = Studio.HOUSE.surface("room/ceiling").face().frame();
    double v = 3 * 4 * 0.3048;
    Vec3 place = f.toWorld(new Vec2(2, v));
    Camera camera = Camera.from(place.plus(new Vec3(0, -0.02, -0.45)), place);
    double strength = 4;
    Pixels p = draw(model, moment, camera, 700, new LitHouse.Half(4, Optional.empty()), strength);
    JointRidge ridge = RidgeStrips.ridge(model.joint("room/ceiling#T3").orElseThrow().joint(), 4);
    double rim = (ridge.crown().width() - ridge.edge().width()) / 2;
    double quarter = ridge.edge().width() / 4;
    List<Double> shown = new ArrayList<>();
    List<Double> expected = new ArrayList<>();
    Coating coating = Coating.of(Studio.HOUSE.surface("room/ceiling").paint());
    for (double x : new double[] {rim - quarter, rim + quarter}) {
      Vec3 at = f.toWorld(new Vec2(2, v + x));
      Vec2 pixel = camera.project(at, PICTURE);
      shown.add(luminance(p, (int) pixel.x(), (int) pixel.y()));
      Vec3 eye = f.directionToLocal(camera.eye().minus(at).unit());
      double slope = strength * RidgeStrips.slope(ridge, x);
      double cos = 1 / Math.sqrt(1 + slope * slope);
      Vec3 d = new Vec3(700, 0, 350).unit();
      // The ridge's own frame: x across (v), y along.
      Vec3 across = new Vec3(eye.y(), -eye.x(), eye.z());
      expected.add(FlankLight.weight(coating, slope * cos, cos, d.x(), 0, d.z(), across));
    }
    double contrast = michelson(shown);
    // The lobe is drawn broader than it is and facets are millimetres wide: a tenth.
    assertThat(contrast).isCloseTo(michelson(expected), within(0.1 * michelson(expected)));
  }

  /**
   * A spot is its profile turned about its middle: its steepest places shade as that slope does.
   */
  @Test
  void aFastenerSpotHasTheContrastOfItsFlanks() {
    ViewModel model = Studio.MODEL;
    HouseShape shape = new HouseShape(model);
    LitMoment moment = Studio.even(model, shape, 0, 700, 350);
    Frame f = Studio.HOUSE.surface("room/ceiling").face().frame();
    Vec2 middle = spotOffJoints(model);
    Vec3 place = f.toWorld(middle);
    Camera camera = Camera.from(place.plus(new Vec3(0, -0.02, -0.45)), place);
    double strength = 4;
    Pixels p = draw(model, moment, camera, 700, new LitHouse.Half(4, Optional.empty()), strength);
    JointRidge ridge = RidgeTable.standard().ridge(RidgeKind.SPOT, 4);
    double steep = ridge.crown().width() / 2 - ridge.edge().width() / 4;
    Coating coating = Coating.of(Studio.HOUSE.surface("room/ceiling").paint());
    List<Double> shown = new ArrayList<>();
    List<Double> expected = new ArrayList<>();
    for (double y : new double[] {-steep, steep}) {
      Vec3 at = f.toWorld(middle.plus(new Vec2(0, y)));
      Vec2 pixel = camera.project(at, PICTURE);
      shown.add(luminance(p, (int) pixel.x(), (int) pixel.y()));
      // The five pixels that are averaged cover a good part of a flank.
      double pitch =
          0.001
              / camera
                  .project(f.toWorld(middle.plus(new Vec2(0, y + 0.001))), PICTURE)
                  .distance(pixel);
      double sum = 0;
      for (int k = -2; k <= 2; k++) {
        sum += facet(coating, camera, f, middle, y + k * pitch, strength, ridge);
      }
      expected.add(sum / 5);
    }
    assertThat(michelson(expected)).isGreaterThan(0.01);
    // As for a joint; and the sides of the drawn spot are straight between eight directions.
    assertThat(michelson(shown)).isCloseTo(michelson(expected), within(0.15 * michelson(expected)));
  }

  /** Luminance per lx of a facet of a spot at a distance from its middle along v. */
  private static double facet(
      Coating coating,
      Camera camera,
      Frame f,
      Vec2 middle,
      double y,
      double strength,
      JointRidge ridge) {
    Vec3 at = f.toWorld(middle.plus(new Vec2(0, y)));
    Vec3 eye = f.directionToLocal(camera.eye().minus(at).unit());
    double slope = strength * RidgeStrips.slope(ridge, y);
    double cos = 1 / Math.sqrt(1 + slope * slope);
    Vec3 d = new Vec3(700, 0, 350).unit();
    Vec3 across = new Vec3(eye.y(), -eye.x(), eye.z());
    return FlankLight.weight(coating, slope * cos, cos, d.x(), 0, d.z(), across);
  }

  private static Vec2 spotOffJoints(ViewModel model) {
    var score = model.score("room/ceiling").orElseThrow();
    return score.layout().fasteners().stream()
        .filter(
            p ->
                score.joints().stream()
                    .allMatch(j -> HouseShape.distance(p, j.joint().from(), j.joint().to()) > 0.45))
        .findFirst()
        .orElseThrow();
  }

  private static double michelson(List<Double> pair) {
    return Math.abs(pair.get(0) - pair.get(1)) / (pair.get(0) + pair.get(1));
  }

  /** The eye stands where a sun patch on dark satin mirrors the sun: its sheen is all it sees. */
  @Test
  void theBrightnessFollowsTheSheenOfASunPatch() {
    Paint satin = new Paint(0.05, Sheen.SATIN);
    Surface floor = Studio.HOUSE.surface("room/floor").withPaint(satin);
    House dark =
        Studio.HOUSE.withSurfaces(
            Studio.HOUSE.surfaces().stream()
                .map(s -> s.id().equals(floor.id()) ? floor : s)
                .toList());
    ViewModel model = ViewModel.unscored(dark);
    LitMoment moment = Studio.moment(Studio.at(12, 18, 12, 45));
    Vec2 middle =
        moment.beams().stream()
            .map(LitMoment.Beam::patch)
            .filter(p -> p.surface().id().equals(floor.id()))
            .findFirst()
            .orElseThrow()
            .inside();
    Vec3 place = floor.face().frame().toWorld(middle, 0.001);
    Vec3 sun = moment.state().sky().sun();
    Vec3 eye = place.plus(new Vec3(-sun.x(), -sun.y(), sun.z()).times(1.5));
    double shown = luminance(floor, place, eye, moment.state());
    double matt = moment.state().sky().sunNormalLux() * sun.z() * satin.lrv() / Math.PI;
    assertThat(shown).isGreaterThan(3 * matt);
    try (GlContext gl = Offscreen.open(Offscreen.Way.SOFTWARE);
        LitHouse house = new LitHouse()) {
      house.show(model, new HouseShape(model));
      house.fill(moment);
      house.meter(Optional.of(place), Optional.of(floor), eye);
      // Straight up to 80 % of white, so contrasts there are true; not lost in the dark either.
      assertThat(shown / house.white()).isBetween(0.3, 0.8);
      gl.check();
    }
  }

  @Test
  void theSunPatchOnTheFloorIsTheProjectedWindow() {
    ViewModel model = ViewModel.unscored(Studio.HOUSE);
    LitMoment moment = Studio.moment(Studio.at(12, 18, 12, 45));
    Vec3 sun = moment.state().sky().sun();
    Camera camera = Camera.around(new Vec3(2.6, 4, 0), Math.PI, Math.toRadians(88), 16);
    Pixels p = draw(model, moment, camera, 30000, new LitHouse.Half(4, Optional.empty()), 1);
    int wrong = 0;
    int lit = 0;
    for (int y = 0; y < H; y++) {
      for (int x = 0; x < W; x++) {
        Vec3 ray = camera.ray(x + 0.5, y + 0.5, PICTURE);
        double t = -camera.eye().z() / ray.z();
        Vec3 at = camera.eye().plus(ray.times(t));
        if (at.x() < 0.05 || at.x() > 5.15 || at.y() < 0.05 || at.y() > 7.95) {
          continue;
        }
        boolean bright = (p.at(x, y) >> 16 & 255) > 60;
        double margin = window(at, sun);
        double pixel = 16 * 2 * Math.tan(camera.fieldOfView() / 2) / H;
        if (bright) {
          lit++;
        }
        if (Math.abs(margin) > pixel && bright != margin > 0) {
          wrong++;
        }
      }
    }
    assertThat(lit).isGreaterThan(1000);
    assertThat(wrong).isZero();
  }

  /**
   * Distance, m on the floor, by which the ray from a floor point to the sun clears the window's
   * rim; negative when it misses it. Plane geometry: the window is 0.4 to 4.8 m, sill 0, head 2.44.
   */
  private static double window(Vec3 floor, Vec3 sun) {
    double t = -floor.y() / sun.y();
    double x = floor.x() + t * sun.x();
    double z = t * sun.z();
    double sides = Math.min(x - 0.4, 4.8 - x);
    double head = (2.44 - z) * -sun.y() / sun.z();
    return Math.min(sides, head);
  }

  @Test
  void sunPatchesAreWhereTheLightModelLetsTheSunIn() {
    java.util.Random random = new java.util.Random(7);
    int checked = 0;
    for (int month : new int[] {1, 3, 12}) {
      Vec3 sun =
          new Moments(Studio.HOUSE)
              .at(Studio.at(month, 18, 10, 20), slantlight.sky.Weather.CLEAR)
              .sky()
              .sun();
      List<SunPatch> patches = SunPatch.all(Studio.HOUSE, sun);
      for (int i = 0; i < 400; i++) {
        Surface s = Studio.HOUSE.surfaces().get(random.nextInt(6));
        Vec2 size = s.face().outer().get(2);
        Vec2 at = new Vec2(random.nextDouble() * size.x(), random.nextDouble() * size.y());
        if (!s.face().contains(at)) {
          continue;
        }
        boolean painted = false;
        boolean near = false;
        for (SunPatch p : patches) {
          if (p.surface().id().equals(s.id())) {
            painted |= p.region().contains(Outlines.point(at));
            near |= p.region().getBoundary().distance(Outlines.point(at)) < 0.002;
          }
        }
        Frame f = s.face().frame();
        SamplePoint point = new SamplePoint(new Frame(f.toWorld(at), f.u(), f.v(), f.n()), "room");
        boolean sunlit =
            Studio.light().beams(List.of(point)).transmittance(0, sun.x(), sun.y(), sun.z()) > 0;
        if (!near) {
          assertThat(painted).as(s.id() + " " + at).isEqualTo(sunlit);
          checked++;
        }
      }
    }
    assertThat(checked).isGreaterThan(800);
  }
}
