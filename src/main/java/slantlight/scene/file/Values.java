package slantlight.scene.file;

import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.OnHours;

/** The values of the scene file that are more than a number, a word or a length. */
public final class Values {
  private Values() {}

  /** A short name: letters, digits, dot, hyphen, underscore. */
  public record Id(String text) {}

  /** An IANA time zone. */
  public record Zone(ZoneId id) {}

  /** Twelve numbers, January first. */
  public record Monthly(List<Double> values) {
    public Monthly {
      values = List.copyOf(values);
    }
  }

  /** Two numbers. */
  public record Pair(double first, double second) {}

  /** A number by finish level. */
  public record ByLevel(Map<Integer, Double> values) {
    public ByLevel {
      values = Map.copyOf(values);
    }
  }

  /** A point of the drawing, m; its height may be left out. */
  public record Point(double x, double y, OptionalDouble z) {
    public Vec2 flat() {
      return new Vec2(x, y);
    }

    /** The point in space, at that height when its own is left out. */
    public Vec3 at(double otherwise) {
      return new Vec3(x, y, z.orElse(otherwise));
    }
  }

  /** A unit direction in the drawing's axes. */
  public record Direction(Vec3 unit) {}

  /** A wall by side, id or number. */
  public record WallRef(String text) {}

  /** A span of the day, or never. */
  public record Span(Optional<OnHours> hours) {}

  /** A level, or none for auto. */
  public record Level(OptionalInt level) {}

  /**
   * A direction in plan (degrees clockwise from the drawing's up) or on a wall.
   *
   * @param azimuthDeg plan direction; empty for the two words of a wall
   * @param vertical true for "vertical", false for "horizontal"; says nothing with an azimuth
   */
  public record Bearing(OptionalDouble azimuthDeg, boolean vertical) {
    /** Unit plan direction in the drawing's axes. */
    public Vec2 unit() {
      double a = Math.toRadians(azimuthDeg.orElseThrow());
      return new Vec2(Math.sin(a), Math.cos(a));
    }
  }
}
