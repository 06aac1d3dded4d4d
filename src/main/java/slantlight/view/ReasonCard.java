package slantlight.view;

import java.util.List;
import java.util.Optional;
import slantlight.decide.Verdict;
import slantlight.scene.Surface;
import slantlight.score.Band;
import slantlight.score.JointScore;
import slantlight.score.Peak;
import slantlight.score.SurfaceScore;
import slantlight.view.draw.Box;
import slantlight.view.draw.Canvas;
import slantlight.view.draw.Palette;
import slantlight.view.draw.Type;

/** Says why: for the joint chosen, the surface chosen, or the house. */
final class ReasonCard {
  private static final double LABEL = 74;
  private final Canvas canvas;
  private final Hits hits;

  ReasonCard(Canvas canvas, Hits hits) {
    this.canvas = canvas;
    this.hits = hits;
  }

  void draw(Box pane, ViewModel model, Stage stage, Almanac house) {
    hits.add(pane, (x, y) -> {});
    canvas.panel(pane, Palette.SHEET, 1, 0);
    canvas.fill(stage.panes == Stage.Panes.SHEET ? pane.left(1) : pane.top(1), Palette.RULE);
    Box box = pane.inset(16, 10);
    Optional<JointScore> joint = stage.joint.flatMap(model::joint);
    if (joint.isPresent()) {
      joint(box, model, joint.get());
    } else if (stage.surface.isPresent()) {
      surface(box, model, model.house().surface(stage.surface.get()));
    } else {
      house(box, model, stage, house);
    }
  }

  private void joint(Box box, ViewModel model, JointScore j) {
    Surface s = model.house().surface(ViewModel.surfaceOf(j.joint().id()));
    Box rest = head(box, Wordings.joint(j), s.label(), j.peak().map(Peak::showing));
    for (Wordings.Fact f : Wordings.reasons(model.house(), j)) {
      rest = fact(rest, f);
    }
  }

  private void surface(Box box, ViewModel model, Surface s) {
    Optional<SurfaceScore> score = model.score(s.id());
    Optional<Double> worst = score.flatMap(SurfaceScore::worst).map(Peak::showing);
    Box rest = head(box, s.label(), model.house().room(s.roomId()).label(), worst);
    Optional<Verdict> verdict = model.verdict(s.id());
    if (verdict.isEmpty()) {
      canvas.paragraph(
          rest,
          Type.plain(13.5),
          s.boarded()
              ? "Still being scored."
              : "Not drywall, so it has no joints; it gives light back to the others.");
      return;
    }
    Verdict v = verdict.get();
    canvas.text(
        rest.top(24),
        Type.strong(16).in(Palette.ACCENT),
        Canvas.Align.LEFT,
        "Specify level " + v.level());
    rest = rest.underTop(26);
    for (String text : paragraphs(v)) {
      rest = fit(rest, text);
    }
  }

  private static List<String> paragraphs(Verdict v) {
    List<String> out = new java.util.ArrayList<>();
    out.add(v.reason());
    out.add(v.standardReason() + ".");
    out.addAll(v.notes());
    return out;
  }

  /** Writes a paragraph when all of it fits; leaves it out rather than cut it. */
  private Box fit(Box rest, String text) {
    Type type = Type.plain(13);
    String clean = text.replace("..", ".");
    if (canvas.lines(type, clean, rest.w()).size() * type.line() > rest.h()) {
      return rest.bottom(0);
    }
    return canvas.paragraph(rest, type, clean).underTop(4);
  }

  private void house(Box box, ViewModel model, Stage stage, Almanac house) {
    canvas.text(box.top(22), Type.strong(16), Canvas.Align.LEFT, "Shows most");
    Box rest = box.underTop(28);
    if (model.score().isEmpty()) {
      canvas.paragraph(
          rest, Type.plain(13.5), "Scoring. Joints are painted when the year is known.");
      return;
    }
    for (SurfaceScore s : house.ranked()) {
      if (rest.h() < 26) {
        break;
      }
      Box row = rest.top(26);
      double showing = s.worst().orElseThrow().showing();
      chip(row.left(60).centred(60, 19), showing);
      canvas.textThatFits(
          row.rightOf(70).leftOf(64),
          Type.plain(14),
          Canvas.Align.LEFT,
          List.of(
              model.house().surface(s.surfaceId()).label(),
              s.surfaceId().substring(s.surfaceId().indexOf('/') + 1)));
      canvas.text(
          row.right(60),
          Type.soft(13),
          Canvas.Align.RIGHT,
          model.verdict(s.surfaceId()).map(v -> "level " + v.level()).orElse(""));
      hits.add(row, (x, y) -> stage.surface = Optional.of(s.surfaceId()));
      rest = rest.underTop(26);
    }
  }

  private Box head(Box box, String title, String under, Optional<Double> showing) {
    double right = showing.isPresent() ? 96 : 0;
    canvas.textThatFits(
        box.top(22).leftOf(right + 8), Type.strong(16), Canvas.Align.LEFT, List.of(title));
    canvas.text(box.underTop(22).top(18), Type.soft(13), Canvas.Align.LEFT, under);
    showing.ifPresent(
        s -> {
          Box r = box.right(96);
          chip(r.top(22).right(60).centred(60, 20), s);
          canvas.text(
              r.underTop(22).top(18),
              Type.soft(13),
              Canvas.Align.RIGHT,
              Wordings.times(s) + " seen");
        });
    return box.underTop(46);
  }

  /** The band's word on its colour. */
  private void chip(Box b, double showing) {
    Band band = Band.of(showing);
    canvas.fill(b, Palette.of(band), 1, 4);
    canvas.text(b, new Type(true, 13, Palette.on(band)), Canvas.Align.CENTRE, Wordings.band(band));
  }

  private Box fact(Box rest, Wordings.Fact f) {
    Type type = Type.plain(13);
    List<String> lines = canvas.lines(type, f.value(), rest.w() - LABEL);
    double h = lines.size() * type.line();
    if (h > rest.h()) {
      return rest.bottom(0);
    }
    canvas.text(rest.top(type.line()).left(LABEL), Type.soft(13), Canvas.Align.LEFT, f.label());
    canvas.paragraph(rest.rightOf(LABEL), type, f.value());
    return rest.underTop(h + 2);
  }
}
