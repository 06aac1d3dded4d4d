package slantlight.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import slantlight.board.Coverage;
import slantlight.board.CutList;
import slantlight.board.CuttingPlan;
import slantlight.board.Quantities;
import slantlight.board.QuantityTakeoff;
import slantlight.board.Stock;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.sheet.CuttingSheet;
import slantlight.sheet.Drawing;
import slantlight.units.Length;
import slantlight.units.Measures;

/** What to buy and what to cut from it. */
final class MaterialSections {
  private final Html html;
  private final boolean paper;
  private final ReportData data;
  private final House house;
  private final Measures measures;
  private final CuttingPlan plan;
  private final Quantities sum;

  MaterialSections(Html html, ReportData data, boolean paper) {
    this.html = html;
    this.paper = paper;
    this.data = data;
    this.house = data.score().house();
    this.measures = Measures.printed(house.units());
    this.plan = data.score().cuttingPlan();
    this.sum =
        QuantityTakeoff.sum(
            data.quantities().stream().map(ReportData.SurfaceQuantities::quantities).toList(),
            plan);
  }

  /** Boards to order and what else is used, by surface. */
  void quantities() {
    if (data.quantities().isEmpty()) {
      html.leaf("p", "Quantities were not taken off for this report.");
      return;
    }
    if (plan.pieces().isEmpty()) {
      html.leaf("p", "No boards to order: they are up, and their joints stand in the scene.");
    } else {
      order();
    }
    consumables();
  }

  private void order() {
    html.leaf(
        "p",
        String.format(
            Locale.ROOT,
            "Order %,d boards for %,d pieces, of %s in all, and your own allowance for breakage. What"
                + " one board leaves serves other pieces, as the cut list says; %.0f %% of the bought"
                + " area is waste, cut-outs of windows and doors included.",
            plan.sheets().size(),
            plan.pieces().size(),
            measures.area(sum.boardArea()),
            100 * sum.waste()));
    orderTable();
  }

  private void consumables() {
    html.leaf(
        "p",
        String.format(
            Locale.ROOT,
            "Tape is the measured length of joints and inside corners: order %.0f %% more. Compound is"
                + " a rule by area, and print goes from half of it to a fifth above it: check it"
                + " against your maker's data.",
            100 * Coverage.shipped().tapeWaste()));
    String[] names = {"Surface", "Pieces", "Area", "Tape", "Compound", "Corner bead", "Fasteners"};
    table("Quantities", "", names, 1);
    double total = 0;
    for (ReportData.SurfaceQuantities q : data.quantities()) {
      Surface surface = house.surface(q.surfaceId());
      long pieces = plan.pieces().stream().filter(p -> p.surface().equals(surface)).count();
      html.open("tr", "data-room", surface.roomId());
      double area = surface.face().area();
      total += area;
      cells(surface.label(), pieces, area, q.quantities(), names);
    }
    html.open("tr", "class", "sum"); // in the body: paper repeats the foot of a table on each page
    cells("Whole house", plan.pieces().size(), total, sum, names);
    html.close().close().close();
  }

  /** A row for each width and thickness, a column for each length. */
  private void orderTable() {
    SortedMap<Double, String> lengths = new TreeMap<>();
    Map<String, Map<Double, Integer>> rows = new LinkedHashMap<>();
    sum.boards()
        .forEach(
            (kind, count) -> {
              double length = kind.size().length();
              lengths.put(length, kind.lengthName());
              rows.computeIfAbsent(kind.section(), k -> new HashMap<>()).put(length, count);
            });
    List<String> names = new ArrayList<>(lengths.values());
    names.add(0, "Boards");
    table("Boards to order", "", names.toArray(String[]::new), 1);
    rows.forEach(
        (section, row) -> {
          html.open("tr").leaf("th", section, "scope", "row");
          lengths.forEach(
              (length, name) -> {
                String count = row.containsKey(length) ? row.get(length).toString() : "\u2013";
                html.leaf("td", count, "class", "n", "data-label", name);
              });
          html.close();
        });
    html.close().close().close();
  }

  private void cells(String label, long pieces, double area, Quantities q, String[] names) {
    html.leaf("th", label, "scope", "row", "dir", "auto");
    String[] cells = {
      Long.toString(pieces),
      measures.area(area),
      measures.total(q.tape()),
      measures.volume(q.compound()),
      q.cornerBead() == 0 ? "none" : measures.total(q.cornerBead()),
      String.format(Locale.ROOT, "%,d", q.fasteners())
    };
    for (int i = 0; i < cells.length; i++) {
      html.leaf("td", cells[i], "class", "n", "data-label", names[i + 1]);
    }
    html.close();
  }

  /** Every piece in the order of hanging. */
  void cutList() {
    if (plan.pieces().isEmpty()) {
      html.leaf("p", "Nothing to cut: no boards are to be hung.");
      return;
    }
    html.leaf(
        "p",
        "In the order of hanging: ceilings before walls, on walls the top row first. Measure on site"
            + " before you cut. Lengths run from a piece's start and from its first edge: the left or"
            + " the lower ones, seen from inside the room.");
    if (!paper) {
      html.open("details").leaf("summary", plan.pieces().size() + " pieces");
    }
    String[] names = {"Order", "Surface", "Piece", "Cut from", "Cuts"};
    table("Cut list", " cuts", names, names.length);
    for (CutList.Entry e : CutList.of(plan, m -> new Length(m).format(house.units()))) {
      Surface surface = e.piece().surface();
      html.open("tr", "data-room", surface.roomId());
      html.leaf("th", Integer.toString(e.order()), "scope", "row", "class", "n");
      html.leaf("td", surface.label(), "dir", "auto", "data-label", names[1]);
      html.leaf(
          "td", Integer.toString(e.piece().board().number()), "class", "n", "data-label", names[2]);
      html.leaf("td", e.source(Stock::printedName), "data-label", names[3]);
      html.leaf("td", e.words(), "data-label", names[4]);
      html.close();
    }
    html.close().close().close();
    if (!paper) {
      html.close();
    }
    for (Drawing d : CuttingSheet.of(plan, measures, "cutting")) {
      html.figure(d);
    }
  }

  /**
   * Opens a table's body.
   *
   * @param look further classes
   * @param texts how many columns from the left hold texts, the others numbers
   */
  private void table(String label, String look, String[] names, int texts) {
    html.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", label);
    html.open("table", "class", "cards" + look).open("thead").open("tr");
    for (int i = 0; i < names.length; i++) {
      html.leaf("th", names[i], "scope", "col", "class", i < texts ? "" : "n");
    }
    html.close().close().open("tbody");
  }
}
