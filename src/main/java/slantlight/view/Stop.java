package slantlight.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slantlight.decide.Verdict;
import slantlight.geom.Vec3;
import slantlight.scene.Surface;
import slantlight.score.JointScore;
import slantlight.score.Peak;
import slantlight.score.SurfaceScore;

/**
 * One stop of the presentation: a surface at its worst moment, seen from the eye that sees it.
 *
 * @param joint the joint that shows most, when it is a joint
 */
record Stop(Surface surface, Optional<String> joint, Peak peak, int level, String sentence) {
  private static final int MOST = 8;

  /** The surfaces that show anything, worst first. */
  static List<Stop> all(ViewModel model) {
    List<Stop> out = new ArrayList<>();
    for (SurfaceScore s : new Almanac(model, Optional.empty()).ranked()) {
      Peak peak = s.worst().orElseThrow();
      if (out.size() == MOST || (peak.showing() < 1 && !out.isEmpty())) {
        break;
      }
      Optional<Verdict> verdict = model.verdict(s.surfaceId());
      out.add(
          new Stop(
              model.house().surface(s.surfaceId()),
              s.joints().stream()
                  .filter(j -> j.peak().filter(peak::equals).isPresent())
                  .map(JointScore::joint)
                  .map(j -> j.id())
                  .findFirst(),
              peak,
              verdict.map(Verdict::level).orElse(4),
              verdict.map(Verdict::reason).orElse("")));
    }
    return out;
  }

  /** Puts the stage at this stop. */
  void go(ViewModel model, Stage stage) {
    stage.surface = Optional.of(surface.id());
    stage.joint = joint;
    look(model, stage, peak);
  }

  /** Goes to a moment and to the eye that sees it, looking at the place. */
  static void look(ViewModel model, Stage stage, Peak peak) {
    stage.time = peak.at();
    stage.weather = peak.weather();
    Vec3 eye =
        model.house().eyes().stream()
            .filter(e -> e.id().equals(peak.eyeId()))
            .map(e -> e.position())
            .findFirst()
            .orElse(peak.place().plus(new Vec3(0, 0.01, -1)));
    stage.focus = Optional.of(peak.place());
    stage.camera = Camera.onto(eye, peak.place());
  }
}
