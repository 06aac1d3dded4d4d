package slantlight.view;

import java.time.ZonedDateTime;
import java.util.Optional;
import slantlight.geom.Vec3;
import slantlight.scene.Paint;
import slantlight.sky.Weather;

/** What the user has set: changed by keys and mouse, read by everything that draws. */
final class Stage {
  /** What the surfaces show. */
  enum Look {
    /** Joints coloured by how much they show. */
    RISK,
    /** Boards, framing and joints. */
    BOARDS,
    /** The surfaces under their light. */
    AS_LIT
  }

  /** Which number colours a joint. */
  enum Measure {
    YEAR("worst of the year"),
    MOMENT("this moment"),
    HOURS("hours a year");

    final String words;

    Measure(String words) {
      this.words = words;
    }
  }

  /** Which halves of the window are open. */
  enum Panes {
    BOTH,
    ROOM,
    SHEET
  }

  /** What differs between the two halves of the as-lit picture. */
  enum Split {
    NONE,
    LEVELS,
    PAINTS
  }

  /** What is played by itself. */
  enum Play {
    NO,
    DAY,
    YEAR
  }

  Look look = Look.RISK;
  Measure measure = Measure.YEAR;
  Panes panes = Panes.BOTH;
  Split split = Split.NONE;

  /** Finish level of the as-lit picture, and of its left half when split. */
  int level = 4;

  /** Finish level of the right half. */
  int otherLevel = 5;

  /** Multiplier of the ridges' slopes in the as-lit picture; 1 is honest. */
  double strength = 1;

  /** Paint put on every boarded surface instead of the scene's own; right half only when split. */
  Optional<Paint> swatch = Optional.empty();

  ZonedDateTime time;
  Weather weather = Weather.CLEAR;
  Play playing = Play.NO;

  Optional<String> surface = Optional.empty();
  Optional<String> joint = Optional.empty();

  /** What the pointer rests on. */
  Optional<Hover> hover = Optional.empty();

  /** The place on the chosen surface that the picture is about; its light sets the brightness. */
  Optional<Vec3> focus = Optional.empty();

  Camera camera;
  boolean presenting;
  int stop;
  boolean keyCard;

  /** One line for the user, such as what is wrong with an edited scene file. */
  Optional<String> notice = Optional.empty();

  Stage(ZonedDateTime time, Camera camera) {
    this.time = time;
    this.camera = camera;
  }
}
