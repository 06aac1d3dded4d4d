package slantlight.report;

import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slantlight.decide.FinishLevel;
import slantlight.decide.RegionalScale;
import slantlight.decide.Showing;
import slantlight.decide.Verdict;
import slantlight.scene.House;
import slantlight.scene.LevelScale;
import slantlight.scene.Room;
import slantlight.scene.Surface;
import slantlight.score.Band;
import slantlight.score.Peak;
import slantlight.score.SurfaceScore;
import slantlight.sheet.FrontierSheet;
import slantlight.sheet.SunPathSheet;
import slantlight.sheet.Words;

/** The sections of the report in order; on paper the sheets come last, as an appendix. */
final class ReportBody {
  private final Html html;
  private final ReportData data;
  private final House house;
  private final boolean paper;
  private final PrintedSheets printed;
  private final Answer answer;

  ReportBody(Html html, ReportData data, boolean paper, PrintedSheets printed) {
    this.html = html;
    this.data = data;
    this.house = data.score().house();
    this.paper = paper;
    this.printed = printed;
    this.answer = new Answer(data);
  }

  void head() {
    html.leaf("p", "Joints under raking light", "class", "kind");
    html.leaf("h1", house.name(), "dir", "auto");
    html.leaf(
        "p",
        (house.note().isBlank() ? "" : house.note() + " \u00b7 ")
            + String.format(
                Locale.ROOT,
                "%.2f\u00b0 %s, %.2f\u00b0 %s",
                Math.abs(house.site().latitudeDeg()),
                house.site().latitudeDeg() < 0 ? "S" : "N",
                Math.abs(house.site().longitudeDeg()),
                house.site().longitudeDeg() < 0 ? "W" : "E")
            + " \u00b7 light of "
            + data.score().year()
            + " \u00b7 scene "
            + data.made().shortHash(),
        "class",
        "facts",
        "dir",
        "auto");
  }

  void sections() {
    answerSection();
    schedule();
    cost();
    if (!paper) {
      surfaces();
    }
    quantities();
    inspection();
    if (paper) {
      limits();
      site();
      surfaces();
    } else {
      site();
      limits();
    }
  }

  void foot() {
    html.open("footer");
    html.open("p")
        .text("Made by Slantlight " + data.made().version() + " from the scene with hash ");
    html.leaf("code", data.made().sceneHash());
    html.text(". The same scene and version give the same report.").close();
    html.close();
  }

  private void answerSection() {
    html.open("section", "id", "answer", "aria-label", "The answer");
    html.open("div", "class", "answer");
    List<String> sentences = answer.sentences();
    for (int i = 0; i < sentences.size(); i++) {
      html.leaf("p", sentences.get(i), "class", i == 0 ? "lead" : "next");
    }
    html.close();
    if (!data.pictures().isEmpty()) {
      html.open("div", "class", "pair");
      for (ReportData.Picture p : data.pictures()) {
        html.open("figure", "class", "picture");
        String src = "data:image/png;base64," + Base64.getEncoder().encodeToString(p.png());
        html.empty("img", "src", src, "alt", p.alt());
        html.leaf("figcaption", p.caption()).close();
      }
      html.close();
      html.leaf(
          "p",
          "The worst moment of the year, seen from where it shows most. The steeper pictures are not"
              + " how it looks: they tell where to look. Contrast is true at the worst place, sheen"
              + " included; elsewhere sheen is left out.",
          "class",
          "facts");
    }
    html.close();
  }

  private void schedule() {
    section("schedule", "Finish schedule");
    boolean regional = house.scale() != LevelScale.GA_214;
    html.leaf(
        "p",
        "What the taper and the painter need: the level to specify on each surface, worst surface"
            + " first. A showing of 1\u00d7 is what an eye just notices unasked.");
    html.open(
        "div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", "Schedule");
    html.open("table", "class", "cards");
    html.open("thead").open("tr");
    html.leaf("th", "Surface", "scope", "col");
    html.leaf("th", "Level", "scope", "col", "class", "level");
    if (regional) {
      html.leaf("th", RegionalScale.title(house.scale()), "scope", "col");
    }
    html.leaf("th", "Shows at level 4", "scope", "col");
    html.leaf("th", "As specified", "scope", "col");
    html.leaf("th", "Paint", "scope", "col");
    html.leaf("th", "Worst moment", "scope", "col");
    html.leaf("th", "Reason", "scope", "col");
    html.close().close().open("tbody");
    for (SurfaceScore s : answer.worstFirst()) {
      scheduleRow(s, regional);
    }
    html.close().close().close();
    html.leaf("h4", "What the levels ask of the finisher");
    html.open("dl");
    data.verdicts().stream()
        .map(Verdict::level)
        .distinct()
        .sorted()
        .forEach(
            level -> {
              html.leaf("dt", "Level " + level);
              html.leaf("dd", FinishLevel.of(level).work() + ".");
            });
    html.close().close();
  }

  private void scheduleRow(SurfaceScore s, boolean regional) {
    Surface surface = house.surface(s.surfaceId());
    Optional<Verdict> v = data.verdict(s.surfaceId());
    html.open("tr", "data-room", surface.roomId());
    html.open("th", "scope", "row", "dir", "auto");
    html.leaf("a", surface.label(), "href", "#" + anchor(s)).close();
    html.leaf(
        "td", v.map(x -> "" + x.level()).orElse("-"), "class", "level", "data-label", "Level");
    if (regional) {
      String name = v.map(x -> RegionalScale.name(house.scale(), x.level())).orElse("-");
      html.leaf("td", name, "data-label", RegionalScale.title(house.scale()));
    }
    html.open("td", "data-label", "Shows at level 4");
    chip(Showing.at(s, 4));
    html.close();
    html.open("td", "data-label", "As specified");
    if (v.isPresent() && v.get().level() >= 3) {
      chip(Showing.at(s, v.get().level()));
    } else {
      html.text("not smooth by intent");
    }
    html.close();
    html.leaf(
        "td",
        Words.word(surface.paint().sheen())
            + String.format(Locale.ROOT, ", LRV %.0f", 100 * surface.paint().lrv()),
        "data-label",
        "Paint");
    html.leaf("td", Showing.worst(s).map(Words::when).orElse("-"), "data-label", "Worst moment");
    html.leaf("td", v.map(Verdict::reason).orElse(""), "class", "reason", "data-label", "Reason");
    html.close();
  }

  private void chip(double showing) {
    Band band = Band.of(showing);
    html.leaf(
        "span", Words.times(showing) + " " + Words.word(band), "class", "chip " + Words.word(band));
  }

  private void cost() {
    section("cost", "What money buys");
    if (data.money().isEmpty() || data.money().get().frontier().isEmpty()) {
      html.leaf(
          "p",
          "Remedies were not weighed for this report. Let it weigh them, with your own rates in the"
              + " scene, to see what each further sum of money removes.");
      html.close();
      return;
    }
    ReportData.Money money = data.money().get();
    html.open("div", "class", "keep");
    html.leaf(
        "p",
        "Each point is the plan that leaves least showing for its price; no other plan is both"
            + " cheaper and better. Prices are your own rates or, where the scene has none, the area"
            + " of extra work.");
    html.figure(FrontierSheet.of(money.frontier(), money.unit(), "frontier"));
    html.close();
    if (!money.proposal().isEmpty()) {
      html.leaf(
          "h4",
          "Proposed plan"
              + money.proposed().map(s -> ", " + Answer.price(money, s.price())).orElse(""));
      list(money.proposal());
    }
    List<FrontierSheet.Step> shown = money.telling(paper ? 4 : 40);
    html.open("details");
    html.leaf(
        "summary",
        shown.size() == money.frontier().size()
            ? "All plans of the chart"
            : shown.size() + " of the " + money.frontier().size() + " plans of the chart");
    html.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", "Plans");
    html.open("table").open("thead").open("tr");
    html.leaf("th", "Price, " + money.unit(), "class", "n", "scope", "col");
    html.leaf("th", "Showing left", "class", "n", "scope", "col");
    html.leaf("th", "What is done", "scope", "col").close().close().open("tbody");
    for (FrontierSheet.Step step : shown) {
      html.open("tr").leaf("td", String.format(Locale.ROOT, "%,.0f", step.price()), "class", "n");
      html.leaf("td", String.format(Locale.ROOT, "%.1f", step.excess()), "class", "n");
      html.leaf("td", step.words()).close();
    }
    html.close().close().close().close().close();
  }

  private void surfaces() {
    section("surfaces", "Surface by surface");
    html.leaf(
        "p",
        "Drawings are to the stated scale when printed at full size. Lines are joints: thin dots"
            + " quiet, dashes a trace, a full line plain, a heavy line loud.");
    List<SurfaceScore> all = answer.worstFirst();
    List<SurfaceScore> brief = all.stream().filter(s -> !printed.has(data, s)).toList();
    html.open("p", "class", "onpaper").text(printed.rule);
    if (!brief.isEmpty()) {
      html.text(" " + brief.size() + " of " + all.size());
      html.text(" sheets are left out; their surfaces have a line each at the end. On the screen,");
      html.text(" report.html has all sheets; this prints them: ");
      html.leaf("code", "slantlight report SCENE --out FOLDER --all-sheets");
    }
    html.close();
    for (SurfaceScore s : all) {
      boolean full = !brief.contains(s);
      if (full || !paper) {
        new SurfaceArticle(html, data, s, anchor(s), paper).write(full);
      }
    }
    if (!brief.isEmpty()) {
      html.open("div", "class", "onpaper");
      new LeftOutSheets(html, house).write(brief, s -> paper ? anchor(s) : "");
      html.close();
    }
    html.close();
  }

  private void quantities() {
    MaterialSections material = new MaterialSections(html, data, paper);
    section("quantities", "What to order");
    material.quantities();
    html.close();
    section("cuts", "Cut list");
    material.cutList();
    html.close();
  }

  private void inspection() {
    section("inspection", "Inspection before primer and paint");
    html.leaf(
        "p",
        "Look at each risky surface when the sun itself shows it, or with a lamp held so that it"
            + " rakes at least as hard in the same direction. Mark, fill and sand, then look again."
            + " Agree lamp, angle and distance beforehand: a stronger light than the room will ever"
            + " have is no fair judge.");
    if (data.inspection().isEmpty()) {
      html.leaf("p", "No surface of this report asks for a special look.");
    } else {
      html.open(
          "div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", "Inspection");
      html.open("table", "class", "cards").open("thead").open("tr");
      for (String name : List.of("Surface", "When the light shows it", "Stand", "Or with a lamp")) {
        html.leaf("th", name, "scope", "col");
      }
      html.close().close().open("tbody");
      for (ReportData.InspectionStep step : data.inspection()) {
        Surface surface = house.surface(step.surfaceId());
        html.open("tr", "data-room", surface.roomId());
        html.leaf("th", surface.label(), "scope", "row", "dir", "auto");
        html.leaf("td", step.when(), "data-label", "When the light shows it");
        html.leaf("td", step.stand(), "data-label", "Stand");
        html.leaf("td", step.lamp(), "data-label", "Or with a lamp");
        html.close();
      }
      html.close().close().close();
    }
    html.open("div", "class", "caution");
    html.leaf("p", Cautions.INSPECTION);
    html.leaf("p", Cautions.SANDING);
    html.close().close();
  }

  private void site() {
    section("site", "Sun and site");
    html.figure(SunPathSheet.of(house, data.score().year(), "sunpath"));
    html.close();
  }

  private void limits() {
    section("limits", "Assumptions, limits and cautions");
    html.open("dl");
    for (String[] line : Assumptions.of(data.score())) {
      html.leaf("dt", line[0]);
      html.leaf("dd", line[1]);
    }
    html.close();
    html.leaf("h4", "Cautions");
    html.open("div", "class", "caution");
    for (String caution : Cautions.ALL) {
      html.leaf("p", caution);
    }
    html.close().close();
  }

  private void section(String id, String heading) {
    html.open("section", "id", id, "aria-labelledby", id + "-h", "class", "part");
    html.leaf("h2", heading, "id", id + "-h");
  }

  private void list(List<String> lines) {
    html.open("ul", "class", "plainlist");
    lines.forEach(l -> html.leaf("li", l));
    html.close();
  }

  /** The id of a surface's article, made of its place in the score so that it is always safe. */
  private String anchor(SurfaceScore s) {
    return "surface-" + (data.score().surfaces().indexOf(s) + 1);
  }

  /** A room's name before the surface's, unless the surface's has it already. */
  static String fullName(Room room, Surface surface) {
    return surface.label().startsWith(room.label())
        ? surface.label()
        : room.label() + ": " + surface.label();
  }

  static String worstText(Optional<Peak> peak) {
    return peak.map(Words::when).orElse("never");
  }
}
