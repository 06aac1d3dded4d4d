package slantlight.scene.file;

import java.util.List;
import slantlight.scene.GroundKind;
import slantlight.units.Length;

/** The surroundings, as written. */
public record OutsideFile(
    @Key(value = "Height of the general ground above the drawing's zero.", min = -500, max = 500)
        Length ground,
    @Key(value = "Regions of other ground, topmost first.", most = 100) List<ZoneFile> zones,
    @Key(value = "Opaque things: overhangs, decks, neighbours, trees.", most = 200)
        List<BlockFile> blocks) {

  /** A region of the ground. */
  public record ZoneFile(
      @Key(value = "Short name, unique.", required = true) Values.Id id,
      @Key("What a person calls it.") String label,
      @Key(value = "ground, snow, paving, water or ice.", required = true) GroundKind kind,
      @Key(value = "[x, y] corners in order.", required = true, fewest = 3, most = 200)
          List<Values.Point> outline,
      @Key(value = "Height of it above the drawing's zero.", min = -500, max = 500) Length level,
      @Key(
              value =
                  "Share of light sent back diffusely. Left out: ground as the site, snow 0.8, paving"
                      + " 0.3, water 0.04, ice 0.4.",
              min = 0,
              max = 1)
          Double reflectance,
      @Key("true when paving is wet and mirrors.") Boolean wet,
      @Key(value = "Wind over water, m/s.", min = 0, max = 30) Double wind) {}

  /** Something opaque: give polygons, a box or an overhang. */
  public record BlockFile(
      @Key(value = "Short name, unique.", required = true) Values.Id id,
      @Key("What a person calls it.") String label,
      @Key(value = "Share of light sent back diffusely; 0.2 when left out.", min = 0, max = 1)
          Double reflectance,
      @Key(value = "Faces as lists of [x, y, z] corners.", most = 200)
          List<List<Values.Point>> polygons,
      @Key("A box.") BlockBoxFile box,
      @Key("A roof edge or balcony over a wall.") OverhangFile overhang) {}

  /** An upright box. */
  public record BlockBoxFile(
      @Key(value = "Lowest corner [x, y, z].", required = true) Values.Point from,
      @Key(value = "Highest corner [x, y, z].", required = true) Values.Point to) {}

  /** A flat roof edge that follows one wall of a room. */
  public record OverhangFile(
      @Key(value = "Room whose wall it shades.", required = true) String room,
      @Key(value = "Wall it shades.", required = true) Values.WallRef wall,
      @Key(
              value = "How far it stands out from the inner wall face.",
              required = true,
              min = 0.01,
              max = 50)
          Length depth,
      @Key(
              value = "Height of its underside above the room's floor.",
              required = true,
              min = 0.1,
              max = 100)
          Length height,
      @Key(value = "How far it runs past each end of the wall.", min = 0, max = 50)
          Length beyond) {}
}
