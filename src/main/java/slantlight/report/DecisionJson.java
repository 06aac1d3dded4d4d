package slantlight.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.SortedMap;
import slantlight.board.CuttingPlan;
import slantlight.board.Stock;
import slantlight.decide.BudgetPlan;
import slantlight.decide.Comparison;
import slantlight.decide.Facing;
import slantlight.decide.Inspection;
import slantlight.decide.LampPlace;
import slantlight.decide.Option;
import slantlight.decide.Plan;
import slantlight.decide.Pricing;
import slantlight.decide.Remedy;
import slantlight.decide.RemedyLine;
import slantlight.decide.RemedyStudy;
import slantlight.decide.ScheduleRow;
import slantlight.decide.Verdict;
import slantlight.geom.Vec3;
import slantlight.score.Peak;
import slantlight.units.Measures;

/**
 * What {@code weigh} and {@code inspect} found, as JSON. Lengths are metres, angles degrees; prices
 * are numbers in the named unit; a number that does not exist is null.
 */
public final class DecisionJson {
  private static final int FORMAT_VERSION = 1;
  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private final ObjectNode root = MAPPER.createObjectNode();

  private DecisionJson(String format, Provenance made) {
    root.put("format", "slantlight-" + format);
    root.put("formatVersion", FORMAT_VERSION);
    root.put("version", made.version());
    root.put("sceneHash", made.sceneHash());
  }

  /**
   * Remedies, plans and the frontier.
   *
   * @param plans named plans, such as the one within the budget
   */
  public static String remedies(
      RemedyStudy study,
      BudgetPlan budget,
      Map<String, Plan> plans,
      Pricing pricing,
      Provenance made) {
    DecisionJson out = new DecisionJson("remedies", made);
    out.root.put("priceUnit", pricing.unit());
    ArrayNode lines = out.root.putArray("remedies");
    for (RemedyLine l : study.lines()) {
      ObjectNode n = lines.addObject();
      n.put("surface", l.surfaceId());
      n.put("what", l.words());
      n.put("level", l.level());
      number(n, "showingBefore", l.before());
      number(n, "showingAfter", l.after());
      number(n, "limit", l.limit());
      n.put("solves", l.solves());
      price(n, pricing, l.price());
      ArrayNode agree = n.putArray("agree");
      l.agree().forEach(a -> agree.add(a.toString()));
    }
    ObjectNode named = out.root.putObject("plans");
    plans.forEach((name, p) -> plan(named.putObject(name), p, pricing));
    ArrayNode frontier = out.root.putArray("frontier");
    budget.frontier().forEach(p -> plan(frontier.addObject(), p, pricing));
    return out.text();
  }

  /** Two scores compared. */
  public static String comparison(Comparison comparison, Provenance made) {
    DecisionJson out = new DecisionJson("comparison", made);
    ArrayNode surfaces = out.root.putArray("surfaces");
    for (Comparison.SurfaceChange s : comparison.surfaces()) {
      ObjectNode n = surfaces.addObject();
      n.put("id", s.surfaceId());
      n.put("label", s.label());
      level(n, "levelBefore", s.before());
      level(n, "levelAfter", s.after());
      number(n, "showingBefore", s.showingBefore());
      number(n, "showingAfter", s.showingAfter());
      ArrayNode joints = n.putArray("joints");
      for (Comparison.JointChange j : s.joints()) {
        ObjectNode joint = joints.addObject();
        joint.put("id", j.jointId());
        number(joint, "showingBefore", j.before());
        number(joint, "showingAfter", j.after());
      }
    }
    return out.text();
  }

  /** A sweep of facings. */
  public static String facings(List<Facing> sweep, Provenance made) {
    DecisionJson out = new DecisionJson("facings", made);
    number(out.root, "kindestDeg", Facing.kindest(sweep).turnDeg());
    ArrayNode turns = out.root.putArray("turns");
    for (Facing f : sweep) {
      ObjectNode n = turns.addObject();
      number(n, "turnDeg", f.turnDeg());
      number(n, "excess", f.excess());
      n.put("surfacesAboveLimit", f.above());
      number(n, "worstShowing", f.worst());
      n.put("worstSurface", f.worstSurfaceId());
    }
    return out.text();
  }

  /**
   * The schedule for the trades.
   *
   * @param plan of the boards for all rows together
   */
  public static String schedule(List<ScheduleRow> rows, CuttingPlan plan, Provenance made) {
    DecisionJson out = new DecisionJson("schedule", made);
    boards(out.root.putArray("boards"), plan.order());
    ArrayNode surfaces = out.root.putArray("surfaces");
    for (ScheduleRow r : rows) {
      ObjectNode n = surfaces.addObject();
      n.put("id", r.surfaceId());
      n.put("label", r.label());
      n.put("room", r.room());
      n.put("level", r.level());
      n.put("work", r.work());
      n.put("regional", r.regional());
      number(n, "area", r.area());
      number(n, "tapered", r.tapered());
      number(n, "butt", r.butt());
      n.put("run", r.run().name().toLowerCase(Locale.ROOT));
      boards(n.putArray("boards"), r.boards());
      ArrayNode notes = n.putArray("notes");
      r.notes().forEach(notes::add);
    }
    return out.text();
  }

  private static void boards(ArrayNode out, SortedMap<Stock, Integer> boards) {
    boards.forEach(
        (kind, count) -> {
          ObjectNode board = out.addObject();
          number(board, "width", kind.size().width());
          number(board, "length", kind.size().length());
          number(board, "thickness", kind.thickness());
          board.put("count", count);
        });
  }

  /** Inspections of surfaces. */
  public static String inspections(List<Inspection> inspections, Provenance made) {
    DecisionJson out = new DecisionJson("inspection", made);
    ArrayNode surfaces = out.root.putArray("surfaces");
    for (Inspection i : inspections) {
      ObjectNode n = surfaces.addObject();
      n.put("id", i.surfaceId());
      n.put("label", i.label());
      ArrayNode windows = n.putArray("windows");
      for (Inspection.Window w : i.windows()) {
        ObjectNode window = windows.addObject();
        window.put("day", w.day().toString());
        window.put("from", w.from().toString());
        window.put("to", w.to().toString());
        number(window, "showing", w.showing());
      }
      best(n, i.best());
      lamp(n, i.lamp());
      ArrayNode items = n.putArray("checkList");
      for (Inspection.Item item : i.items()) {
        ObjectNode line = items.addObject();
        line.put("joint", item.jointId());
        line.put("where", item.where().words(Measures.METRIC));
        number(line, "showing", item.showing());
      }
    }
    return out.text();
  }

  private static void best(ObjectNode n, Optional<Peak> best) {
    if (best.isEmpty()) {
      n.putNull("best");
      return;
    }
    ObjectNode b = n.putObject("best");
    b.put("at", best.get().at().toOffsetDateTime().toString());
    b.put("eye", best.get().eyeId());
    b.put("source", best.get().source().label());
    number(b, "showing", best.get().showing());
    number(b, "grazingDeg", Math.toDegrees(best.get().grazing()));
  }

  private static void lamp(ObjectNode n, Optional<LampPlace> lamp) {
    if (lamp.isEmpty()) {
      n.putNull("lamp");
      return;
    }
    LampPlace l = lamp.get();
    ObjectNode b = n.putObject("lamp");
    b.put("joint", l.jointId());
    point(b, "position", l.position());
    point(b, "target", l.target());
    number(b, "across", l.across());
    number(b, "height", l.height());
    number(b, "grazingDeg", Math.toDegrees(l.grazing()));
    number(b, "slant", l.slant());
    number(b, "worstSlant", l.worstSlant());
    b.put("reachable", l.reachable());
  }

  private static void point(ObjectNode n, String name, Vec3 p) {
    ArrayNode xyz = n.putArray(name);
    xyz.add(Figures.six(p.x())).add(Figures.six(p.y())).add(Figures.six(p.z()));
  }

  private static void plan(ObjectNode n, Plan plan, Pricing pricing) {
    price(n, pricing, OptionalLong.of(plan.price()));
    number(n, "excess", plan.excess());
    ArrayNode changes = n.putArray("changes");
    for (Remedy r : plan.allChanges()) {
      ObjectNode change = changes.addObject();
      change.put("subject", r.subject());
      change.put("what", r.words());
    }
    ArrayNode unsolved = n.putArray("unsolved");
    for (Option o : plan.unsolved()) {
      ObjectNode left = unsolved.addObject();
      left.put("surface", o.surfaceId());
      number(left, "showing", o.peak());
    }
  }

  private static void level(ObjectNode n, String name, Optional<Verdict> verdict) {
    if (verdict.isPresent()) {
      n.put(name, verdict.get().level());
    } else {
      n.putNull(name);
    }
  }

  private static void price(ObjectNode n, Pricing pricing, OptionalLong price) {
    if (price.isPresent()) {
      n.put("price", new BigDecimal(pricing.number(price.getAsLong())));
    } else {
      n.putNull("price");
    }
  }

  private static void number(ObjectNode n, String name, double value) {
    n.put(name, Figures.six(value));
  }

  private static void number(ObjectNode n, String name, OptionalDouble value) {
    n.put(name, value.isPresent() ? Figures.six(value.getAsDouble()) : null);
  }

  private String text() {
    ArrayNode cautions = root.putArray("cautions");
    Cautions.ALL.forEach(cautions::add);
    try {
      return MAPPER.writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain values does not fail to be written", e);
    }
  }
}
