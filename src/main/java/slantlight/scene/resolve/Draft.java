package slantlight.scene.resolve;

import java.util.ArrayList;
import java.util.List;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.scene.GivenJoint;
import slantlight.scene.Surface;
import slantlight.scene.SurfaceKind;

/** A surface while holes are still being cut into it; drawing coordinates. */
final class Draft {
  final String id;
  final String label;
  final String roomId;
  final SurfaceKind kind;
  final Face whole;
  final Finish finish;
  final List<List<Vec2>> holes = new ArrayList<>();
  final List<List<Vec2>> covered = new ArrayList<>();
  final List<GivenJoint> joints = new ArrayList<>();

  Draft(String id, String label, String roomId, SurfaceKind kind, Face whole, Finish finish) {
    this.id = id;
    this.label = label;
    this.roomId = roomId;
    this.kind = kind;
    this.whole = whole;
    this.finish = finish;
    if (finish.hidden()) {
      covered.add(whole.outer());
    }
  }

  Frame frame() {
    return whole.frame();
  }

  List<Vec2> outer() {
    return whole.outer();
  }

  Surface surface() {
    List<List<Vec2>> all = new ArrayList<>(whole.holes());
    all.addAll(holes);
    Face face = new Face(whole.frame(), whole.outer(), all);
    return new Surface(
        id,
        label,
        roomId,
        kind,
        face,
        finish.paint(),
        finish.boarded(),
        finish.framing(face),
        finish.boards(),
        finish.level(),
        covered,
        joints);
  }
}
