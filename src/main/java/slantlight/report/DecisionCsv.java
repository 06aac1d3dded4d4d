package slantlight.report;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import slantlight.decide.BudgetPlan;
import slantlight.decide.Comparison;
import slantlight.decide.Facing;
import slantlight.decide.Inspection;
import slantlight.decide.Plan;
import slantlight.decide.Pricing;
import slantlight.decide.Remedy;
import slantlight.decide.RemedyLine;
import slantlight.decide.RemedyStudy;
import slantlight.decide.ScheduleRow;
import slantlight.units.Measures;

/** What {@code weigh} and {@code inspect} found, as CSV; lengths in metres. */
public final class DecisionCsv {
  private DecisionCsv() {}

  /** A line for each remedy and combination. */
  public static String remedies(RemedyStudy study, Pricing pricing) {
    Csv csv =
        new Csv(
            "surface",
            "what",
            "level",
            "showing_before",
            "showing_after",
            "limit",
            "price",
            "price_unit",
            "agree");
    for (RemedyLine l : study.lines()) {
      csv.text(l.surfaceId()).text(l.words()).number(l.level());
      csv.number(l.before()).number(l.after()).number(l.limit());
      if (l.price().isPresent()) {
        csv.number(Double.parseDouble(pricing.number(l.price().getAsLong())));
      } else {
        csv.empty();
      }
      csv.text(pricing.unit());
      csv.text(l.agree().stream().map(Object::toString).collect(Collectors.joining(" "))).end();
    }
    return csv.toString();
  }

  /** A line for each plan of the frontier. */
  public static String frontier(BudgetPlan budget, Pricing pricing) {
    Csv csv = new Csv("price", "price_unit", "excess", "unsolved", "changes");
    for (Plan p : budget.frontier()) {
      csv.number(Double.parseDouble(pricing.number(p.price()))).text(pricing.unit());
      csv.number(p.excess()).number(p.unsolved().size());
      csv.text(
              p.allChanges().stream()
                  .map((Remedy r) -> r.subject() + ": " + r.words())
                  .collect(Collectors.joining("; ")))
          .end();
    }
    return csv.toString();
  }

  /** A line for each joint of both scores; a line without a joint for the surface itself. */
  public static String comparison(Comparison comparison) {
    Csv csv = new Csv("surface", "joint", "showing_before", "showing_after");
    for (Comparison.SurfaceChange s : comparison.surfaces()) {
      csv.text(s.surfaceId()).empty();
      number(csv, s.showingBefore());
      number(csv, s.showingAfter());
      csv.end();
      for (Comparison.JointChange j : s.joints()) {
        csv.text(s.surfaceId()).text(j.jointId());
        number(csv, j.before());
        number(csv, j.after());
        csv.end();
      }
    }
    return csv.toString();
  }

  /** A line for each turn of the house. */
  public static String facings(List<Facing> sweep) {
    Csv csv =
        new Csv("turn_deg", "excess", "surfaces_above_limit", "worst_showing", "worst_surface");
    for (Facing f : sweep) {
      csv.number(f.turnDeg()).number(f.excess()).number(f.above()).number(f.worst());
      csv.text(f.worstSurfaceId()).end();
    }
    return csv.toString();
  }

  /** A line for each surface. */
  public static String schedule(List<ScheduleRow> rows) {
    Csv csv =
        new Csv(
            "surface",
            "label",
            "room",
            "level",
            "regional",
            "work",
            "area_m2",
            "tapered_m",
            "butt_m",
            "run",
            "boards",
            "notes");
    for (ScheduleRow r : rows) {
      csv.text(r.surfaceId()).text(r.label()).text(r.room()).number(r.level());
      csv.text(r.regional()).text(r.work()).number(r.area()).number(r.tapered()).number(r.butt());
      csv.text(r.run().name().toLowerCase(Locale.ROOT));
      csv.number(r.boards().values().stream().mapToInt(Integer::intValue).sum());
      csv.text(String.join("; ", r.notes())).end();
    }
    return csv.toString();
  }

  /** A line for each joint to be checked. */
  public static String checkList(List<Inspection> inspections) {
    Csv csv = new Csv("surface", "joint", "where", "showing", "checked", "touched_up");
    for (Inspection i : inspections) {
      for (Inspection.Item item : i.items()) {
        csv.text(i.surfaceId()).text(item.jointId());
        csv.text(item.where().words(Measures.METRIC)).number(item.showing());
        csv.empty().empty().end();
      }
    }
    return csv.toString();
  }

  private static void number(Csv csv, OptionalDouble value) {
    csv.number(value.orElse(Double.NaN));
  }
}
