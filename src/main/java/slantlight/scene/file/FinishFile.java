package slantlight.scene.file;

import java.util.List;
import slantlight.scene.BoardRun;
import slantlight.scene.Sheen;
import slantlight.units.Length;

/** Paint, framing, boards and level of a surface, as written; what is left out is inherited. */
public record FinishFile(
    @Key("The paint.") PaintFile paint,
    @Key("true when it is drywall (default for all but floors and boxes).") Boolean boarded,
    @Key("The members behind it.") FramingFile framing,
    @Key("Boards on offer.") BoardsFile boards,
    @Key("Finish level 0 to 5, or auto.") Values.Level level,
    @Key("true when all of it is covered (tile, panelling).") Boolean hidden) {

  /** Paint. */
  public record PaintFile(
      @Key(value = "Light reflectance value, 0 black to 100 white.", min = 0, max = 100) Double lrv,
      @Key("flat, velvet, eggshell, satin, semi-gloss, gloss or high-gloss.") Sheen sheen) {}

  /** Framing. */
  public record FramingFile(
      @Key(
              "Which way the members run: vertical or horizontal on a wall; a compass word or degrees"
                  + " on a ceiling.")
          Values.Bearing direction,
      @Key(value = "Centre to centre.", min = 0.1, max = 3) Length spacing,
      @Key(
              value = "One member's centre, across the members from the surface's origin.",
              min = -100,
              max = 100)
          Length offset) {}

  /** Boards. */
  public record BoardsFile(
      @Key(value = "Widths on offer.", fewest = 1, most = 20, min = 0.1, max = 5)
          List<Length> widths,
      @Key(value = "Lengths on offer.", fewest = 1, most = 40, min = 0.3, max = 15)
          List<Length> lengths,
      @Key(value = "Thickness.", min = 0.003, max = 0.1) Length thickness,
      @Key("Long edges: auto, across-framing or along-framing.") BoardRun run,
      @Key(value = "Longest board that can be carried in.", min = 0.3, max = 50) Length carry) {}
}
