package slantlight.sheet;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slantlight.board.Joint;
import slantlight.board.Layout;
import slantlight.board.LayoutSolver;
import slantlight.board.ShowWeight;
import slantlight.geom.Face;
import slantlight.geom.Vec2;
import slantlight.light.Source;
import slantlight.light.SourceKind;
import slantlight.scene.Eye;
import slantlight.scene.House;
import slantlight.scene.Opening;
import slantlight.scene.Read;
import slantlight.scene.SceneReader;
import slantlight.scene.Surface;
import slantlight.score.Calendar;
import slantlight.score.HouseScore;
import slantlight.score.JointScore;
import slantlight.score.LevelScore;
import slantlight.score.Peak;
import slantlight.score.SurfaceScore;
import slantlight.sky.Weather;

/**
 * A shipped scene with its boards laid as the program lays them and showings that are invented, so
 * that its sheets can be drawn without the light of a year.
 */
public final class LaidHouse {
  private static final double[] SHOWINGS = {0.4, 1.7, 3.2, 8.4, 12, 0.8, 2.1};

  private LaidHouse() {}

  /** The scene in {@code scenes/NAME.json}. */
  public static HouseScore of(String name) {
    House house = ((Read.Ok) SceneReader.read(Path.of("scenes", name + ".json"))).house();
    List<SurfaceScore> surfaces =
        house.surfaces().stream().filter(Surface::boarded).map(s -> score(house, s)).toList();
    return new HouseScore(house, surfaces, 2026, 60, 4, 100);
  }

  private static SurfaceScore score(House house, Surface surface) {
    Layout layout = LayoutSolver.solve(surface, ShowWeight.PLAIN);
    List<JointScore> joints = new ArrayList<>();
    for (Joint j : layout.joints()) {
      double showing = SHOWINGS[joints.size() % SHOWINGS.length];
      List<Double> profile = new ArrayList<>();
      for (int i = 0; i < 9; i++) {
        profile.add(showing * (0.3 + 0.7 * i / 8));
      }
      joints.add(
          new JointScore(
              j, j.length(), levels(showing), peak(house, surface, j.to(), showing), profile));
    }
    Optional<Peak> worst =
        joints.stream()
            .flatMap(j -> j.peak().stream())
            .max(Comparator.comparingDouble(Peak::showing));
    double most = worst.map(Peak::showing).orElse(0.0);
    Calendar calendar = new Calendar(List.of(172), 60, new float[1][24]);
    return new SurfaceScore(
        surface.id(), layout, joints, levels(most), worst, calendar, Optional.empty());
  }

  /** Seen from the room's first eye by the light of the opening that is farthest from there. */
  private static Optional<Peak> peak(House house, Surface surface, Vec2 at, double showing) {
    Optional<Eye> eye =
        house.eyes().stream().filter(e -> e.roomId().equals(surface.roomId())).findFirst();
    Optional<Opening> opening =
        house.openings().stream()
            .filter(o -> o.roomId().equals(surface.roomId()))
            .filter(o -> !o.surfaceId().equals(surface.id()))
            .max(Comparator.comparingDouble(o -> distance(o.face(), surface.face(), at)));
    if (eye.isEmpty() || opening.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Peak(
            showing,
            showing * 0.004,
            ZonedDateTime.of(2026, 6, 21, 12, 0, 0, 0, house.site().zone()),
            Weather.CLEAR,
            surface.face().frame().toWorld(at),
            eye.get().id(),
            2.5,
            new Source(SourceKind.GROUND, opening.get().id(), "ground light"),
            0.7,
            Math.toRadians(12),
            Double.NaN,
            800,
            2));
  }

  private static double distance(Face opening, Face surface, Vec2 at) {
    return opening.frame().toWorld(opening.centroid()).distance(surface.frame().toWorld(at));
  }

  private static List<LevelScore> levels(double showing) {
    List<Double> none = List.of(0.0, 0.0, 0.0, 0.0);
    return List.of(
        new LevelScore(3, showing * 1.8, none, none, none),
        new LevelScore(4, showing, none, none, none),
        new LevelScore(5, showing * 0.2, none, none, none));
  }
}
