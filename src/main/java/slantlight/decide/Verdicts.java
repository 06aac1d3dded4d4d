package slantlight.decide;

import java.util.ArrayList;
import java.util.List;
import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.scene.Attention;
import slantlight.scene.House;
import slantlight.scene.Room;
import slantlight.scene.Surface;
import slantlight.score.Band;
import slantlight.score.HouseScore;
import slantlight.score.SurfaceScore;

/**
 * Turns scores into the level to specify: the lowest level whose showing stays under the room's
 * limit but for the few hours a year that the room bears, or the level the standard assigns,
 * whichever is stricter.
 *
 * <p>Showing is computed at levels 3, 4 and 5 only. Where the standard leaves a surface at level 2
 * or below (concealed, garage, storage, tile substrate) and level 3 would stay under the limit, the
 * standard's level stands: such a place promises no smooth joint. Where nobody can see a joint,
 * showing asks for nothing.
 */
public final class Verdicts {
  /** Covered share of a surface from which it counts as a substrate. */
  private static final double SUBSTRATE_SHARE = 0.9;

  private Verdicts() {}

  /** A verdict per scored surface, in the order of the score. */
  public static List<Verdict> of(HouseScore score) {
    List<Verdict> out = new ArrayList<>();
    for (SurfaceScore s : score.surfaces()) {
      out.add(of(score.house(), s));
    }
    return out;
  }

  /** The verdict on one surface. */
  public static Verdict of(House house, SurfaceScore score) {
    Surface surface = house.surface(score.surfaceId());
    Room room = house.room(surface.roomId());
    double limit = room.attention().limit();
    StandardRule.Ruling ruling = ruling(house, score);
    int byShowing = byShowing(score, room.attention(), ruling.level());
    int needed = Math.max(byShowing, ruling.level());
    int level = surface.level().orElse(needed);
    boolean unsolved =
        Showing.worst(score).isPresent()
            && !excused(room.attention(), ruling.level())
            && !Showing.borne(score, 5, room.attention());
    String reason = new Wording(house).reason(score, level, limit);
    List<String> notes = new ArrayList<>();
    if (level < needed) {
      notes.add("level " + level + " is fixed in the scene; level " + needed + " is called for");
    }
    notes.addAll(Advice.notes(house, score, unsolved));
    return new Verdict(
        score.surfaceId(),
        level,
        byShowing,
        ruling.level(),
        ruling.words(),
        reason,
        unsolved,
        notes);
  }

  /** The standard's ruling on a scored surface. */
  public static StandardRule.Ruling ruling(House house, SurfaceScore score) {
    Surface surface = house.surface(score.surfaceId());
    return ruling(house, surface, light(score, house.room(surface.roomId()).attention()));
  }

  /** The standard's ruling on a surface in a given light. */
  static StandardRule.Ruling ruling(House house, Surface surface, StandardRule.RakingLight light) {
    StandardRule.Coating coating =
        coveredShare(surface) >= SUBSTRATE_SHARE
            ? StandardRule.Coating.TILE
            : StandardRule.Coating.SMOOTH_PAINT;
    return StandardRule.of(
        new StandardRule.Situation(
            house.room(surface.roomId()).use(), coating, surface.paint(), light));
  }

  /** How the computed light treats a surface; see {@link StandardRule.RakingLight}. */
  static StandardRule.RakingLight light(SurfaceScore score, Attention attention) {
    if (!Showing.borne(score, 4, attention)) {
      return StandardRule.RakingLight.CRITICAL;
    }
    return Showing.hours(score, 4, Band.TRACE) > attention.hours()
        ? StandardRule.RakingLight.NOTICEABLE
        : StandardRule.RakingLight.GENTLE;
  }

  /** Share of the surface's area that is covered, 0 to 1. */
  static double coveredShare(Surface surface) {
    double covered = 0;
    for (List<Vec2> ring : surface.covered()) {
      covered += Math.abs(Face.signedArea(ring));
    }
    return Math.min(1, covered / surface.face().area());
  }

  /**
   * True where the showing asks for nothing: a garage is finished for fire and use; a scene that
   * gives it more than service attention asks for more.
   */
  static boolean excused(Attention attention, int standard) {
    return attention == Attention.SERVICE && standard < 3;
  }

  private static int byShowing(SurfaceScore score, Attention attention, int standard) {
    if (Showing.worst(score).isEmpty()) {
      return 0;
    }
    if (excused(attention, standard)) {
      return standard;
    }
    for (int level = 3; level < 5; level++) {
      if (Showing.borne(score, level, attention)) {
        return level == 3 && standard < 3 ? standard : level;
      }
    }
    return 5;
  }
}
