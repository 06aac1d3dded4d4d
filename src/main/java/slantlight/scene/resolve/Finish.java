package slantlight.scene.resolve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.BoardOffer;
import slantlight.scene.BoardRun;
import slantlight.scene.BoardSize;
import slantlight.scene.Framing;
import slantlight.scene.Paint;
import slantlight.scene.Sheen;
import slantlight.scene.SurfaceKind;
import slantlight.scene.file.FinishFile;
import slantlight.scene.file.Values;
import slantlight.units.Length;

/**
 * The finish of a surface after inheritance: what is stated nearest to the surface counts, then the
 * room's, then the scene's, then the defaults here (common practice, no source).
 */
record Finish(
    SurfaceKind kind,
    Paint paint,
    boolean boarded,
    boolean hidden,
    Optional<Values.Bearing> direction,
    double spacing,
    double offset,
    Optional<BoardOffer> boards,
    OptionalInt level) {
  private static final double INCH = 0.0254;

  /**
   * Gathers a finish.
   *
   * @param chain the statements, nearest first; null where nothing is stated
   */
  static Finish of(Scope scope, SurfaceKind kind, FinishFile... chain) {
    List<FinishFile> stated = Arrays.stream(chain).filter(Objects::nonNull).toList();
    Optional<Double> lrv = first(stated, FinishFile::paint, FinishFile.PaintFile::lrv);
    Optional<Sheen> sheen = first(stated, FinishFile::paint, FinishFile.PaintFile::sheen);
    boolean boarded =
        first(stated, Function.identity(), FinishFile::boarded).orElse(kind != SurfaceKind.FLOOR);
    return new Finish(
        kind,
        new Paint(lrv.orElse(usualLrv(kind)) / 100, sheen.orElse(usualSheen(kind))),
        boarded,
        first(stated, Function.identity(), FinishFile::hidden).orElse(false),
        first(stated, FinishFile::framing, FinishFile.FramingFile::direction),
        metres(first(stated, FinishFile::framing, FinishFile.FramingFile::spacing), 16 * INCH),
        metres(first(stated, FinishFile::framing, FinishFile.FramingFile::offset), 0),
        boarded ? Optional.of(offer(scope, stated)) : Optional.empty(),
        first(stated, Function.identity(), FinishFile::level)
            .map(Values.Level::level)
            .orElse(OptionalInt.empty()));
  }

  private static <A, B> Optional<B> first(
      List<FinishFile> stated, Function<FinishFile, A> part, Function<A, B> value) {
    return stated.stream()
        .map(part)
        .filter(Objects::nonNull)
        .map(value)
        .filter(Objects::nonNull)
        .findFirst();
  }

  private static double metres(Optional<Length> length, double otherwise) {
    return length.map(Length::metres).orElse(otherwise);
  }

  private static double usualLrv(SurfaceKind kind) {
    return switch (kind) {
      case FLOOR -> 30;
      case CEILING -> 85;
      case WALL, OTHER -> 80;
    };
  }

  private static Sheen usualSheen(SurfaceKind kind) {
    return kind == SurfaceKind.FLOOR ? Sheen.SATIN : Sheen.FLAT;
  }

  private static BoardOffer offer(Scope scope, List<FinishFile> stated) {
    boolean imperial = scope.binder().units().imperial();
    List<Double> widths =
        all(first(stated, FinishFile::boards, FinishFile.BoardsFile::widths))
            .orElse(List.of(imperial ? 48 * INCH : 1.2));
    List<Double> lengths =
        all(first(stated, FinishFile::boards, FinishFile.BoardsFile::lengths))
            .orElse(
                imperial
                    ? List.of(96 * INCH, 108 * INCH, 120 * INCH, 144 * INCH, 168 * INCH, 192 * INCH)
                    : List.of(2.4, 2.5, 2.7, 3.0, 3.6));
    List<BoardSize> sizes = new ArrayList<>();
    for (double width : widths) {
      for (double length : lengths) {
        sizes.add(new BoardSize(width, length));
      }
    }
    return new BoardOffer(
        sizes,
        metres(
            first(stated, FinishFile::boards, FinishFile.BoardsFile::thickness),
            imperial ? INCH / 2 : 0.0125),
        first(stated, FinishFile::boards, FinishFile.BoardsFile::run).orElse(BoardRun.AUTO),
        metres(
            first(stated, FinishFile::boards, FinishFile.BoardsFile::carry),
            Double.POSITIVE_INFINITY));
  }

  private static Optional<List<Double>> all(Optional<List<Length>> lengths) {
    return lengths.map(l -> l.stream().map(Length::metres).sorted().toList());
  }

  /**
   * Framing in the plane of a face; studs upright, joists over the shorter span, rafters downhill.
   */
  Optional<Framing> framing(Face face) {
    if (!boarded) {
      return Optional.empty();
    }
    return Optional.of(new Framing(angle(face), spacing, offset));
  }

  private double angle(Face face) {
    Frame f = face.frame();
    if (direction.isPresent()) {
      Values.Bearing b = direction.get();
      if (b.azimuthDeg().isEmpty()) {
        return b.vertical() ? Math.PI / 2 : 0;
      }
      Vec2 d = b.unit();
      Vec3 world = new Vec3(d.x(), d.y(), 0);
      double u = world.dot(f.u());
      double v = world.dot(f.v());
      if (Math.hypot(u, v) > 0.1) {
        double a = Math.atan2(v, u);
        // Members have no sense of direction: keep the angle in [0, pi).
        return a < -1e-12 ? a + Math.PI : a >= Math.PI - 1e-12 ? a - Math.PI : Math.max(0, a);
      }
    }
    boolean sloped = Math.abs(f.n().z()) < 1 - 1e-9;
    if (sloped) {
      return Math.PI / 2;
    }
    double uSpan = span(face, true);
    double vSpan = span(face, false);
    return uSpan <= vSpan ? 0 : Math.PI / 2;
  }

  private static double span(Face face, boolean u) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Vec2 p : face.outer()) {
      low = Math.min(low, u ? p.x() : p.y());
      high = Math.max(high, u ? p.x() : p.y());
    }
    return high - low;
  }
}
