package slantlight.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slantlight.geom.Face;
import slantlight.geom.Frame;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.Eye;
import slantlight.scene.Room;
import slantlight.score.JointScore;
import slantlight.score.Peak;
import slantlight.score.SurfaceScore;
import slantlight.sky.Weather;

/** What keys and pointer do to the {@link Stage}. */
final class Controls {
  private static final double STRIDE = 0.35;
  private static final double TURN = 0.005;
  private final Stage stage;
  private ViewModel model;
  private HouseShape shape;
  private Walker walker;
  private int eye = -1;
  private int room = -1;

  /** Whether the camera goes round the house instead of standing in it. */
  private boolean outside = true;

  private Vec3 target;
  private double azimuth = Math.toRadians(205);
  private double altitude = Math.toRadians(28);
  private double distance;

  /** Which key was pressed, by the name on the key card; letters are upper case. */
  record Press(String key, boolean shift) {}

  Controls(Stage stage) {
    this.stage = stage;
  }

  /** Works on other numbers or another house from now on. */
  void show(ViewModel next, HouseShape nextShape) {
    model = next;
    shape = nextShape;
    walker = new Walker(next.house());
    target = shape.middle();
  }

  /** The whole house from outside. */
  void goOutside(double aspect) {
    outside = true;
    stage.focus = Optional.empty();
    target = shape.middle();
    stage.camera = Camera.fitting(shape.scope(), target, azimuth, altitude, aspect);
    distance = stage.camera.eye().distance(target);
  }

  /** Takes a camera kept from before: inside when it stands in a room, else round the house. */
  void stand(Camera camera) {
    outside = walker.room(camera.eye()).isEmpty();
    if (outside) {
      azimuth = camera.azimuth() - Math.PI;
      altitude = -camera.altitude();
      distance = Math.max(1, Math.min(400, camera.eye().distance(target)));
      stage.camera = Camera.around(target, azimuth, altitude, distance);
    } else {
      stage.camera = camera;
    }
  }

  /** The rooms whose light is in the picture: that stood in and that of what is chosen. */
  List<String> rooms() {
    List<String> out = new ArrayList<>();
    stage.surface.map(s -> model.house().surface(s).roomId()).ifPresent(out::add);
    String stood = roomId();
    if (!out.contains(stood)) {
      out.add(stood);
    }
    return out;
  }

  /** The room stood in, else that of what is chosen, else the first. */
  String roomId() {
    return walker
        .room(stage.camera.eye())
        .map(Room::id)
        .or(() -> stage.surface.map(s -> model.house().surface(s).roomId()))
        .orElse(model.house().rooms().get(0).id());
  }

  /**
   * Does what a key does.
   *
   * @return false when the key means nothing
   */
  boolean press(Press press, double aspect) {
    return looks(press.key()) || time(press) || asLit(press.key()) || go(press.key(), aspect);
  }

  private boolean looks(String key) {
    switch (key) {
      case "1" -> stage.look = Stage.Look.RISK;
      case "2" -> stage.look = Stage.Look.BOARDS;
      case "3" -> stage.look = Stage.Look.AS_LIT;
      case "M" -> stage.measure = Dials.next(List.of(Stage.Measure.values()), stage.measure);
      case "Tab" -> stage.panes = Dials.next(List.of(Stage.Panes.values()), stage.panes);
      case "Enter" -> present();
      case "H" -> stage.keyCard = !stage.keyCard;
      case "Esc" -> back();
      default -> {
        return false;
      }
    }
    return true;
  }

  private void present() {
    stage.presenting = !stage.presenting;
    if (stage.presenting) {
      stage.stop = 0;
      stage.look = Stage.Look.AS_LIT;
      stop(0);
    }
  }

  private void stop(int step) {
    List<Stop> stops = Stop.all(model);
    if (!stops.isEmpty()) {
      stage.stop = Math.floorMod(stage.stop + step, stops.size());
      outside = false;
      stops.get(stage.stop).go(model, stage);
    }
  }

  private void back() {
    if (stage.keyCard) {
      stage.keyCard = false;
    } else if (stage.presenting) {
      stage.presenting = false;
    } else if (stage.joint.isPresent()) {
      stage.joint = Optional.empty();
    } else {
      stage.surface = Optional.empty();
    }
    stage.notice = Optional.empty();
  }

  private boolean time(Press press) {
    switch (press.key()) {
      case "Left" -> minutes(-15);
      case "Right" -> minutes(15);
      case "Up" -> days(1, press.shift());
      case "Down" -> days(-1, press.shift());
      case "Space" ->
          stage.playing = stage.playing == Stage.Play.DAY ? Stage.Play.NO : Stage.Play.DAY;
      case "Y" ->
          stage.playing = stage.playing == Stage.Play.YEAR ? Stage.Play.NO : Stage.Play.YEAR;
      case "T" -> worst().ifPresent(p -> toPeak(p));
      case "C" -> stage.weather = Dials.next(List.of(Weather.values()), stage.weather);
      default -> {
        return false;
      }
    }
    return true;
  }

  private void minutes(int by) {
    if (stage.presenting) {
      stop(Integer.signum(by));
    } else {
      stage.time = stage.time.plusMinutes(by);
    }
  }

  private void days(int by, boolean months) {
    stage.time = months ? stage.time.plusMonths(by) : stage.time.plusDays(by);
  }

  private void toPeak(Peak p) {
    outside = false;
    Stop.look(model, stage, p);
  }

  /** The worst moment of the joint, the surface or the house, by what is chosen. */
  private Optional<Peak> worst() {
    Optional<Peak> joint = stage.joint.flatMap(model::joint).flatMap(JointScore::peak);
    return joint.isPresent() ? joint : new Almanac(model, stage.surface).worst();
  }

  private boolean asLit(String key) {
    switch (key) {
      case "V" -> Dials.split(stage);
      case "L" -> Dials.level(stage);
      case "P" -> Dials.swatch(stage);
      case "G" -> Dials.sheen(stage);
      case "X" -> Dials.strength(stage);
      default -> {
        return false;
      }
    }
    return true;
  }

  private boolean go(String key, double aspect) {
    switch (key) {
      case "W" -> walk(0);
      case "S" -> walk(Math.PI);
      case "A" -> walk(-Math.PI / 2);
      case "D" -> walk(Math.PI / 2);
      case "O" -> goOutside(aspect);
      case "R" -> nextRoom();
      case "E" -> nextEye();
      case "N" -> nextSurface();
      case "J" -> nextJoint();
      default -> {
        return false;
      }
    }
    return true;
  }

  private void walk(double turn) {
    if (outside) {
      nextRoom();
      return;
    }
    double a = stage.camera.azimuth() + turn;
    Vec2 step = new Vec2(Math.sin(a) * STRIDE, Math.cos(a) * STRIDE);
    stage.camera = stage.camera.movedTo(walker.step(stage.camera.eye(), step));
  }

  private void nextRoom() {
    List<String> rooms = model.house().rooms().stream().map(Room::id).toList();
    room = (room + 1) % rooms.size();
    standIn(rooms.get(room));
  }

  /** Stands in a room a little toward one corner, looking across it. */
  void standIn(String roomId) {
    stage.focus = Optional.empty();
    Room r = model.house().room(roomId);
    Vec2 middle = Face.of(Frame.of(Vec3.ZERO, Vec3.EAST, Vec3.UP), r.outline()).centroid();
    Vec2 corner =
        new Vec2(
            r.outline().stream().mapToDouble(Vec2::x).min().orElseThrow(),
            r.outline().stream().mapToDouble(Vec2::y).min().orElseThrow());
    Vec2 stand = middle.lerp(corner, 0.45);
    Vec2 far = middle.plus(middle.minus(corner).times(0.9));
    double z = r.floor() + Walker.EYE;
    outside = false;
    stage.camera =
        Camera.from(new Vec3(stand.x(), stand.y(), z), new Vec3(far.x(), far.y(), z + 0.25));
  }

  private void nextEye() {
    List<Eye> eyes = model.house().eyes();
    if (eyes.isEmpty()) {
      return;
    }
    eye = (eye + 1) % eyes.size();
    Eye e = eyes.get(eye);
    Vec3 toward =
        worst()
            .map(Peak::place)
            .filter(p -> walker.room(p).map(Room::id).filter(e.roomId()::equals).isPresent())
            .orElse(e.position().plus(stage.camera.forward()));
    outside = false;
    stage.focus = Optional.empty();
    stage.camera = Camera.from(e.position(), toward);
  }

  private void nextSurface() {
    List<String> all =
        new Almanac(model, Optional.empty())
            .ranked().stream().map(SurfaceScore::surfaceId).toList();
    if (!all.isEmpty()) {
      stage.surface = Optional.of(Dials.next(all, stage.surface.orElse("")));
      stage.joint = Optional.empty();
    }
  }

  private void nextJoint() {
    stage
        .surface
        .flatMap(model::score)
        .filter(s -> !s.joints().isEmpty())
        .ifPresent(
            s ->
                stage.joint =
                    Optional.of(
                        Dials.next(
                            s.joints().stream().map(j -> j.joint().id()).toList(),
                            stage.joint.orElse(""))));
  }

  /** Turns round the house, or looks round inside. */
  void drag(double dx, double dy) {
    if (outside) {
      azimuth += dx * TURN;
      altitude = Math.max(-1.2, Math.min(1.5, altitude + dy * TURN));
      stage.camera = Camera.around(target, azimuth, altitude, distance);
    } else {
      stage.camera = stage.camera.turned(-dx * TURN * 0.7, dy * TURN * 0.7);
    }
  }

  /** Comes nearer for positive notches. */
  void wheel(double notches) {
    if (outside) {
      distance = Math.max(1, Math.min(400, distance * Math.pow(0.88, notches)));
      stage.camera = Camera.around(target, azimuth, altitude, distance);
    } else {
      stage.camera = stage.camera.zoomed(Math.pow(0.92, notches));
    }
  }

  /** Chooses what is under the pointer in the room picture. */
  void choose(Optional<Picked> picked) {
    stage.focus = picked.map(p -> p.surface().face().frame().toWorld(p.at()));
    stage.surface = picked.map(p -> p.surface().id());
    stage.joint = picked.flatMap(Picked::joint).map(j -> j.joint().id());
  }
}
