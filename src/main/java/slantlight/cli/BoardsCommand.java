package slantlight.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slantlight.board.ImpossibleLayoutException;
import slantlight.board.Layout;
import slantlight.board.LayoutRules;
import slantlight.board.LayoutSolver;
import slantlight.board.PlacedBoard;
import slantlight.board.ShowWeight;
import slantlight.geom.Vec2;
import slantlight.scene.BoardOffer;
import slantlight.scene.BoardRun;
import slantlight.scene.BoardSize;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.score.ScoreOptions;
import slantlight.score.Scorer;
import slantlight.units.Length;
import slantlight.units.LengthUnit;

/** Lays the boards and prints layouts, quantities and the cut list. */
@Command(
    name = "boards",
    description =
        "Lay boards on every surface where their joints show least over the year, as score does;"
            + " with the boards to order and a cut list in hanging order.")
final class BoardsCommand implements Callable<Integer> {
  private static final String BY_SHOWING =
      "Joints weigh their length times the most that they would show over the year at level 4."
          + " These are the boards that score and report speak of, where run, carry and fixed boards"
          + " are the same.";

  private static final String EVENLY =
      "Joints weigh their length, butt and cut ones three times as much as tapered ones, wherever"
          + " they are: without --even the boards may lie otherwise, as score and report have them.";

  @Mixin private CommonOptions common;
  @Mixin private ProgressOptions progress;
  @Mixin private ChosenSurfaces chosen;

  @Parameters(paramLabel = "SCENE", description = "Scene file (JSON).")
  private Path scene;

  @Option(
      names = "--carry",
      paramLabel = "LEN",
      description = "Longest board that fits through stair and door, such as \"10'\" or \"3 m\".")
  private String carry;

  @Option(
      names = "--run",
      paramLabel = "WAY",
      description = "across or along the framing, or auto (default: as the scene says).")
  private Way run;

  @Option(
      names = "--fix",
      paramLabel = "ID=X0,Y0,X1,Y1",
      description = {
        "Keep a board where it is: its corners from the surface's left lower corner, seen from",
        "inside; may be given several times."
      })
  private List<String> fixes = List.of();

  @Option(
      names = "--even",
      description =
          "Take every place for as bad as another: at once, without computing light; not the boards"
              + " that score and report speak of.")
  private boolean even;

  @Option(
      names = "--level",
      paramLabel = "0-5",
      defaultValue = "4",
      description = "Finish level for compound where the scene fixes none (default: 4).")
  private int level;

  @Option(
      names = "--units",
      paramLabel = "UNIT",
      description = "ft, in, m or mm (default: ft when boards are sold in inches, else mm).")
  private LengthUnit units;

  @ArgGroup private Form form;

  private static final class Form {
    @Option(names = "--json", description = "Print everything as JSON, lengths in metres.")
    private boolean json;

    @Option(names = "--csv", description = "Print the cut list as CSV, lengths in metres.")
    private boolean csv;
  }

  /** Directions as the user names them. */
  enum Way {
    ACROSS(BoardRun.ACROSS_FRAMING),
    ALONG(BoardRun.ALONG_FRAMING),
    AUTO(BoardRun.AUTO);

    private final BoardRun run;

    Way(BoardRun run) {
      this.run = run;
    }
  }

  @Override
  public Integer call() {
    if (level < 0 || level > 5) {
      throw CommandFailure.usage("--level " + level + ": finish levels run from 0 to 5");
    }
    House house = Scenes.read(scene, common.err());
    List<Surface> surfaces = chosen.in(house);
    LengthUnit unit = units == null ? usualUnit(house) : units;
    List<Layout> layouts = layouts(house, surfaces, unit);
    BoardsAnswer answer =
        new BoardsAnswer(house, surfaces, layouts, unit, level, even ? EVENLY : BY_SHOWING);
    if (form != null && form.json) {
      common.out().print(answer.json());
    } else if (form != null && form.csv) {
      common.out().print(answer.csv());
    } else {
      answer.print(common.out(), Terminal.width());
    }
    return ExitCode.OK;
  }

  private static LengthUnit usualUnit(House house) {
    return house.units().imperial() ? LengthUnit.FT : LengthUnit.MM;
  }

  /** Laid evenly first: that is done at once, and finds what cannot be done. */
  private List<Layout> layouts(House house, List<Surface> surfaces, LengthUnit unit) {
    Map<String, List<PlacedBoard>> fixed = fixed(surfaces, unit);
    List<Layout> evenly =
        surfaces.stream()
            .map(s -> solve(s, unit, ShowWeight.PLAIN.whereUncovered(s), fixed))
            .toList();
    if (even) {
      return evenly;
    }
    ScoreOptions options =
        ScoreOptions.standard()
            .withSurfaces(surfaces.stream().map(Surface::id).collect(Collectors.toSet()));
    try (ConsoleProgress bar = progress.open()) {
      Map<String, ShowWeight> weights = Scorer.weights(house, options, bar);
      return surfaces.stream()
          .map(s -> solve(s, unit, weights.getOrDefault(s.id(), ShowWeight.PLAIN), fixed))
          .toList();
    }
  }

  private Layout solve(
      Surface surface, LengthUnit unit, ShowWeight weight, Map<String, List<PlacedBoard>> fixed) {
    try {
      return LayoutSolver.solve(
          withOptions(surface, unit),
          weight,
          LayoutRules.COMMON,
          fixed.getOrDefault(surface.id(), List.of()));
    } catch (ImpossibleLayoutException e) {
      throw CommandFailure.usage("--fix: " + e.getMessage());
    }
  }

  private Surface withOptions(Surface s, LengthUnit unit) {
    if (s.boards().isEmpty()) {
      return s;
    }
    BoardOffer o = s.boards().get();
    double longest = carry == null ? o.carry() : length("--carry", carry, unit);
    if (longest < 0.6) {
      throw CommandFailure.usage("--carry " + carry + ": give at least 2 ft (0.6 m)");
    }
    BoardOffer offer =
        new BoardOffer(o.sizes(), o.thickness(), run == null ? o.run() : run.run, longest);
    return s.withBoards(offer);
  }

  private static double length(String option, String text, LengthUnit unit) {
    return Length.parse(text, unit)
        .orElseThrow(() -> CommandFailure.usage(option + " " + text + ": expected " + Length.FORMS))
        .metres();
  }

  private Map<String, List<PlacedBoard>> fixed(List<Surface> surfaces, LengthUnit unit) {
    Map<String, List<PlacedBoard>> out = new LinkedHashMap<>();
    for (String fix : fixes) {
      int equals = fix.indexOf('=');
      String[] corners = fix.substring(equals + 1).split(",", -1);
      Surface surface =
          surfaces.stream()
              .filter(s -> equals > 0 && s.id().equals(fix.substring(0, equals)))
              .findFirst()
              .orElse(null);
      if (surface == null || surface.boards().isEmpty() || corners.length != 4) {
        throw CommandFailure.usage(
            "--fix " + fix + ": expected SURFACE=X0,Y0,X1,Y1 with the id of a chosen surface");
      }
      double[] c = new double[4];
      for (int i = 0; i < 4; i++) {
        c[i] = length("--fix", corners[i].strip(), unit);
      }
      List<PlacedBoard> of = out.computeIfAbsent(surface.id(), k -> new ArrayList<>());
      of.add(placed(surface, fix, of.size() + 1, c));
    }
    return out;
  }

  private static PlacedBoard placed(Surface surface, String fix, int number, double[] c) {
    double x0 = surface.face().outer().stream().mapToDouble(Vec2::x).min().orElseThrow();
    double y0 = surface.face().outer().stream().mapToDouble(Vec2::y).min().orElseThrow();
    double dx = c[2] - c[0];
    double dy = c[3] - c[1];
    BoardSize stock = null;
    for (BoardSize b : surface.boards().orElseThrow().sizes()) {
      boolean covers =
          b.length() >= Math.max(dx, dy) - 1e-3 && b.width() >= Math.min(dx, dy) - 1e-3;
      boolean smaller = stock == null || b.width() * b.length() < stock.width() * stock.length();
      stock = covers && smaller ? b : stock;
    }
    if (stock == null || dx <= 0 || dy <= 0) {
      throw CommandFailure.usage("--fix " + fix + ": no board on offer is that large");
    }
    List<Vec2> outline =
        List.of(
            new Vec2(x0 + c[0], y0 + c[1]),
            new Vec2(x0 + c[2], y0 + c[1]),
            new Vec2(x0 + c[2], y0 + c[3]),
            new Vec2(x0 + c[0], y0 + c[3]));
    return new PlacedBoard(number, stock, outline, dx * dy);
  }
}
