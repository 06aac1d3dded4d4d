package slantlight.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import slantlight.geom.Vec3;
import slantlight.scene.Attention;
import slantlight.scene.House;
import slantlight.scene.Paint;
import slantlight.scene.RoomUse;
import slantlight.scene.Sheen;
import slantlight.scene.Surface;
import slantlight.units.Progress;

class TurnTest {
  private final House house =
      HandScores.house(RoomUse.LIVING, Attention.EVERYDAY, new Paint(0.85, Sheen.FLAT));

  @Test
  void aQuarterTurnFacesTheSouthWindowWest() {
    House turned = Turn.clockwise(Math.PI / 2).house(house);
    // The normal points into the room: outward is its opposite.
    Vec3 outward = turned.openings().get(0).face().frame().n().times(-1);
    assertThat(Math.toDegrees(outward.azimuth())).isCloseTo(270, within(1e-9));
    assertThat(turned.rooms().get(0).floor()).isEqualTo(house.rooms().get(0).floor());
  }

  @Test
  void aTurnChangesNoDistance() {
    House turned = Turn.clockwise(1.234).house(house);
    for (Surface s : house.surfaces()) {
      Surface t = turned.surface(s.id());
      assertThat(t.face().area()).isEqualTo(s.face().area());
      assertThat(t.face().frame().toWorld(t.face().centroid()).length())
          .isCloseTo(s.face().frame().toWorld(s.face().centroid()).length(), within(1e-9));
      assertThat(t.face().frame().u().cross(t.face().frame().v()).distance(t.face().frame().n()))
          .isLessThan(1e-12);
    }
    assertThat(turned.eyes().get(0).position().z()).isEqualTo(house.eyes().get(0).position().z());
  }

  @Test
  void theKindestTurnIsTheOneThatLeavesLeast() {
    // A made-up physics: showing grows with how far south the window looks.
    List<Facing> sweep =
        Facing.sweep(
            house,
            45,
            h -> {
              double south = -h.openings().get(0).face().frame().n().times(-1).y();
              double showing = 3 + south;
              return HandScores.of(
                  h, HandScores.score(h, "room/ceiling", showing, showing, showing));
            },
            Progress.NONE);
    assertThat(sweep).hasSize(8);
    assertThat(Facing.kindest(sweep).turnDeg()).isEqualTo(180);
    assertThat(Facing.harshest(sweep).turnDeg()).isZero();
  }
}
