package slantlight.scene.file;

import java.util.List;
import slantlight.scene.Attention;
import slantlight.scene.OpeningKind;
import slantlight.scene.RoomUse;
import slantlight.units.Length;

/** A room, as written. Every key that is left out is null. */
public record RoomFile(
    @Key(value = "Short name, unique.", required = true) Values.Id id,
    @Key("What a person calls it.") String label,
    @Key(
            value =
                "living, kitchen, bedroom, study, hall, stair, bath, laundry, closet, garage,"
                    + " storage, attic or plenum.",
            required = true)
        RoomUse use,
    @Key(
            "How hard it is looked at: showpiece, everyday or service. Default by use: service for"
                + " laundry, closet, garage, storage, attic and plenum, everyday for the rest.")
        Attention attention,
    @Key(value = "Height of the floor above the drawing's zero.", min = -100, max = 500)
        Length floor,
    @Key(
            value = "Height of the walls at the lowest part of the ceiling, above the floor.",
            required = true,
            min = 0.3,
            max = 100)
        Length height,
    @Key(
            value = "Inner faces of the walls in plan, [x, y] corners in order.",
            fewest = 3,
            most = 200)
        List<Values.Point> outline,
    @Key(
            value = "Instead of outline: several outlines that join into one room.",
            fewest = 1,
            most = 50)
        List<List<Values.Point>> outlines,
    @Key(value = "Outlines of full-height solids inside: a chimney, a column, a shaft.", most = 50)
        List<List<Values.Point>> voids,
    @Key("The ceiling; flat when left out.") CeilingFile ceiling,
    @Key("Finishes of this room.") FinishesFile finishes,
    @Key(value = "Walls that have a name or finish of their own.", most = 200) List<WallFile> walls,
    @Key(value = "Windows, doors, skylights and passages.", most = 100) List<OpeningFile> openings,
    @Key(value = "Free polygons: soffits, beam faces, stair flights.", most = 500)
        List<SurfaceFile> surfaces,
    @Key(value = "Solid boxes: islands, beams, soffits.", most = 100) List<BoxFile> boxes) {

  /** A ceiling. */
  public record CeilingFile(
      @Key("flat (default), shed, gable or polygons.") CeilingKind kind,
      @Key(
              value = "Height of its highest part above the floor (shed, gable).",
              min = 0.3,
              max = 100)
          Length high,
      @Key("Which way a shed falls: a compass word or degrees.") Values.Bearing falls,
      @Key("Which way a gable's ridge runs: a compass word or degrees.") Values.Bearing ridge,
      @Key(
              value = "Shift of a gable's ridge from the middle, to the right of its direction.",
              min = -500,
              max = 500)
          Length shift,
      @Key(value = "Polygons of the ceiling, z above the drawing's zero.", most = 200)
          List<SurfaceFile> polygons,
      @Key("Finish of the ceiling.") FinishFile finish,
      @Key(value = "Regions nobody sees, in plan.", most = 100) List<CoverFile> covered,
      @Key(value = "Joints already up, ends in plan.", most = 1000) List<JointFile> joints) {}

  /** Kinds of ceiling. */
  public enum CeilingKind {
    FLAT,
    SHED,
    GABLE,
    POLYGONS
  }

  /** A wall that is named or finished on its own. */
  public record WallFile(
      @Key(
              value =
                  "Which wall: its side (south), its id (wall-south) or the number of its edge in"
                      + " the outline, from 1.",
              required = true)
          Values.WallRef wall,
      @Key("A name of your own for it.") Values.Id id,
      @Key("What a person calls it.") String label,
      @Key("Finish of this wall.") FinishFile finish,
      @Key(
              value = "Regions nobody sees; [along, up] from the wall's lower left corner.",
              most = 100)
          List<CoverFile> covered,
      @Key(
              value = "Joints already up; ends [along, up] from the wall's lower left corner.",
              most = 1000)
          List<JointFile> joints) {}

  /** A hole in a surface. */
  public record OpeningFile(
      @Key(value = "Short name, unique in the room.", required = true) Values.Id id,
      @Key("What a person calls it.") String label,
      @Key(value = "window, door, skylight or passage.", required = true) OpeningKind kind,
      @Key("Wall it is in (not for a skylight).") Values.WallRef wall,
      @Key(
              value =
                  "From the wall's left end, seen from inside, to the opening's left edge. Left out:"
                      + " in the middle.",
              min = 0,
              max = 1000)
          Length offset,
      @Key(
              value = "From the floor to the opening's lower edge; 0 when left out.",
              min = 0,
              max = 100)
          Length sill,
      @Key(value = "Clear width.", min = 0.02, max = 200) Length width,
      @Key(value = "Clear height; or give head.", min = 0.02, max = 100) Length height,
      @Key(
              value = "From the floor to the opening's upper edge; or give height.",
              min = 0.02,
              max = 100)
          Length head,
      @Key("Skylight: [x, y] of its middle in plan.") Values.Point at,
      @Key(value = "Skylight: length in plan along y (width is along x).", min = 0.02, max = 100)
          Length depth,
      @Key("Passage: the room behind it.") String to,
      @Key(value = "Visible transmittance of the glass.", min = 0, max = 1) Double transmittance,
      @Key(value = "Panes of glass, 0 to 3.", min = 0, max = 3) Integer panes,
      @Key(
              value = "Share taken by frame and bars; 1 is a solid door (the default for doors).",
              min = 0,
              max = 1)
          Double frame,
      @Key(value = "From the inner wall face to the glass.", min = 0, max = 2) Length reveal,
      @Key("Shade or film on it.") ShadeFile shade) {}

  /** A shade. */
  public record ShadeFile(
      @Key(value = "Share of light let through.", required = true, min = 0, max = 1)
          Double transmittance,
      @Key("true for a cloth that scatters the light (default), false for a clear film.")
          Boolean diffusing) {}

  /** A free polygon. */
  public record SurfaceFile(
      @Key(value = "Short name, unique in the room.", required = true) Values.Id id,
      @Key("What a person calls it.") String label,
      @Key(
              value =
                  "[x, y, z] corners, z above the drawing's zero; counter-clockwise seen from the"
                      + " room.",
              required = true,
              fewest = 3,
              most = 200)
          List<Values.Point> points,
      @Key("Finish of it.") FinishFile finish,
      @Key(value = "Regions nobody sees, [x, y, z] corners.", most = 100) List<CoverFile> covered,
      @Key(value = "Joints already up, ends [x, y, z].", most = 1000) List<JointFile> joints) {}

  /** A solid box inside a room. */
  public record BoxFile(
      @Key(value = "Short name, unique in the room.", required = true) Values.Id id,
      @Key("What a person calls it.") String label,
      @Key(value = "Lowest corner [x, y, z].", required = true) Values.Point from,
      @Key(value = "Highest corner [x, y, z].", required = true) Values.Point to,
      @Key("Finish of its faces.") FinishFile finish) {}

  /** A region that nobody sees. */
  public record CoverFile(
      @Key("What covers it, such as tile.") String what,
      @Key(value = "Corners.", required = true, fewest = 3, most = 100)
          List<Values.Point> outline) {}

  /** A joint that is already up. */
  public record JointFile(
      @Key("A name of your own.") String name,
      @Key(value = "tapered, butt or cut.", required = true) slantlight.scene.JointKind kind,
      @Key(value = "One end.", required = true) Values.Point from,
      @Key(value = "The other end.", required = true) Values.Point to,
      @Key(value = "Height of the broad crown measured on site.", min = 0, max = 0.05)
          Length crownHeight,
      @Key(value = "Width of the broad crown measured on site.", min = 0.01, max = 5)
          Length crownWidth) {}
}
