package slantlight.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import slantlight.decide.BudgetPlan;
import slantlight.decide.Option;
import slantlight.decide.Plan;
import slantlight.decide.PlanCheck;
import slantlight.decide.Pricing;
import slantlight.decide.Remedy;
import slantlight.decide.RemedyLine;
import slantlight.decide.RemedyStudy;
import slantlight.report.Cautions;
import slantlight.report.DecisionCsv;
import slantlight.report.DecisionJson;
import slantlight.scene.House;
import slantlight.score.HouseScore;
import slantlight.score.SurfaceScore;
import slantlight.units.Measures;

/** Remedies of every surface above its limit, the plans asked for, and the frontier. */
record RemediesAnswer(
    SceneFile file,
    HouseScore base,
    RemedyStudy study,
    BudgetPlan budget,
    Map<String, Plan> plans,
    Map<String, PlanCheck> checks,
    Pricing pricing)
    implements Answer {
  /** Remedies printed for one surface; all are in the JSON. */
  private static final int LINES = 8;

  /** Where a change is made that is of no one surface. */
  private static final String HOUSE = "house";

  /** Steps of the frontier printed; all are in the JSON. */
  private static final int STEPS = 12;

  @Override
  public void print(PrintWriter out, int width) {
    House house = base.house();
    out.println(house.name());
    if (study.before().surfaces().isEmpty()) {
      out.println("No surface shows more than its room accepts: nothing to remedy.");
      return;
    }
    int count = study.before().surfaces().size();
    Words.paragraph(
        out,
        width,
        0,
        count
            + (count == 1 ? " surface shows" : " surfaces show")
            + " more than the room accepts. Prices are "
            + (pricing.byArea()
                ? "areas of extra work in " + pricing.unit() + ", for want of rates in the scene."
                : "in " + pricing.unit() + ", by the scene's own rates."));
    plans.forEach((name, p) -> plan(out, width, name, p));
    frontier(out, width);
    for (SurfaceScore s : study.before().surfaces()) {
      remedies(out, width, s);
    }
    out.println();
    Words.paragraph(
        out,
        width,
        0,
        "Showing is a multiple of what an eye just notices unasked; \"enough\" also stands where what"
            + " is left above the limit lasts no longer than the room bears. A surface's remedies are"
            + " scored on its worst days and on days spread over the year; \"together\" is the plan"
            + " scored again as a whole.");
    Words.paragraph(out, width, 0, Cautions.FORECAST + " " + Cautions.CONTRACT);
  }

  private void plan(PrintWriter out, int width, String name, Plan plan) {
    out.println();
    out.printf(Locale.ROOT, "Plan %s: %s %s%n", name, pricing.number(plan.price()), pricing.unit());
    TextTable table =
        new TextTable(
            TextTable.wrap("where"),
            TextTable.wrap("what"),
            TextTable.right("price"),
            TextTable.right("before"),
            TextTable.right("after"),
            TextTable.left(""),
            TextTable.right("together"),
            TextTable.right("limit"));
    for (Remedy r : plan.changes()) {
      table.row(HOUSE, r.words(reader()), price(pricing.houseWide(r)), "", "", "", "", "");
    }
    for (Option o : plan.options()) {
      table.row(
          label(o.surfaceId()),
          o.asItIs() ? "as it is" : words(o.changes(), " + "),
          pricing.number(o.price()),
          Words.showing(before(o.surfaceId())),
          Words.showing(o.peak()),
          enough(o.solves()),
          Words.showing(checks.get(name).showing().get(o.surfaceId())),
          Words.showing(limit(o.surfaceId())));
    }
    table.print(out, width);
    List<Option> left = plan.unsolved();
    if (!left.isEmpty()) {
      Words.paragraph(
          out,
          width,
          0,
          "Left above the limit: "
              + left.stream()
                  .map(o -> label(o.surfaceId()) + " (" + Words.showing(o.peak()) + ")")
                  .collect(Collectors.joining(", "))
              + ".");
    }
  }

  private void frontier(PrintWriter out, int width) {
    out.println();
    out.println("What each next sum buys (the best plan for its price):");
    TextTable table =
        new TextTable(
            TextTable.right(pricing.unit()),
            TextTable.right("excess left"),
            TextTable.right("surfaces left"),
            TextTable.wrap("new in this step"));
    List<Remedy> had = List.of();
    for (Plan p : thinned(budget.frontier())) {
      table.row(
          pricing.number(p.price()),
          String.format(Locale.ROOT, "%.1f", p.excess()),
          Integer.toString(p.unsolved().size()),
          fresh(p, had));
      had = p.allChanges();
    }
    table.print(out, width);
    Words.paragraph(
        out,
        width,
        0,
        "Excess is the length of visible joint above the limit (m) times its excess over the limit,"
            + " in limits; "
            + budget.frontier().size()
            + " plans in all.");
  }

  /** What a plan does that was not done before, by surface. */
  private String fresh(Plan plan, List<Remedy> had) {
    List<String> out = new ArrayList<>();
    fresh(HOUSE, plan.changes(), had).ifPresent(out::add);
    for (Option o : plan.options()) {
      fresh(label(o.surfaceId()), o.changes(), had).ifPresent(out::add);
    }
    return out.isEmpty() ? "nothing" : String.join("; ", out);
  }

  private Optional<String> fresh(String where, List<Remedy> changes, List<Remedy> had) {
    List<Remedy> fresh = changes.stream().filter(c -> !had.contains(c)).toList();
    return fresh.isEmpty() ? Optional.empty() : Optional.of(where + ": " + words(fresh, ", "));
  }

  /** The corners of the frontier's lower convex hull: the steps with the best return. */
  static List<Plan> thinned(List<Plan> frontier) {
    List<Plan> hull = new ArrayList<>();
    for (Plan p : frontier) {
      while (hull.size() >= 2 && above(hull.get(hull.size() - 2), hull.get(hull.size() - 1), p)) {
        hull.remove(hull.size() - 1);
      }
      hull.add(p);
    }
    List<Plan> out = new ArrayList<>();
    int steps = Math.min(STEPS, hull.size());
    for (int i = 0; i < steps; i++) {
      out.add(hull.get(steps == 1 ? 0 : i * (hull.size() - 1) / (steps - 1)));
    }
    return out;
  }

  private static boolean above(Plan a, Plan b, Plan c) {
    double straight =
        a.excess() + (c.excess() - a.excess()) * (b.price() - a.price()) / (c.price() - a.price());
    return b.excess() >= straight;
  }

  private void remedies(PrintWriter out, int width, SurfaceScore score) {
    String id = score.surfaceId();
    List<RemedyLine> lines =
        study.lines(id).stream().filter(l -> l.after() < 0.95 * l.before()).toList();
    out.println();
    out.printf(
        Locale.ROOT,
        "%s: %s as it is, limit %s%n",
        label(id),
        Words.showing(before(id)),
        Words.showing(limit(id)));
    TextTable table =
        new TextTable(
            TextTable.wrap("remedy"),
            TextTable.right("after"),
            TextTable.left(""),
            TextTable.right(pricing.unit()),
            TextTable.wrap("who must agree"));
    for (RemedyLine l : chosen(lines)) {
      table.row(
          l.words(reader()),
          Words.showing(l.after()),
          enough(l.solves()),
          price(l.price()),
          l.agree().stream().map(Object::toString).collect(Collectors.joining(", ")));
    }
    if (table.isEmpty()) {
      out.println("nothing tried takes more than a twentieth off");
    } else {
      table.print(out, width);
    }
  }

  /** Every single change, then the cheapest combinations that are enough where no part is. */
  private static List<RemedyLine> chosen(List<RemedyLine> lines) {
    List<RemedyLine> out = new ArrayList<>();
    lines.stream().filter(l -> l.changes().size() == 1).forEach(out::add);
    for (RemedyLine l : lines) {
      boolean partIsEnough =
          lines.stream()
              .anyMatch(
                  o ->
                      o.solves()
                          && o.changes().size() < l.changes().size()
                          && l.changes().containsAll(o.changes()));
      if (out.size() < LINES && l.changes().size() > 1 && l.solves() && !partIsEnough) {
        out.add(l);
      }
    }
    return out;
  }

  private String words(List<Remedy> changes, String between) {
    return changes.stream().map(c -> c.words(reader())).collect(Collectors.joining(between));
  }

  private Measures reader() {
    return Measures.typed(base.house().units());
  }

  private String price(OptionalLong price) {
    return price.isPresent() ? pricing.number(price.getAsLong()) : "no rate";
  }

  private static String enough(boolean solves) {
    return solves ? "enough" : "";
  }

  private String label(String id) {
    return base.house().surface(id).label();
  }

  private double before(String id) {
    return study.lines(id).isEmpty()
        ? study.before().surface(id).atLevel(4).peakShowing()
        : study.lines(id).get(0).before();
  }

  private double limit(String id) {
    return base.house().room(base.house().surface(id).roomId()).attention().limit();
  }

  @Override
  public String json() {
    return DecisionJson.remedies(study, budget, plans, pricing, file.provenance());
  }

  @Override
  public String csv() {
    return DecisionCsv.remedies(study, pricing);
  }
}
