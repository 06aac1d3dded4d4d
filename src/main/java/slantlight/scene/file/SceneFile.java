package slantlight.scene.file;

import java.util.List;
import slantlight.scene.LevelScale;
import slantlight.units.Length;
import slantlight.units.LengthUnit;

/** The whole scene file, as written. Every key that is left out is null. */
public record SceneFile(
    @Key(value = "Version of this format.", required = true, min = 1, max = 1) Integer slantlight,
    @Key(value = "What you call the house.", required = true) String name,
    @Key("Anything a reader should know, printed with the results.") String note,
    @Key(value = "Unit of lengths written as plain numbers: m, mm, cm, ft or in.", required = true)
        LengthUnit units,
    @Key(
            value =
                "Azimuth of the drawing's up direction (+y), degrees clockwise from true north."
                    + " 0 when the drawing is north-up.",
            min = -360,
            max = 360)
        Double north,
    @Key("Regional scale printed beside the level: ga-214, europe-q or as-nzs.") LevelScale scale,
    @Key(value = "Where the house stands.", required = true) SiteFile site,
    @Key("Ground, water and things outside.") OutsideFile outside,
    @Key("Finishes of every surface that states none of its own.") FinishesFile finishes,
    @Key(value = "The rooms.", required = true, fewest = 1, most = 200) List<RoomFile> rooms,
    @Key(value = "The lamps.", most = 500) List<FixtureFile> fixtures,
    @Key(
            value =
                "Places from which people look. A room with none gets standing and seated places"
                    + " over its free floor.",
            most = 1000)
        List<EyeFile> eyes,
    @Key("Your own prices.") RatesFile rates,
    @Key("Light stated outright instead of computed from date and place.")
        PrescribedFile prescribed) {

  /** Where the house stands. */
  public record SiteFile(
      @Key(value = "Degrees north.", required = true, min = -90, max = 90) Double latitude,
      @Key(
              value = "Degrees east; negative in the Americas.",
              required = true,
              min = -180,
              max = 180)
          Double longitude,
      @Key(value = "Time zone by its IANA name, such as America/Chicago.", required = true)
          Values.Zone zone,
      @Key(value = "Height above the sea.", min = -500, max = 9000) Length elevation,
      @Key(
              value =
                  "Share of light that the ground sends back, 0 to 1: one number or twelve, January"
                      + " first. Grass 0.2, fresh snow 0.8.",
              min = 0,
              max = 1)
          Values.Monthly groundReflectance,
      @Key(
              value = "Extinction of the clear atmosphere: 0.21 clear, 0.3 hazy.",
              min = 0.05,
              max = 1.5)
          Double haze,
      @Key(
              value = "Share of daytime with a clear sky, 0 to 1: one number or twelve.",
              min = 0,
              max = 1)
          Values.Monthly clearShare,
      @Key(value = "Far skyline as [azimuth, altitude] pairs in degrees, in any order.", most = 361)
          List<Values.Pair> skyline) {}

  /** Prices. */
  public record RatesFile(
      @Key("Your word for the money, such as USD.") String currency,
      @Key(
              value =
                  "Money per square foot (scenes in ft or in) or square metre (m or mm) to hang and"
                      + " finish, by level.",
              min = 0,
              max = 1e6)
          Values.ByLevel perAreaByLevel,
      @Key(value = "Money for boards, per square foot or square metre.", min = 0, max = 1e6)
          Double perBoardArea,
      @Key(value = "Money for extra work on joints, per foot or metre.", min = 0, max = 1e6)
          Double perJointLength,
      @Key(value = "Multiplier for high work.", min = 1, max = 20) Double highFactor,
      @Key(value = "Height above the floor from which work is high.", min = 0, max = 100)
          Length highFrom,
      @Key(
              value = "Money for a shade or film, per square foot or square metre of opening.",
              min = 0,
              max = 1e6)
          Double perShadeArea,
      @Key(value = "Money for moving or re-aiming one lamp.", min = 0, max = 1e6) Double perLamp) {}

  /** Light stated outright. */
  public record PrescribedFile(
      @Key("The sun; leave out for none.") PrescribedSunFile sun,
      @Key(
              value =
                  "CIE general sky type 1 to 15 (5 is uniform), or 16 for traditional overcast.",
              min = 1,
              max = 16)
          Integer skyType,
      @Key(value = "Luminance of the zenith, cd/m2.", required = true, min = 0, max = 1e6)
          Double zenithLuminance,
      @Key(value = "Luminance of the ground, cd/m2.", min = 0, max = 1e6) Double groundLuminance) {}

  /** A stated sun. */
  public record PrescribedSunFile(
      @Key(value = "Degrees clockwise from true north.", required = true, min = -360, max = 360)
          Double azimuth,
      @Key(value = "Degrees above the horizon.", required = true, min = 0, max = 90)
          Double altitude,
      @Key(value = "Illuminance square to the beam, lx.", required = true, min = 0, max = 2e5)
          Double lux) {}

  /** A place to look from. */
  public record EyeFile(
      @Key(value = "Short name, unique.", required = true) Values.Id id,
      @Key("What a person calls the place.") String label,
      @Key(value = "Room it is in.", required = true) String room,
      @Key(
              value = "[x, y], or [x, y, z] to set the eye's height above the drawing's zero.",
              required = true)
          Values.Point position,
      @Key("true for a seated eye: 1.15 m above the floor instead of 1.60 m.") Boolean seated) {}

  /** A lamp. */
  public record FixtureFile(
      @Key(value = "Short name, unique.", required = true) Values.Id id,
      @Key("What a person calls it.") String label,
      @Key(value = "Room it is in.", required = true) String room,
      @Key(
              value =
                  "[x, y, z] of the middle of the luminous opening, z above the drawing's zero.",
              required = true)
          Values.Point position,
      @Key("Where it points: down (default), up, a compass word, or [x, y, z].")
          Values.Direction aim,
      @Key(
              value =
                  "Turn of the C0 plane about the aim: degrees clockwise from the drawing's up.",
              min = -360,
              max = 360)
          Double turn,
      @Key(
              value =
                  "Light it gives, lm. With a photometry file the file's own flux is the default.",
              min = 0.1,
              max = 1e6)
          Double lumens,
      @Key("bare, diffuser, spot, downlight or up-down.")
          slantlight.scene.Distribution.Named distribution,
      @Key("LM-63 file beside the scene, instead of a distribution.") String photometry,
      @Key(
              value = "Luminous opening as [width, length] or [width, length, height].",
              fewest = 2,
              most = 3,
              min = 0,
              max = 20)
          List<Length> size,
      @Key(
              value =
                  "When it is on: always, never, \"dusk to 23:00\", \"06:00 to dawn\","
                      + " \"18:00 to 22:00\". Default dusk to 23:00.",
              most = 20)
          List<Values.Span> on) {}
}
