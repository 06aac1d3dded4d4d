package slantlight.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slantlight.board.Layout;
import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.light.Source;
import slantlight.light.SourceKind;
import slantlight.scene.BoardRun;
import slantlight.scene.Framing;
import slantlight.scene.House;
import slantlight.scene.JointKind;
import slantlight.scene.Opening;
import slantlight.scene.Surface;
import slantlight.score.Band;
import slantlight.score.JointScore;
import slantlight.score.Peak;
import slantlight.score.SurfaceScore;

/** Short advice for the trades that follows from one surface's score. */
final class Advice {
  /** Boards count as running with the light when within this angle of it. */
  private static final double WITH_LIGHT = Math.toRadians(45);

  private Advice() {}

  static List<String> notes(House house, SurfaceScore score, boolean unsolved) {
    Optional<Peak> worst = Showing.worst(score);
    if (worst.isEmpty() || Showing.at(score, 4) < Band.TRACE.from()) {
      return List.of();
    }
    List<String> out = new ArrayList<>();
    Peak peak = worst.get();
    boardNote(house, score, peak).ifPresent(out::add);
    Optional<JointScore> joint = Showing.worstJoint(score);
    if (joint.isPresent() && joint.get().joint().kind() != JointKind.TAPERED) {
      out.add("the worst joint is between square ends: longer boards or back-blocking help most");
    }
    if (peak.source().kind() == SourceKind.LAMP) {
      out.add("moving or re-aiming " + peak.source().label() + " may cost less than a level");
    }
    if (unsolved) {
      out.add("even level 5 leaves it showing: change the light, the boards or the paint as well");
    }
    return out;
  }

  private static Optional<String> boardNote(House house, SurfaceScore score, Peak peak) {
    Surface surface = house.surface(score.surfaceId());
    Optional<Vec2> toward = towardLight(house, surface, peak);
    Optional<Vec2> along = longEdges(surface, score.layout());
    if (toward.isEmpty() || along.isEmpty() || score.joints().isEmpty()) {
      return Optional.empty();
    }
    double cos = Math.min(1, Math.abs(toward.get().dot(along.get())));
    String place = place(house, peak.source());
    return Optional.of(
        Math.acos(cos) <= WITH_LIGHT
            ? "run boards with the light, toward " + place + ", as laid out"
            : "boards run across the light from " + place + ": see whether they can be turned");
  }

  /** Unit direction of the long board edges in the surface's plane; empty without framing. */
  static Optional<Vec2> longEdges(Surface surface, Layout layout) {
    return surface.framing().map(Framing::angle).map(a -> edge(a, layout.run()));
  }

  private static Vec2 edge(double framing, BoardRun run) {
    double a = run == BoardRun.ALONG_FRAMING ? framing : framing + Math.PI / 2;
    return new Vec2(Math.cos(a), Math.sin(a));
  }

  /**
   * Unit direction in the surface's plane toward the light of the worst moment: square to the glass
   * where that lies in the plane, else from the worst place to the middle of the opening or lamp.
   */
  static Optional<Vec2> towardLight(House house, Surface surface, Peak peak) {
    for (Opening o : house.openings()) {
      if (o.id().equals(peak.source().via())) {
        Face glass = o.face();
        Optional<Vec2> square = inPlane(surface, glass.frame().n().times(-1), 0.7);
        return square.isPresent()
            ? square
            : inPlane(surface, glass.frame().toWorld(glass.centroid()).minus(peak.place()), 1e-6);
      }
    }
    return house.lamps().stream()
        .filter(l -> l.id().equals(peak.source().via()))
        .findFirst()
        .flatMap(l -> inPlane(surface, l.position().minus(peak.place()), 1e-6));
  }

  private static Optional<Vec2> inPlane(Surface surface, Vec3 direction, double least) {
    Vec3 local = surface.face().frame().directionToLocal(direction);
    Vec2 flat = new Vec2(local.x(), local.y());
    return flat.length() < least ? Optional.empty() : Optional.of(flat.unit());
  }

  private static String place(House house, Source source) {
    for (Opening o : house.openings()) {
      if (o.id().equals(source.via())) {
        return "the " + o.label();
      }
    }
    return house.lamps().stream()
        .filter(l -> l.id().equals(source.via()))
        .map(l -> "the " + l.label())
        .findFirst()
        .orElse("the light");
  }
}
