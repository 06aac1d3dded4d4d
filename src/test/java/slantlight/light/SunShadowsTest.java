package slantlight.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slantlight.light.FleckShapes.both;
import static slantlight.light.FleckShapes.either;
import static slantlight.light.FleckShapes.prism;
import static slantlight.light.FleckShapes.through;
import static slantlight.light.FleckShapes.thrown;
import static slantlight.light.FleckShapes.upright;
import static slantlight.light.FleckShapes.without;
import static slantlight.light.SunFlecksTest.ROOM;
import static slantlight.light.SunFlecksTest.WINDOW;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import slantlight.geom.Face;
import slantlight.geom.Vec3;
import slantlight.scene.Block;
import slantlight.scene.House;
import slantlight.scene.Outside;
import slantlight.scene.Surface;
import slantlight.sky.GlassPane;
import slantlight.units.Progress;

/**
 * Shadows in the sun's beam, patch by patch: what comes through the openings less what is thrown by
 * things outside and by walls inside, cut by the JTS topology library.
 */
class SunShadowsTest {
  /** South wall of {@link SunFlecksTest#ROOM}. */
  private static final int SOUTH = 2;

  @Test
  void aBoardOutsideShadesWhatItsShadowCovers() {
    agreeBefore(List.of(FleckShapes.face(upright(0.4, 2.1, 0.2, 1.9, -0.5))), 23);
  }

  @Test
  void aClosedBoxShadesWhatItsSidesCover() {
    List<Face> box = box(1, 1.8, -1.2, -0.6, -0.5, 1.6);
    assertThat(Body.of(box).convex()).isTrue();
    agreeBefore(box, 24);
  }

  /** What comes in by the top is stopped by the sides, unless one of them is open as well. */
  @Test
  void anOpenBoxShadesWhatItsSidesCover() {
    List<Face> box = box(0.8, 2.4, -1.6, -0.4, 0.9, 1.5);
    box.removeIf(f -> f.frame().n().z() > 0.5);
    assertThat(box).hasSize(5);
    agreeBefore(box, 25);
    box.removeIf(f -> f.frame().n().y() > 0.5);
    assertThat(box).hasSize(4);
    agreeBefore(box, 25);
  }

  @Test
  void aBoxIsCutOffAtTheGlass() {
    List<Face> box = box(1.5, 2, -0.7, 0.5, 0.5, 1.4);
    agreeBefore(ROOM, 0, box, box(1.5, 2, -0.7, 0, 0.5, 1.4), 26);
    agreeBefore(SunFlecksTest.SET_BACK, 0.25, box, box(1.5, 2, -0.7, -0.25, 0.5, 1.4), 27);
  }

  @Test
  void aWedgeAndAnElbowShadeWhatTheirSidesCover() {
    List<Face> both = prism(end(1.4, -0.9, 0.9, -0.5, 2.2, -0.5, 0.9), new Vec3(0.6, 0, 0));
    both.addAll(
        prism(
            end(2.2, -1, 0.8, -1, 1.9, -0.8, 1.9, -0.8, 1.1, -0.3, 1.1, -0.3, 0.8),
            new Vec3(0.4, 0, 0)));
    agreeBefore(both, 28);
  }

  private static void agreeBefore(List<Face> sides, int seed) {
    agreeBefore(ROOM, 0, sides, sides, seed);
  }

  /** Shadows of something before the window, of which some lies beyond the glass. */
  private static void agreeBefore(
      House house, double reveal, List<Face> sides, List<Face> beyond, int seed) {
    Block block = new Block("thing", "thing", sides, 0.3);
    List<List<Vec3>> rings = beyond.stream().map(Face::corners).toList();
    agree(
        house.withOutside(new Outside(0, List.of(), List.of(block))),
        0.8,
        seed,
        (patch, sun) -> through(patch.frame(), WINDOW, reveal, sun),
        (patch, sun) -> FleckShapes.shadow(patch.frame(), rings, sun));
  }

  /** Each room's window shines into the other as far as both sides of the doorway let it. */
  @Test
  void theSunComesIntoTheNextRoomThroughThePassage() {
    House two = RowHouses.grid(2, 1);
    List<List<Vec3>> windows = List.of(upright(1, 4, 0.3, 2.4, 0), upright(6.1, 9.1, 0.3, 2.4, 0));
    agree(
        two,
        0.75 * 0.9,
        29,
        (patch, sun) ->
            either(
                through(patch.frame(), windows.get(0), 0.1, sun),
                through(patch.frame(), windows.get(1), 0.1, sun)),
        (patch, sun) -> {
          Geometry other = through(patch.frame(), windows.get(1 - patch.room()), 0.1, sun);
          return either(
              without(other, thrown(patch.frame(), doorway(5), sun)),
              without(other, thrown(patch.frame(), doorway(5.1), sun)));
        });
  }

  private static List<Vec3> doorway(double x) {
    return List.of(new Vec3(x, 2, 0), new Vec3(x, 3, 0), new Vec3(x, 3, 2.1), new Vec3(x, 2, 2.1));
  }

  @Test
  void theInnerWallsOfAnElbowShadeItsOtherLeg() {
    List<Vec3> outline =
        List.of(
            Vec3.ZERO,
            new Vec3(4, 0, 0),
            new Vec3(4, 0.8, 0),
            new Vec3(1.6, 0.8, 0),
            new Vec3(1.6, 4, 0),
            new Vec3(0, 4, 0));
    List<Face> faces = prism(outline, new Vec3(0, 0, 2.5));
    List<Surface> surfaces = surfaces(faces);
    surfaces.set(1, ROOM.surfaces().get(SOUTH));
    agreeWithin(ROOM.withSurfaces(surfaces), faces.subList(3, 5), 30);
  }

  @Test
  void aBeamUnderTheCeilingShadesWhatItsSidesCover() {
    List<Face> sides =
        prism(end(0, 0.6, 1.2, 0.6, 1.6, 0.8, 1.6, 0.8, 1.2), new Vec3(4, 0, 0)).subList(0, 4);
    agreeWithin(furnished(sides), sides, 31);
  }

  @Test
  void aScreenOnTheFloorShadesWhatItCovers() {
    List<Face> screen =
        List.of(
            FleckShapes.face(upright(1.5, 2.5, 0, 1, 1)),
            FleckShapes.face(
                List.of(
                    new Vec3(2.5, 1, 0),
                    new Vec3(2.9, 1.6, 0),
                    new Vec3(2.9, 1.6, 1),
                    new Vec3(2.5, 1, 1))));
    agreeWithin(furnished(screen), screen, 32);
  }

  /** Shadows of things inside, each of which lies on one side of the plane of every patch. */
  private static void agreeWithin(House house, List<Face> inside, int seed) {
    agree(
        house,
        0.8,
        seed,
        (patch, sun) -> thrown(patch.frame(), WINDOW, sun),
        (patch, sun) ->
            FleckShapes.shadow(
                patch.frame(),
                inside.stream()
                    .map(Face::corners)
                    .filter(r -> r.stream().anyMatch(p -> patch.frame().height(p) > 1e-9))
                    .toList(),
                sun));
  }

  private static House furnished(List<Face> inside) {
    List<Surface> all = new ArrayList<>(ROOM.surfaces());
    all.addAll(surfaces(inside));
    return ROOM.withSurfaces(all);
  }

  private static List<Surface> surfaces(List<Face> faces) {
    List<Surface> out = new ArrayList<>();
    for (Face f : faces) {
      out.add(RowHouses.wall("room", "side-" + out.size(), f));
    }
    return out;
  }

  /**
   * Holds the sun on every patch to the shapes' areas.
   *
   * @param transmittance of the glass at normal incidence, with its frame
   * @param open what openings throw on the plane of a surface, given by a patch of it
   * @param shadow what of it is shaded
   */
  private static void agree(
      House house,
      double transmittance,
      int seed,
      BiFunction<Patch, Vec3, Geometry> open,
      BiFunction<Patch, Vec3, Geometry> shadow) {
    RoomLight light = Transport.of(house, LightHouses.QUICK, Progress.NONE).roomLight();
    Random random = new Random(seed);
    int bright = 0;
    int dark = 0;
    int partly = 0;
    for (int i = 0; i < 45; i++) {
      Vec3 sun = FleckShapes.sun(random);
      FleckTable under = light.flecks().under(sun);
      for (int surface = 0; surface < light.flecks().surfaces(); surface++) {
        int[] patches = light.flecks().of(surface);
        Patch first = light.patches().get(patches[0]);
        double cos = sun.dot(first.normal());
        if (cos <= 1e-3) {
          continue;
        }
        Geometry through = open.apply(first, sun);
        Geometry lit = without(through, shadow.apply(first, sun));
        double most = cos * transmittance * GlassPane.relativeTransmittance(-sun.y(), 2);
        for (int p : patches) {
          Geometry own = FleckShapes.shape(light.patches().get(p));
          double all = both(own, through).getArea();
          double left = both(own, lit).getArea();
          assertThat((double) under.mean(p, 0, 0))
              .as("patch at %s under %s", light.patches().get(p).centre(), sun)
              .isCloseTo(most * left / own.getArea(), within(1e-5));
          if (all > 0) {
            bright += left > 0.999 * all ? 1 : 0;
            dark += left < 0.001 * all ? 1 : 0;
            partly += left > 0.001 * all && left < 0.999 * all ? 1 : 0;
          }
        }
      }
    }
    assertThat(bright).isGreaterThan(100);
    assertThat(dark).isGreaterThan(5);
    assertThat(partly).isGreaterThan(50);
  }

  private static List<Face> box(double x0, double x1, double y0, double y1, double z0, double z1) {
    return prism(end(x0, y0, z0, y0, z1, y1, z1, y1, z0), new Vec3(x1 - x0, 0, 0));
  }

  /** West end: y and z of each corner in turn. */
  private static List<Vec3> end(double x, double... yz) {
    List<Vec3> out = new ArrayList<>();
    for (int i = 0; i < yz.length; i += 2) {
      out.add(new Vec3(x, yz[i], yz[i + 1]));
    }
    return out;
  }
}
