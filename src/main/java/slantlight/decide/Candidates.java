package slantlight.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slantlight.board.CuttingPlan;
import slantlight.board.GypsumRules;
import slantlight.scene.BoardOffer;
import slantlight.scene.BoardRun;
import slantlight.scene.BoardSize;
import slantlight.scene.House;
import slantlight.scene.JointKind;
import slantlight.scene.RoomUse;
import slantlight.scene.Sheen;
import slantlight.scene.Surface;
import slantlight.score.SurfaceScore;

/** The single changes that make sense on a surface, before any of them is scored. */
final class Candidates {
  /** Longest stock in common trade, 16 ft (4.88 m). */
  private static final double LONGEST = 16 * 0.3048;

  /** The wide board of the trade, 54 in. */
  private static final double WIDE = 54 * 0.0254;

  private Candidates() {}

  /** Ways to lay other boards; none where the boards are up. */
  static List<Remedy> boards(Surface surface, SurfaceScore score) {
    List<Remedy> out = new ArrayList<>();
    if (!surface.joints().isEmpty() || surface.boards().isEmpty() || score.joints().isEmpty()) {
      return out;
    }
    BoardOffer offer = surface.boards().get();
    BoardRun other =
        score.layout().run() == BoardRun.ALONG_FRAMING
            ? BoardRun.ACROSS_FRAMING
            : BoardRun.ALONG_FRAMING;
    if (GypsumRules.spacingFault(surface, other).isEmpty()) {
      out.add(new Remedy.TurnBoards(surface.id(), other));
    }
    boolean butts = has(score, JointKind.BUTT);
    double longest = offer.sizes().stream().mapToDouble(BoardSize::length).max().orElse(0);
    if (butts && Math.min(longest, offer.carry()) < LONGEST - 0.01) {
      out.add(new Remedy.MoreBoards(surface.id(), "bring in boards 16 ft long", longer(offer)));
    }
    double widest = offer.sizes().stream().mapToDouble(BoardSize::width).max().orElse(0);
    if (widest < WIDE - 0.01) {
      out.add(new Remedy.MoreBoards(surface.id(), "use boards 54 in wide", wider(offer)));
    }
    return out;
  }

  static Optional<Remedy> backBlock(SurfaceScore score) {
    return has(score, JointKind.BUTT)
        ? Optional.of(new Remedy.BackBlock(score.surfaceId()))
        : Optional.empty();
  }

  /** Flat paint, or velvet where it has to be washed. */
  static Optional<Remedy> sheen(House house, Surface surface) {
    RoomUse use = house.room(surface.roomId()).use();
    Sheen aim =
        use == RoomUse.KITCHEN || use == RoomUse.BATH || use == RoomUse.LAUNDRY
            ? Sheen.VELVET
            : Sheen.FLAT;
    return surface.paint().sheen().level() > aim.level()
        ? Optional.of(new Remedy.LowerSheen(surface.id(), aim))
        : Optional.empty();
  }

  private static boolean has(SurfaceScore score, JointKind kind) {
    return score.joints().stream().anyMatch(j -> j.joint().kind() == kind);
  }

  private static List<BoardSize> longer(BoardOffer offer) {
    List<BoardSize> out = new ArrayList<>(offer.sizes());
    offer.sizes().stream()
        .mapToDouble(BoardSize::width)
        .distinct()
        .forEach(w -> out.add(new BoardSize(w, LONGEST)));
    return out.stream().distinct().toList();
  }

  private static List<BoardSize> wider(BoardOffer offer) {
    List<BoardSize> out = new ArrayList<>(offer.sizes());
    offer.sizes().stream()
        .mapToDouble(BoardSize::length)
        .distinct()
        .forEach(l -> out.add(new BoardSize(WIDE, l)));
    return out;
  }

  /** Total length of the butt joints of a layout, m. */
  static double buttLength(SurfaceScore score) {
    return score.joints().stream()
        .filter(j -> j.joint().kind() == JointKind.BUTT)
        .mapToDouble(j -> j.joint().length())
        .sum();
  }

  /** Area of the boards to buy for a surface by itself, m2. */
  static double boardArea(Surface surface, SurfaceScore score) {
    return CuttingPlan.of(List.of(surface), List.of(score.layout())).area();
  }
}
