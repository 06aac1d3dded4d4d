package slantlight.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slantlight.board.Coverage;
import slantlight.board.CutList;
import slantlight.board.CuttingPlan;
import slantlight.board.Joint;
import slantlight.board.Layout;
import slantlight.board.PlacedBoard;
import slantlight.board.Quantities;
import slantlight.board.QuantityTakeoff;
import slantlight.board.Stock;
import slantlight.geom.Vec2;
import slantlight.report.Csv;
import slantlight.scene.BoardRun;
import slantlight.scene.House;
import slantlight.scene.JointKind;
import slantlight.scene.Surface;
import slantlight.units.Length;
import slantlight.units.LengthUnit;
import slantlight.units.Measures;

/** Layouts, quantities and cut list in the forms that the boards command prints. */
final class BoardsAnswer {
  private static final String CAUTION =
      "Quantities and layouts are estimates; follow the board maker's instructions and local codes,"
          + " above all for fire-rated assemblies.";

  private final House house;
  private final List<Layout> layouts;
  private final LengthUnit unit;
  private final List<Quantities> parts = new ArrayList<>();
  private final CuttingPlan plan;
  private final String weighed;

  /**
   * @param weighed what joints weigh in these layouts, a sentence
   */
  BoardsAnswer(
      House house,
      List<Surface> surfaces,
      List<Layout> layouts,
      LengthUnit unit,
      int level,
      String weighed) {
    this.house = house;
    this.layouts = layouts;
    this.unit = unit;
    this.weighed = weighed;
    this.plan = CuttingPlan.of(surfaces, layouts);
    QuantityTakeoff takeoff = new QuantityTakeoff(house);
    for (int i = 0; i < surfaces.size(); i++) {
      Surface s = surfaces.get(i);
      parts.add(takeoff.of(s, layouts.get(i), s.level().orElse(level)));
    }
  }

  private String length(double metres) {
    return new Length(metres).format(unit);
  }

  private List<CutList.Entry> cutList() {
    return CutList.of(plan, this::length);
  }

  void print(PrintWriter out, int width) {
    out.println(house.name() + ": boards");
    out.println();
    TextTable table =
        new TextTable(
            TextTable.left("Surface"),
            TextTable.left("Run"),
            TextTable.right("Pieces"),
            TextTable.right("Tapered"),
            TextTable.right("Butt, cut"),
            TextTable.wrap("Why"));
    for (Layout l : layouts) {
      table.row(
          l.surfaceId(),
          way(l.run()),
          Integer.toString(l.boards().size()),
          length(l.length(JointKind.TAPERED)),
          length(l.length(JointKind.BUTT) + l.length(JointKind.CUT)),
          l.reason());
    }
    table.print(out, width);
    out.println();
    TextTable.wrapped(weighed, width).forEach(out::println);
    printNotes(out, width);
    printQuantities(out, width);
    printCuts(out, width);
    out.println();
    TextTable.wrapped(CAUTION, width).forEach(out::println);
  }

  private static String way(BoardRun run) {
    return run == BoardRun.ACROSS_FRAMING ? "across" : "along";
  }

  private static String percent(double share) {
    return Math.round(share * 100) + " %";
  }

  private void printNotes(PrintWriter out, int width) {
    for (Layout l : layouts) {
      for (String note : l.notes()) {
        TextTable.wrapped("note: " + l.surfaceId() + ": " + note, width).forEach(out::println);
      }
    }
  }

  private void printQuantities(PrintWriter out, int width) {
    Quantities sum = QuantityTakeoff.sum(parts, plan);
    Measures reader = Measures.typed(unit);
    out.println();
    TextTable table =
        new TextTable(
            TextTable.left("Quantity"), TextTable.right("Amount"), TextTable.wrap("Remark"));
    sum.boards().forEach((b, n) -> table.row("board " + b.name(), Integer.toString(n), ""));
    table.row(
        "boards in all",
        Integer.toString(plan.sheets().size()),
        "for "
            + plan.pieces().size()
            + " pieces: what a board leaves serves others, as the cut list says; order a few more"
            + " for breakage");
    table.row(
        "area covered",
        reader.area(sum.netArea()),
        percent(sum.waste()) + " of the bought area is waste");
    table.row(
        "joint tape",
        reader.total(sum.tape()),
        "joints and inside corners, measured; order "
            + percent(Coverage.shipped().tapeWaste())
            + " more");
    table.row("compound, ready-mixed", reader.volume(sum.compound()), "all coats up to the level");
    table.row(
        "corner bead", reader.total(sum.cornerBead()), "outside corners; window returns not in it");
    table.row("screws", Integer.toString(sum.fasteners()), "no allowance for losses");
    table.print(out, width);
  }

  private void printCuts(PrintWriter out, int width) {
    out.println();
    TextTable table =
        new TextTable(
            TextTable.right("Order"),
            TextTable.left("Surface"),
            TextTable.right("Piece"),
            TextTable.left("Cut from"),
            TextTable.wrap("Cuts"));
    for (CutList.Entry e : cutList()) {
      table.row(
          Integer.toString(e.order()),
          e.piece().surface().id(),
          Integer.toString(e.piece().board().number()),
          e.source(Stock::name),
          e.words());
    }
    if (!table.isEmpty()) {
      table.print(out, width);
    }
  }

  /** The cut list, lengths in metres. */
  String csv() {
    Csv csv =
        new Csv(
            "order",
            "surface",
            "piece",
            "sheet",
            "sheet_width_m",
            "sheet_length_m",
            "sheet_thickness_m",
            "area_m2",
            "x0_m",
            "y0_m",
            "x1_m",
            "y1_m",
            "cuts");
    for (CutList.Entry e : cutList()) {
      PlacedBoard b = e.piece().board();
      csv.number(e.order()).text(e.piece().surface().id()).number(b.number());
      csv.number(e.sheet());
      csv.number(e.from().size().width()).number(e.from().size().length());
      csv.number(e.from().thickness()).number(b.area());
      for (int corner : new int[] {0, 2}) {
        Vec2 p = b.outline().get(corner);
        csv.number(p.x()).number(p.y());
      }
      csv.text(e.words()).end();
    }
    return csv.toString();
  }

  /** Everything, lengths in metres. */
  String json() {
    ObjectMapper mapper = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    ObjectNode root = mapper.createObjectNode();
    root.put("scene", house.name());
    root.put("weighed", weighed);
    root.put("caution", CAUTION);
    ArrayNode list = root.putArray("surfaces");
    for (int i = 0; i < layouts.size(); i++) {
      addLayout(list.addObject(), layouts.get(i), parts.get(i));
    }
    addQuantities(root.putObject("total"), QuantityTakeoff.sum(parts, plan));
    addSheets(root.putArray("sheets"));
    ArrayNode cuts = root.putArray("cutList");
    for (CutList.Entry e : cutList()) {
      ObjectNode node = cuts.addObject();
      node.put("order", e.order()).put("surface", e.piece().surface().id());
      node.put("board", e.piece().board().number()).put("sheet", e.sheet());
      e.cuts().forEach(node.putArray("cuts")::add);
    }
    try {
      return mapper.writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree in memory can be written", e);
    }
  }

  /** Boards to buy, and where each piece lies on its board. */
  private void addSheets(ArrayNode sheets) {
    for (CuttingPlan.Sheet sheet : plan.sheets()) {
      ObjectNode node = sheets.addObject();
      node.put("number", sheets.size());
      addStock(node, sheet.stock());
      ArrayNode cuts = node.putArray("pieces");
      for (CuttingPlan.Cut c : sheet.cuts()) {
        ObjectNode cut = cuts.addObject();
        cut.put("order", c.order()).put("x", c.x()).put("y", c.y());
        cut.put("length", c.length()).put("width", c.width());
      }
    }
  }

  private void addLayout(ObjectNode node, Layout l, Quantities q) {
    node.put("surface", l.surfaceId()).put("run", way(l.run())).put("reason", l.reason());
    l.notes().forEach(node.putArray("notes")::add);
    ArrayNode boards = node.putArray("boards");
    for (PlacedBoard b : l.boards()) {
      ObjectNode board = boards.addObject();
      board.put("number", b.number()).put("area", b.area());
      board.put("stockWidth", b.stock().width()).put("stockLength", b.stock().length());
      ArrayNode outline = board.putArray("outline");
      b.outline().forEach(p -> outline.addArray().add(p.x()).add(p.y()));
    }
    ArrayNode joints = node.putArray("joints");
    for (Joint j : l.joints()) {
      ObjectNode joint = joints.addObject();
      joint.put("id", j.id()).put("kind", j.kind().name().toLowerCase(Locale.ROOT));
      joint.put("length", j.length());
      joint.putArray("from").add(j.from().x()).add(j.from().y());
      joint.putArray("to").add(j.to().x()).add(j.to().y());
    }
    addQuantities(node.putObject("quantities"), q);
  }

  private static void addQuantities(ObjectNode node, Quantities q) {
    ArrayNode boards = node.putArray("boards");
    q.boards().forEach((stock, n) -> addStock(boards.addObject(), stock).put("count", n));
    node.put("netArea", q.netArea()).put("boardArea", q.boardArea()).put("waste", q.waste());
    node.put("tape", q.tape()).put("compoundLitres", q.compound());
    node.put("cornerBead", q.cornerBead()).put("fasteners", q.fasteners());
  }

  private static ObjectNode addStock(ObjectNode node, Stock s) {
    node.put("width", s.size().width()).put("length", s.size().length());
    return node.put("thickness", s.thickness());
  }
}
