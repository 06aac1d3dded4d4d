package slantlight.decide;

import slantlight.scene.Paint;
import slantlight.scene.RoomUse;
import slantlight.scene.Sheen;

/**
 * The finish level that the published standards assign to a surface by its use, coating and light.
 *
 * <p>Sources: GA-214 "Levels of Finish for Gypsum Panel Products" and ASTM C840 section 22 (the
 * same six levels, 0 to 5); the MPI reading of them (gloss class G3 and above over level 5); AS/NZS
 * 2589 for mid and dark tones. These are practice documents: the contract and the authority on site
 * have the last word.
 *
 * <p><b>What "critical light" means here.</b> GA-214 asks for level 5 under "severe lighting":
 * strong sidelight from windows or surface-mounted fixtures. Read by its letter that is every room
 * with a window, so the words alone decide nothing. Here the computed light decides: see {@link
 * RakingLight}. Concealed, service and tiled surfaces keep their low level whatever the light; only
 * the showing itself can raise them.
 */
public final class StandardRule {
  /** Below this LRV a paint is a deep tone (facts of trade practice, from memory). */
  public static final double DEEP_LRV = 0.20;

  /** Below this LRV a paint is a mid tone (from memory). */
  public static final double MID_LRV = 0.50;

  private StandardRule() {}

  /** What goes over the joints. */
  public enum Coating {
    SMOOTH_PAINT,
    LIGHT_TEXTURE,
    HEAVY_TEXTURE,
    LIGHT_COVERING,
    HEAVY_COVERING,
    /** Tile, panelling, cabinets: the board is only a substrate. */
    TILE
  }

  /** How the computed light treats a surface. */
  public enum RakingLight {
    /**
     * No joint at level 4 reaches the threshold of being noticed for longer than the room bears.
     */
    GENTLE,
    /** A joint at level 4 can be noticed, within the room's limit. */
    NOTICEABLE,
    /**
     * A joint at level 4 shows above the room's limit for longer than the room bears. GA-214 calls
     * strong sidelight from windows or fixtures critical without a measure; this is ours.
     */
    CRITICAL
  }

  /** Everything the standards ask about a surface. */
  public record Situation(RoomUse use, Coating coating, Paint paint, RakingLight light) {}

  /**
   * A level and the rule that gives it.
   *
   * @param level 0 to 5
   * @param words the rule and its source
   */
  public record Ruling(int level, String words) {}

  /** The ruling for a situation; the first rule that fits, from use to coating to light. */
  public static Ruling of(Situation s) {
    return switch (s.use()) {
      case PLENUM, ATTIC -> new Ruling(1, "GA-214 level 1: plenums, attics and concealed places");
      case GARAGE, STORAGE -> new Ruling(2, "GA-214 level 2: garages and storage");
      case CLOSET, LAUNDRY ->
          s.coating() == Coating.TILE
              ? tile()
              : new Ruling(
                  Math.min(4, byCoating(s).level()),
                  "GA-214 level 4 is enough: a service room nobody judges by its finish");
      default -> s.coating() == Coating.TILE ? tile() : byCoating(s);
    };
  }

  private static Ruling tile() {
    return new Ruling(2, "GA-214 level 2: substrate of tile or other covering");
  }

  private static Ruling byCoating(Situation s) {
    return switch (s.coating()) {
      case HEAVY_TEXTURE -> new Ruling(3, "GA-214 level 3: medium or heavy texture");
      case HEAVY_COVERING -> new Ruling(3, "GA-214 level 3: heavy wallcovering");
      case LIGHT_TEXTURE -> underCover(s, "light texture");
      case LIGHT_COVERING -> underCover(s, "light wallcovering");
      case SMOOTH_PAINT -> byPaint(s);
      case TILE -> tile();
    };
  }

  private static Ruling underCover(Situation s, String what) {
    return s.light() == RakingLight.CRITICAL
        ? new Ruling(5, "GA-214 level 5: critical lighting, under " + what)
        : new Ruling(4, "GA-214 level 4: " + what);
  }

  private static Ruling byPaint(Situation s) {
    Sheen sheen = s.paint().sheen();
    boolean noticeable = s.light() != RakingLight.GENTLE;
    if (sheen.level() >= Sheen.SEMI_GLOSS.level()) {
      return new Ruling(5, "GA-214 level 5: gloss, semi-gloss or enamel paint");
    }
    if (s.light() == RakingLight.CRITICAL) {
      return new Ruling(5, "GA-214 level 5: severe (critical) lighting, as computed");
    }
    if (s.paint().lrv() < DEEP_LRV) {
      return new Ruling(5, "AS/NZS 2589 level 5: dark tone, LRV under 20");
    }
    if (noticeable && sheen.level() >= Sheen.EGGSHELL.level()) {
      return new Ruling(5, "MPI reading of GA-214, level 5: gloss class G3 or above");
    }
    if (noticeable && s.paint().lrv() < MID_LRV) {
      return new Ruling(5, "AS/NZS 2589 level 5: mid tone where joints can be noticed");
    }
    return new Ruling(4, "GA-214 level 4: smooth paint without critical lighting");
  }
}
