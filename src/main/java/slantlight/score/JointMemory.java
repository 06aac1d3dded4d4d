package slantlight.score;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slantlight.board.Joint;
import slantlight.geom.Vec2;
import slantlight.light.LightModel;
import slantlight.scene.JointKind;
import slantlight.scene.Paint;
import slantlight.scene.Surface;

/**
 * What joints showed in earlier scores, for scores to come: other boards and other remedies leave
 * many joints of a surface where they were.
 *
 * <p>It serves scores of one light on the same days, in the same steps, for the same eye, of houses
 * that differ in boards, levels and paint only. Not for several threads.
 */
public final class JointMemory {
  private final Map<Key, Shown> shown = new HashMap<>();
  private LitYear year;

  /** All that a joint's showing depends on in such scores. */
  private record Key(
      String surfaceId, Paint paint, Joint joint, List<Vec2> places, boolean backBlocked) {}

  /**
   * What a joint showed.
   *
   * @param profile largest showing at level 4 of each place
   */
  record Shown(Tally tally, List<Double> profile, Optional<Peak> peak) {}

  /** The states in which all that is remembered was looked at, gathered when first asked for. */
  LitYear year(LightModel light, ScoreOptions options) {
    if (year == null) {
      year = LitYear.of(light, options);
    }
    return year;
  }

  private static Key key(Surface surface, Joint joint, List<Vec2> places, boolean backBlocked) {
    Joint anyId =
        new Joint(
            "", joint.kind(), joint.from(), joint.to(), joint.crownHeight(), joint.crownWidth());
    return new Key(
        surface.id(),
        surface.paint(),
        anyId,
        places,
        backBlocked && joint.kind() == JointKind.BUTT);
  }

  /**
   * What is remembered of a joint.
   *
   * @param places at which it is followed
   */
  Optional<Shown> of(Surface surface, Joint joint, List<Vec2> places, boolean backBlocked) {
    return Optional.ofNullable(shown.get(key(surface, joint, places, backBlocked)));
  }

  void keep(Surface surface, Joint joint, List<Vec2> places, boolean backBlocked, Shown what) {
    shown.put(key(surface, joint, places, backBlocked), what);
  }
}
