package slantlight.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slantlight.board.CuttingPlan;
import slantlight.board.CuttingPlan.Cut;
import slantlight.board.CuttingPlan.Piece;
import slantlight.board.CuttingPlan.Sheet;
import slantlight.geom.Vec2;
import slantlight.units.Measures;

/** How each board that serves several pieces is cut, to scale. */
public final class CuttingSheet {
  private static final double PAGE = 184;
  private static final int COLUMNS = 3;
  private static final int ROWS = 9;
  private static final double GUTTER = 7;
  private static final double WIDTH = (PAGE - (COLUMNS - 1) * GUTTER) / COLUMNS;

  /** Over each board, for its name. */
  private static final double NAME = 4;

  /** Under each board, for numbers of pieces too narrow for their own. */
  private static final double BELOW = 5;

  private static final double LEGEND = 8;

  private final CuttingPlan plan;
  private final Measures reader;

  /** mm of paper for a metre. */
  private final double scale;

  private final double step;

  private CuttingSheet(CuttingPlan plan, Measures reader, List<Sheet> shared) {
    this.plan = plan;
    this.reader = reader;
    double longest =
        shared.stream().mapToDouble(s -> s.stock().size().length()).max().orElseThrow();
    double widest = shared.stream().mapToDouble(s -> s.stock().size().width()).max().orElseThrow();
    scale = (WIDTH - 1) / longest;
    step = NAME + widest * scale + BELOW;
  }

  /**
   * As many drawings as the boards need; none when every board serves one piece.
   *
   * @param id safe id of the drawings, followed by their numbers
   */
  public static List<Drawing> of(CuttingPlan plan, Measures reader, String id) {
    List<Sheet> shared = plan.sheets().stream().filter(s -> s.cuts().size() > 1).toList();
    List<Drawing> out = new ArrayList<>();
    int pages = (shared.size() + COLUMNS * ROWS - 1) / (COLUMNS * ROWS);
    for (int page = 0; page < pages; page++) {
      int from = page * COLUMNS * ROWS;
      List<Sheet> here = shared.subList(from, Math.min(from + COLUMNS * ROWS, shared.size()));
      String title =
          "Boards that serve several pieces"
              + (pages > 1 ? ", " + (page + 1) + " of " + pages : "")
              + ": numbers are those of the cut list";
      out.add(new CuttingSheet(plan, reader, shared).draw(here, id + "-" + (page + 1), title));
    }
    return out;
  }

  private Drawing draw(List<Sheet> sheets, String id, String title) {
    int rows = (sheets.size() + COLUMNS - 1) / COLUMNS;
    double height = rows * step + LEGEND;
    Pencil pencil = new Pencil(PAGE, height);
    for (int i = 0; i < sheets.size(); i++) {
      int row = i / COLUMNS;
      int column = i % COLUMNS;
      board(pencil, sheets.get(i), column * (WIDTH + GUTTER) + 0.5, row * step);
    }
    legend(pencil, height - LEGEND + 4);
    String description =
        sheets.size()
            + " boards with "
            + sheets.stream().mapToInt(s -> s.cuts().size()).sum()
            + " pieces, which the cut list names one by one.";
    return pencil.drawing(id, title, description, PAGE, height);
  }

  private void board(Pencil pencil, Sheet sheet, double x, double top) {
    double y = top + NAME;
    double length = sheet.stock().size().length() * scale;
    double width = sheet.stock().size().width() * scale;
    pencil.on("boards");
    pencil.box(x, y, length, width, Ink.COVER);
    pencil.on("pieces");
    for (Cut c : sheet.cuts()) {
      pencil.area(
          List.of(rectangle(c, x, y)),
          Optional.of(Ink.PAPER),
          Optional.of(Pen.full(Ink.LINE, 0.25)),
          hover(c),
          "");
    }
    pencil.on("edges");
    Pen made = Pen.full(Ink.ACCENT, 0.7);
    pencil.line(x, y, x + length, y, made);
    pencil.line(x, y + width, x + length, y + width, made);
    pencil.on("numbers");
    Extent board = new Extent(x, y, x + length, y + width);
    String name = sheet.stock().printedName();
    List<Cut> narrow = new ArrayList<>();
    for (Cut c : sheet.cuts()) {
      inside(c, Extent.of(rectangle(c, x, y)))
          .ifPresentOrElse(
              m ->
                  pencil.label(
                      m.at().x(),
                      m.at().y(),
                      m.text(),
                      m.size(),
                      m.anchor(),
                      m.turnDeg(),
                      Ink.LINE,
                      m.strong()),
              () -> narrow.add(c));
    }
    for (Cut c : narrow) {
      boolean stands = beside(pencil, c, Extent.of(rectangle(c, x, y)), board);
      name += stands ? "" : ", with " + c.order();
    }
    pencil.text(x, y - 1.3, name, 2.7, Ink.SOFT);
  }

  private List<Vec2> rectangle(Cut c, double x, double y) {
    return Pencil.rectangle(
        x + c.x() * scale, y + c.y() * scale, c.length() * scale, c.width() * scale);
  }

  /** A number in its piece, with its size where there is room for it. */
  private Optional<Mark.Label> inside(Cut c, Extent piece) {
    String order = Integer.toString(c.order());
    return Stream.of(
            new Lettering(order + ": " + size(c), 2.6, Ink.LINE, false),
            new Lettering(order, 2.8, Ink.LINE, true),
            new Lettering(order, 2.1, Ink.LINE, true))
        .flatMap(l -> l.inside(piece).stream())
        .findFirst();
  }

  /**
   * A number beside its board at the end of a line.
   *
   * @return false where there is no room
   */
  private static boolean beside(Pencil pencil, Cut c, Extent piece, Extent board) {
    Lettering number = new Lettering(Integer.toString(c.order()), 2.6, Ink.LINE, true);
    boolean upright = piece.height() > piece.width();
    for (double aside : new double[] {0, 2, -2, 4, -4, 6, -6, 8, -8, 10, -10}) {
      Vec2 from =
          upright
              ? new Vec2(piece.middle().x(), board.bottom())
              : new Vec2(piece.right(), piece.middle().y());
      Vec2 to =
          upright
              ? new Vec2(from.x() + aside, from.y() + 1.4)
              : new Vec2(board.right() + 1.4, from.y() + aside);
      Mark.Label label =
          upright
              ? number.over(to.plus(new Vec2(0, 1.6)))
              : number.at(to.plus(new Vec2(0.5, 0.9)), Mark.Anchor.START);
      if (pencil.placeIfClear(List.of(label))) {
        pencil.line(from.x(), from.y(), to.x(), to.y(), Pen.full(Ink.LINE, 0.2));
        return true;
      }
    }
    return false;
  }

  private String size(Cut c) {
    return reader.length(c.length()) + " \u00d7 " + reader.length(c.width());
  }

  private String hover(Cut c) {
    Piece piece = plan.pieces().get(c.piece());
    return c.order()
        + ": "
        + piece.surface().label()
        + ", piece "
        + piece.board().number()
        + ", "
        + size(c);
  }

  private static void legend(Pencil pencil, double y) {
    pencil.on("legend");
    pencil.line(0.5, y, 10, y, Pen.full(Ink.ACCENT, 0.7));
    pencil.text(12, y + 0.9, "tapered edge, as made", 2.7, Ink.LINE);
    pencil.box(56, y - 1.5, 9, 3, Ink.COVER);
    pencil.text(67, y + 0.9, "waste", 2.7, Ink.LINE);
  }
}
