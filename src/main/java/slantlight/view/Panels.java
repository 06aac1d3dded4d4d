package slantlight.view;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import slantlight.view.draw.Box;
import slantlight.view.draw.Canvas;
import slantlight.view.draw.Placed;
import slantlight.view.gl.Glass;
import slantlight.view.gl.Target;

/**
 * The parts of the window that are type and lines. Each is kept as a picture and drawn anew only
 * when what it shows has changed, so that a frame in which the camera moves costs little more than
 * its room picture.
 */
final class Panels implements AutoCloseable {
  private final Canvas canvas;
  private final Hits hits;
  private final Map<String, Kept> kept = new HashMap<>();
  private List<Part> now = List.of();
  private List<int[]> places = List.of();
  private Glass glass;
  private double scale;

  /**
   * A part of the window.
   *
   * @param shows everything that its picture depends on beside its box
   */
  record Part(String name, Box box, List<Object> shows, Runnable draw) {}

  private record Kept(Part part, List<Placed> placed, List<Hits.Hit> hits) {}

  Panels(Canvas canvas, Hits hits) {
    this.canvas = canvas;
    this.hits = hits;
  }

  /** Draws everything anew at the next frame. */
  void forget() {
    kept.clear();
  }

  /** Draws what has changed; leaves another framebuffer bound. */
  void draw(Target target, double pixelsPerUnit, List<Part> parts) {
    if (glass == null
        || glass.width() != target.width()
        || glass.height() != target.height()
        || scale != pixelsPerUnit) {
      close();
      glass = new Glass(target.width(), target.height());
      scale = pixelsPerUnit;
      kept.clear();
    }
    now = parts;
    places = new ArrayList<>();
    for (Part part : parts) {
      int[] place = part.box().pixels(scale, target.height());
      places.add(place);
      Kept old = kept.get(part.name());
      if (old == null
          || !old.part().box().equals(part.box())
          || !old.part().shows().equals(part.shows())) {
        kept.put(part.name(), drawn(target, part, place));
      }
      hits.addAll(kept.get(part.name()).hits());
    }
  }

  private Kept drawn(Target target, Part part, int[] place) {
    int before = hits.count();
    glass.wipe(place);
    canvas.begin(target.width(), target.height(), scale);
    canvas.within(part.box());
    part.draw().run();
    canvas.end();
    return new Kept(part, canvas.placed(), hits.takeFrom(before));
  }

  /** Lays the parts over the target that is bound. */
  void lay() {
    if (!places.isEmpty()) {
      glass.lay(places);
    }
  }

  /** The type of all parts. */
  List<Placed> placed() {
    List<Placed> out = new ArrayList<>();
    for (Part part : now) {
      out.addAll(kept.get(part.name()).placed());
    }
    return out;
  }

  @Override
  public void close() {
    if (glass != null) {
      glass.close();
    }
  }
}
