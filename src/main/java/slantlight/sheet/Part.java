package slantlight.sheet;

import java.util.Optional;
import slantlight.decide.Showing;
import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.Surface;
import slantlight.score.Peak;
import slantlight.score.SurfaceScore;

/**
 * A surface to draw.
 *
 * @param map where it lies on paper
 * @param score empty while it is not known
 */
public record Part(Surface surface, Optional<SurfaceScore> score, PaperMap map) {
  Face face() {
    return surface.face();
  }

  Optional<Peak> peak() {
    return score.flatMap(Showing::worst);
  }

  /** The point of this surface straight above or below a point of the world. */
  Vec2 above(Vec3 p) {
    return PaperMap.above(face().frame(), new Vec2(p.x(), p.y()));
  }
}
