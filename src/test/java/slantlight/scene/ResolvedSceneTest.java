package slantlight.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;

/** Rooms come out as drawn: areas and heights against hand calculation. */
class ResolvedSceneTest {
  private static final String HEAD =
      """
      { "slantlight": 1, "name": "Test", "units": "m",
        "site": { "latitude": 45, "longitude": 10, "zone": "Europe/Rome" },
      """;

  @TempDir Path folder;

  private House house(String rest) {
    Read read = SceneTexts.read(folder, HEAD + rest);
    if (read instanceof Read.Faulty f) {
      throw new AssertionError(f.faults().stream().map(Fault::text).toList().toString());
    }
    return ((Read.Ok) read).house();
  }

  private static String room(String more) {
    return "\"rooms\": [ { \"id\": \"r\", \"use\": \"living\", \"height\": 3, " + more + " } ] }";
  }

  private static final String BOX = "\"outline\": [[0,0],[6,0],[6,4],[0,4]]";

  @Test
  void aShedRisesAwayFromWhereItFalls() {
    House h =
        house(
            room(BOX + ", \"ceiling\": { \"kind\": \"shed\", \"falls\": \"south\", \"high\": 5 }"));
    assertThat(h.surface("r/wall-south").face().area()).isCloseTo(18, within(1e-9));
    assertThat(h.surface("r/wall-north").face().area()).isCloseTo(30, within(1e-9));
    assertThat(h.surface("r/wall-east").face().area()).isCloseTo(16, within(1e-9));
    assertThat(h.surface("r/ceiling").face().area()).isCloseTo(6 * Math.hypot(4, 2), within(1e-6));
    Vec3 n = h.surface("r/ceiling").face().frame().n();
    // z = 3 + y/2, so the downward normal is (0, 1/2, -1) made unit.
    assertThat(n.z()).isNegative();
    assertThat(n.y() / -n.z()).isCloseTo(0.5, within(1e-9));
    assertThat(h.surface("r/ceiling").framing().orElseThrow().angle())
        .isCloseTo(Math.PI / 2, within(1e-12));
    assertThat(h.surface("r/ceiling").face().frame().v().z()).isNegative();
  }

  @Test
  void aGableHasTwoSlopesAndPointedEndWalls() {
    House h =
        house(
            room(
                BOX
                    + ", \"ceiling\": { \"kind\": \"gable\", \"ridge\": \"east-west\", \"high\": 4 }"));
    assertThat(h.surface("r/ceiling-south").face().area())
        .isCloseTo(6 * Math.hypot(2, 1), within(1e-6));
    assertThat(h.surface("r/ceiling-north").face().area())
        .isCloseTo(6 * Math.hypot(2, 1), within(1e-6));
    assertThat(h.surface("r/wall-east").face().outer()).hasSize(5);
    assertThat(h.surface("r/wall-east").face().area()).isCloseTo(4 * 3 + 4 * 1 / 2.0, within(1e-9));
    assertThat(h.surface("r/wall-south").face().area()).isCloseTo(18, within(1e-9));
  }

  @Test
  void anEllIsOnePieceHoweverItIsDrawn() {
    House one = house(room("\"outline\": [[0,0],[6,0],[6,2],[3,2],[3,4],[0,4]]"));
    House two =
        house(room("\"outlines\": [ [[0,0],[6,0],[6,2],[0,2]], [[0,2],[3,2],[3,4],[0,4]] ]"));
    for (House h : List.of(one, two)) {
      assertThat(h.surface("r/floor").face().area()).isCloseTo(18, within(1e-6));
      assertThat(h.surfaces().stream().filter(s -> s.kind() == SurfaceKind.WALL)).hasSize(6);
      assertThat(h.surface("r/wall-north-1").face().area()).isCloseTo(9, within(1e-6));
      assertThat(h.surface("r/wall-north-2").face().area()).isCloseTo(9, within(1e-6));
    }
  }

  @Test
  void aGableOverAnEllClosesToo() {
    House h =
        house(
            room(
                "\"outline\": [[0,0],[6,0],[6,2],[3,2],[3,4],[0,4]], \"ceiling\": { \"kind\":"
                    + " \"gable\", \"ridge\": 90, \"high\": 4, \"shift\": 0.5 }"));
    double plan = 0;
    for (Surface s : h.surfaces()) {
      if (s.kind() == SurfaceKind.CEILING) {
        plan += s.face().area() * -s.face().frame().n().z();
      }
    }
    assertThat(plan).isCloseTo(18, within(1e-6));
  }

  @Test
  void aVoidIsWalledAllRound() {
    House h = house(room(BOX + ", \"voids\": [ [[2,1],[3,1],[3,2],[2,2]] ]"));
    assertThat(h.surface("r/floor").face().area()).isCloseTo(23, within(1e-6));
    assertThat(h.surface("r/ceiling").face().area()).isCloseTo(23, within(1e-6));
    List<Surface> walls = h.surfaces().stream().filter(s -> s.kind() == SurfaceKind.WALL).toList();
    assertThat(walls).hasSize(8);
    // The chimney's faces look away from its middle.
    for (Surface w : walls.subList(4, 8)) {
      Vec3 fromMiddle =
          w.face().frame().toWorld(w.face().centroid()).minus(new Vec3(2.5, 1.5, 1.5));
      assertThat(fromMiddle.dot(w.face().frame().n())).isCloseTo(0.5, within(1e-6));
    }
  }

  @Test
  void aClockwiseOutlineKeepsTheNumbersOfItsEdges() {
    House h =
        house(
            room(
                "\"outline\": [[0,0],[0,4],[6,4],[6,0]], \"walls\": [ { \"wall\": 2, \"id\":"
                    + " \"back\" } ]"));
    assertThat(h.surface("r/back").face().frame().n().y()).isCloseTo(-1, within(1e-12));
    assertThat(h.room("r").outline().get(0)).isEqualTo(new Vec2(6, 0));
  }

  @Test
  void theDrawingIsTurnedAsAWhole() {
    House h =
        house(
            "\"north\": 90, \"fixtures\": [ { \"id\": \"f\", \"room\": \"r\", \"position\": [1,2,2],"
                + " \"lumens\": 9, \"aim\": \"north\" } ], "
                + room(BOX));
    // Up on the sheet is east in the world.
    assertThat(h.lamps().get(0).aim()).isEqualTo(new Vec3(1, 0, 0));
    assertThat(h.lamps().get(0).position()).isEqualTo(new Vec3(2, -1, 2));
    assertThat(h.surface("r/wall-north").face().frame().n().x()).isCloseTo(-1, within(1e-12));
  }

  @Test
  void openingsStandWhereTheyAreMeasured() {
    House h =
        house(
            room(
                BOX
                    + ", \"openings\": [ { \"id\": \"w\", \"kind\": \"window\", \"wall\": \"south\","
                    + " \"offset\": 1, \"sill\": 0.9, \"width\": 2, \"head\": 2.1 } ]"));
    Face face = h.openings().get(0).face();
    // Seen from inside, the south wall's left end is its east end.
    Vec3 lowerLeft = face.frame().toWorld(face.outer().get(0));
    assertThat(lowerLeft.distance(new Vec3(5, 0, 0.9))).isLessThan(1e-9);
    assertThat(face.area()).isCloseTo(2.4, within(1e-9));
    assertThat(h.surface("r/wall-south").face().area()).isCloseTo(18 - 2.4, within(1e-9));
  }

  @Test
  void aPassageCutsBothRoomsAndHasJambs() {
    House h =
        house(
            "\"rooms\": [ { \"id\": \"a\", \"use\": \"living\", \"height\": 3, "
                + BOX
                + ", \"openings\": [ { \"id\": \"p\", \"kind\": \"passage\", \"wall\": \"north\","
                + " \"to\": \"b\", \"width\": 1, \"height\": 2 } ] }, { \"id\": \"b\", \"use\":"
                + " \"hall\", \"floor\": -0.5, \"height\": 3, \"outline\":"
                + " [[0,4.1],[6,4.1],[6,6],[0,6]] } ] }");
    assertThat(h.surface("a/wall-north").face().area()).isCloseTo(16, within(1e-9));
    assertThat(h.surface("b/wall-south").face().area()).isCloseTo(16, within(1e-9));
    List<Vec2> hole = h.surface("b/wall-south").face().holes().get(0);
    assertThat(hole.stream().mapToDouble(Vec2::y).min().orElseThrow()).isCloseTo(0.5, within(1e-9));
    for (String side : List.of("left", "right", "head", "sill")) {
      Surface jamb = h.surface("a/p-" + side);
      assertThat(jamb.boarded()).isFalse();
      Vec3 middle = new Vec3(3, 4.05, 1);
      assertThat(jamb.face().frame().height(middle)).as(side).isPositive();
    }
  }

  @Test
  void aSkylightIsCutOutOfItsSlope() {
    House h =
        house(
            room(
                BOX
                    + ", \"ceiling\": { \"kind\": \"gable\", \"ridge\": \"east-west\", \"high\": 4 },"
                    + " \"openings\": [ { \"id\": \"s\", \"kind\": \"skylight\", \"at\": [3, 1],"
                    + " \"width\": 1, \"depth\": 1 } ]"));
    Opening s = h.openings().get(0);
    assertThat(s.surfaceId()).isEqualTo("r/ceiling-south");
    assertThat(s.face().area()).isCloseTo(Math.hypot(2, 1) / 2, within(1e-9));
  }

  @Test
  void aBoxOnTheFloorReplacesItsPieceOfFloor() {
    House h =
        house(room(BOX + ", \"boxes\": [ { \"id\": \"b\", \"from\": [1,1,0], \"to\": [2,3,1] } ]"));
    assertThat(h.surface("r/floor").face().area()).isCloseTo(22, within(1e-9));
    assertThat(h.surfaces().stream().filter(s -> s.id().startsWith("r/b-"))).hasSize(5);
    assertThat(h.surface("r/b-top").boarded()).isFalse();
  }

  @Test
  void aSolidDoorIsALeafAndAGlassDoorAnOpening() {
    String doors =
        "\"openings\": [ { \"id\": \"d\", \"kind\": \"door\", \"wall\": \"east\", \"width\": 1,"
            + " \"height\": 2 }, { \"id\": \"g\", \"kind\": \"door\", \"wall\": \"west\", \"width\": 1,"
            + " \"height\": 2, \"frame\": 0.4 } ]";
    House h = house(room(BOX + ", " + doors));
    assertThat(h.surface("r/d").boarded()).isFalse();
    assertThat(h.openings()).extracting(Opening::id).containsExactly("r/g");
  }

  @Test
  void finishesAreInheritedValueByValue() {
    House h =
        house(
            "\"finishes\": { \"walls\": { \"paint\": { \"lrv\": 60, \"sheen\": \"satin\" }, \"level\": 4"
                + " } }, "
                + room(
                    BOX
                        + ", \"finishes\": { \"walls\": { \"paint\": { \"lrv\": 50 } } }, \"walls\": [ {"
                        + " \"wall\": \"south\", \"finish\": { \"level\": \"auto\", \"framing\": {"
                        + " \"direction\": \"horizontal\" } } } ]"));
    Surface south = h.surface("r/wall-south");
    assertThat(south.paint()).isEqualTo(new Paint(0.5, Sheen.SATIN));
    assertThat(south.level()).isEmpty();
    assertThat(south.framing().orElseThrow().angle()).isZero();
    assertThat(h.surface("r/wall-north").level()).hasValue(4);
    assertThat(h.surface("r/floor").boarded()).isFalse();
  }

  @Test
  void hoursFollowTheSunOrTheClock() {
    House h =
        house(
            "\"fixtures\": [ { \"id\": \"f\", \"room\": \"r\", \"position\": [1,2,2], \"lumens\": 9,"
                + " \"on\": [\"dusk to 23:00\", \"6:00 to dawn\", \"12:00 to 13:00\"] } ], "
                + room(BOX));
    List<OnHours> on = h.lamps().get(0).on();
    assertThat(on.get(0).on(LocalTime.of(17, 0), -0.1)).isTrue();
    assertThat(on.get(0).on(LocalTime.of(17, 0), 0.1)).isFalse();
    assertThat(on.get(0).on(LocalTime.of(23, 0), -0.1)).isFalse();
    assertThat(on.get(0).on(LocalTime.of(5, 0), -0.1)).isFalse();
    assertThat(on.get(1).on(LocalTime.of(6, 30), -0.1)).isTrue();
    assertThat(on.get(2).on(LocalTime.of(12, 30), 0.8)).isTrue();
  }

  @Test
  void jointsAndCoversLieWhereTheyAreMeasured() {
    House h =
        house(
            room(
                BOX
                    + ", \"ceiling\": { \"joints\": [ { \"kind\": \"butt\", \"from\": [1, 4], \"to\":"
                    + " [1, 2.8], \"crownHeight\": \"1.2 mm\" } ], \"covered\": [ { \"outline\":"
                    + " [[0,0],[1,0],[1,1],[0,1]] } ] }"));
    Surface ceiling = h.surface("r/ceiling");
    GivenJoint j = ceiling.joints().get(0);
    assertThat(ceiling.face().frame().toWorld(j.from()).distance(new Vec3(1, 4, 3)))
        .isLessThan(1e-9);
    assertThat(j.crownHeight()).hasValue(0.0012);
    assertThat(Face.signedArea(ceiling.covered().get(0))).isCloseTo(1, within(1e-9));
  }

  @Test
  void anOverhangStandsOutsideItsWall() {
    House h =
        house(
            "\"outside\": { \"blocks\": [ { \"id\": \"e\", \"overhang\": { \"room\": \"r\", \"wall\":"
                + " \"south\", \"depth\": 1, \"height\": 2.8, \"beyond\": 0.5 } } ] }, "
                + room(BOX));
    Face face = h.outside().blocks().get(0).faces().get(0);
    assertThat(face.area()).isCloseTo(7 * 0.99, within(1e-9));
    for (Vec3 c : face.corners()) {
      assertThat(c.y()).isBetween(-1.000001, -0.009999);
      assertThat(c.z()).isCloseTo(2.8, within(1e-12));
    }
  }
}
