package slantlight.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import slantlight.board.Joint;
import slantlight.decide.Inspection;
import slantlight.decide.LampPlace;
import slantlight.report.Cautions;
import slantlight.report.DecisionCsv;
import slantlight.report.DecisionJson;
import slantlight.scene.Eye;
import slantlight.scene.House;
import slantlight.score.Peak;
import slantlight.units.Measures;

/** Inspection hours, lamp places and a list to check off. */
record InspectionAnswer(
    SceneFile file, LocalDate first, LocalDate last, List<Inspection> inspections)
    implements Answer {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
  private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  /** Stretches printed for one surface; all are in the JSON. */
  private static final int WINDOWS = 5;

  @Override
  public void print(PrintWriter out, int width) {
    Measures reader = Measures.typed(file.house().units());
    out.println(file.house().name() + ": inspection from " + first + " to " + last);
    if (inspections.isEmpty()) {
      out.println("No joint at level 4 can be noticed at any time of the year.");
    }
    for (Inspection i : inspections) {
      out.println();
      out.println(i.label());
      daylight(out, width, i);
      i.lamp().ifPresent(l -> lamp(out, width, i, l));
      for (Inspection.Item item : i.items()) {
        Words.paragraph(
            out,
            width,
            2,
            "[ ] found  [ ] touched up   "
                + item.name()
                + ", "
                + item.where().words(reader)
                + ", showing "
                + Words.showing(item.showing()));
      }
    }
    out.println();
    Words.paragraph(
        out,
        width,
        0,
        "Inspect before primer and again after it; a lamp shows more than any room light will, so"
            + " agree the lamp, its place and its distance in the contract. In daylight times the"
            + " sky is clear. Bright reflections dazzle: look along the surface, not into the"
            + " light.");
    Cautions.ALL.forEach(c -> Words.paragraph(out, width, 0, c));
  }

  private void daylight(PrintWriter out, int width, Inspection i) {
    if (i.windows().isEmpty() || i.best().isEmpty()) {
      Words.paragraph(out, width, 2, "Daylight does not show it in this period: use the lamp.");
      return;
    }
    Peak best = i.best().get();
    Words.paragraph(
        out,
        width,
        2,
        "Best by daylight: "
            + DAY.format(best.at())
            + " at "
            + HOUR.format(best.at())
            + ", seen from "
            + eye(best.eyeId())
            + ", by "
            + best.source().label()
            + ", showing "
            + Words.showing(best.showing())
            + ".");
    StringBuilder hours = new StringBuilder("Also good: ");
    int n = 0;
    for (Inspection.Window w : i.windows()) {
      if (n == WINDOWS) {
        break;
      }
      hours.append(n++ == 0 ? "" : "; ").append(DAY.format(w.day())).append(' ');
      hours.append(HOUR.format(w.from())).append(" to ").append(HOUR.format(w.to()));
      hours.append(" (").append(Words.showing(w.showing())).append(')');
    }
    Words.paragraph(out, width, 2, hours.append('.').toString());
  }

  private void lamp(PrintWriter out, int width, Inspection i, LampPlace l) {
    House house = file.house();
    double floor = house.room(house.surface(i.surfaceId()).roomId()).floor();
    String joint = Joint.name(l.jointId());
    Words.paragraph(
        out,
        width,
        2,
        String.format(
            Locale.ROOT,
            "Lamp for %s: %s %s the joint, %s off the surface, %s above the floor, aimed flat across"
                + " the joint: grazing %.0f degrees, slant %.1f where the worst moment has %.1f. Darken the room until the lamp"
                + " gives four times the light the room does.%s",
            joint,
            Words.length(l.across()),
            l.side(house.surface(i.surfaceId())),
            Words.length(l.height()),
            Words.length(l.position().z() - floor),
            Math.toDegrees(l.grazing()),
            l.slant(),
            l.worstSlant(),
            l.reachable() ? "" : " The surface ends before that place: come as near as you can."));
  }

  private String eye(String id) {
    return file.house().eyes().stream()
        .filter(e -> e.id().equals(id))
        .map(Eye::label)
        .findFirst()
        .orElse(id);
  }

  @Override
  public String json() {
    return DecisionJson.inspections(inspections, file.provenance());
  }

  @Override
  public String csv() {
    return DecisionCsv.checkList(inspections);
  }
}
