package slantlight.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slantlight.TestHouses;
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
import slantlight.scene.Surface;
import slantlight.scene.SurfaceKind;

/** Single surfaces for the board tests; lengths in feet or inches where the name says so. */
final class Boards {
  static final double FT = 0.3048;
  static final double IN = 0.0254;

  private Boards() {}

  static Surface wall(BoardOffer offer, double spacing, List<Vec2> outer, List<List<Vec2>> holes) {
    Frame frame = Frame.of(Vec3.ZERO, Vec3.EAST, Vec3.NORTH.times(-1));
    return surface(
        SurfaceKind.WALL, frame, offer, new Framing(Math.PI / 2, spacing, 0), outer, holes);
  }

  static Surface ceiling(BoardOffer offer, Framing framing, List<Vec2> outer) {
    Frame frame = Frame.of(new Vec3(0, 0, 3), Vec3.EAST, Vec3.DOWN);
    return surface(SurfaceKind.CEILING, frame, offer, framing, outer, List.of());
  }

  static Surface surface(
      SurfaceKind kind,
      Frame frame,
      BoardOffer offer,
      Framing framing,
      List<Vec2> outer,
      List<List<Vec2>> holes) {
    return new Surface(
        "room/it",
        "It",
        "room",
        kind,
        new Face(frame, outer, holes),
        new Paint(0.8, Sheen.FLAT),
        true,
        Optional.of(framing),
        Optional.of(offer),
        OptionalInt.empty(),
        List.of(),
        List.of());
  }

  static List<Vec2> feet(double x0, double y0, double x1, double y1) {
    return TestHouses.rectangle(x0 * FT, y0 * FT, x1 * FT, y1 * FT);
  }

  /** Boards of the given widths (in) and lengths (ft), 1/2 in thick, carried freely. */
  static BoardOffer offer(BoardRun run, double[] widths, double... lengths) {
    List<BoardSize> sizes = new ArrayList<>();
    for (double w : widths) {
      for (double l : lengths) {
        sizes.add(new BoardSize(w * IN, l * FT));
      }
    }
    return new BoardOffer(sizes, 0.0127, run, Double.POSITIVE_INFINITY);
  }
}
