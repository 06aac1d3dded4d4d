package slantlight.report;

import java.util.Locale;
import java.util.Map;
import slantlight.board.Coverage;
import slantlight.board.CutList;
import slantlight.board.CuttingPlan;
import slantlight.board.Quantities;
import slantlight.board.QuantityTakeoff;
import slantlight.board.Stock;
import slantlight.scene.House;
import slantlight.scene.Surface;
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
    order();
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
    for (ReportData.SurfaceQuantities q : data.quantities()) {
      Surface surface = house.surface(q.surfaceId());
      long pieces = plan.pieces().stream().filter(p -> p.surface().equals(surface)).count();
      html.open("tr", "data-room", surface.roomId());
      cells(surface.label(), pieces, q.quantities(), names);
    }
    html.close().open("tfoot").open("tr");
    cells("Whole house", plan.pieces().size(), sum, names);
    html.close().close().close();
  }

  private void order() {
    String[] names = {"Board", "Number"};
    table("Boards to order", " narrow", names, 1);
    for (Map.Entry<Stock, Integer> kind : sum.boards().entrySet()) {
      html.open("tr").leaf("th", name(kind.getKey()), "scope", "row");
      html.leaf("td", kind.getValue().toString(), "class", "n", "data-label", names[1]);
      html.close();
    }
    html.close().close().close();
  }

  private void cells(String label, long pieces, Quantities q, String[] names) {
    html.leaf("th", label, "scope", "row", "dir", "auto");
    String[] cells = {
      Long.toString(pieces),
      measures.area(q.netArea()),
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
    html.leaf(
        "p",
        "In the order of hanging: ceilings before walls, on walls the top row first. Measure on site"
            + " before you cut. Lengths run from a piece's start and from its first edge: its left and"
            + " its lower one, seen from inside the room.");
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
      html.leaf(
          "td", e.opensBoard() ? name(e.from()) : "rest of " + e.first(), "data-label", names[3]);
      html.leaf("td", String.join("; ", e.allCuts()), "data-label", names[4]);
      html.close();
    }
    html.close().close().close();
    if (!paper) {
      html.close();
    }
  }

  private static String name(Stock stock) {
    return stock.name().replace(" x ", " \u00d7 ");
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
