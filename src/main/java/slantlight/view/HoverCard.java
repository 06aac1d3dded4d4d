package slantlight.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slantlight.decide.Verdict;
import slantlight.geom.Vec2;
import slantlight.scene.Surface;
import slantlight.score.Band;
import slantlight.score.JointScore;
import slantlight.score.Peak;
import slantlight.score.SurfaceScore;
import slantlight.view.draw.Box;
import slantlight.view.draw.Canvas;
import slantlight.view.draw.Palette;
import slantlight.view.draw.Type;

/** The short reasons beside the pointer; a click puts the long ones on the card. */
final class HoverCard {
  private static final double WIDTH = 286;
  private static final double LABEL = 68;
  private static final double MARGIN = 12;
  private static final double HEAD = 24;
  private static final double AWAY = 18;
  private static final Type VALUE = Type.plain(13);
  private final Canvas canvas;

  HoverCard(Canvas canvas) {
    this.canvas = canvas;
  }

  /** What the card says. */
  private record Words(String title, Optional<Double> showing, List<Wordings.Fact> facts) {}

  void draw(ViewModel model, JointColours colours, Stage stage, Hover hover) {
    Words words =
        hover
            .jointId()
            .flatMap(model::joint)
            .map(j -> joint(model, colours, stage, j, hover))
            .orElseGet(() -> surface(model, model.house().surface(hover.surfaceId())));
    double inner = WIDTH - 2 * MARGIN;
    double high = HEAD + 2 * MARGIN;
    for (Wordings.Fact f : words.facts()) {
      high += canvas.lines(VALUE, f.value(), inner - LABEL).size() * VALUE.line() + 2;
    }
    Box card = place(canvas.whole().inset(8), hover, high);
    canvas.panel(card, Palette.SHEET, 1, 6);
    canvas.frame(card, Palette.SOFT_INK, 1, 6);
    Box rest = card.inset(MARGIN);
    double chip = words.showing().isPresent() ? 64 : 0;
    canvas.textThatFits(
        rest.top(HEAD - 4).leftOf(chip),
        Type.strong(15),
        Canvas.Align.LEFT,
        List.of(words.title(), hover.surfaceId()));
    words.showing().ifPresent(s -> chip(card.inset(MARGIN).top(HEAD - 5).right(58), s));
    rest = rest.underTop(HEAD);
    for (Wordings.Fact f : words.facts()) {
      canvas.text(rest.top(VALUE.line()).left(LABEL), Type.soft(13), Canvas.Align.LEFT, f.label());
      rest = canvas.paragraph(rest.rightOf(LABEL), VALUE, f.value());
      rest = new Box(card.x() + MARGIN, rest.y() + 2, inner, rest.h() - 2);
    }
  }

  /** Below and right of the pointer, or on the other side where there is no room. */
  private static Box place(Box room, Hover hover, double high) {
    double right = hover.x() + AWAY;
    double below = hover.y() + AWAY;
    double x = right + WIDTH <= room.right() ? right : hover.x() - AWAY - WIDTH;
    double y = below + high <= room.bottom() ? below : hover.y() - AWAY - high;
    return new Box(
        Math.max(room.x(), Math.min(x, room.right() - WIDTH)),
        Math.max(room.y(), Math.min(y, room.bottom() - high)),
        WIDTH,
        high);
  }

  private void chip(Box b, double showing) {
    Band band = Band.of(showing);
    canvas.fill(b, Palette.of(band), 1, 4);
    canvas.text(b, new Type(true, 13, Palette.on(band)), Canvas.Align.CENTRE, Wordings.band(band));
  }

  private static Words joint(
      ViewModel model, JointColours colours, Stage stage, JointScore j, Hover hover) {
    List<Wordings.Fact> facts = new ArrayList<>();
    facts.add(
        new Wordings.Fact("length", Wordings.measures(model.house()).length(j.joint().length())));
    if (stage.measure == Stage.Measure.MOMENT) {
      double along = hover.at().minus(j.joint().from()).dot(direction(j)) / j.joint().length();
      double now = colours.showing(j, Math.max(0, Math.min(1, along)));
      facts.add(new Wordings.Fact("now, here", Wordings.showing(now)));
    }
    facts.addAll(worst(j.peak()));
    Surface s = model.house().surface(hover.surfaceId());
    facts.add(new Wordings.Fact("on", s.label()));
    return new Words(Wordings.joint(j), j.peak().map(Peak::showing), facts);
  }

  private static Vec2 direction(JointScore j) {
    return j.joint().to().minus(j.joint().from()).unit();
  }

  private static Words surface(ViewModel model, Surface s) {
    List<Wordings.Fact> facts = new ArrayList<>();
    Optional<Peak> peak = model.score(s.id()).flatMap(SurfaceScore::worst);
    if (!s.boarded()) {
      facts.add(new Wordings.Fact("board", "none, so no joints"));
    } else if (model.score().isEmpty()) {
      facts.add(new Wordings.Fact("showing", "still being scored"));
    } else {
      facts.addAll(worst(peak));
    }
    model
        .verdict(s.id())
        .map(Verdict::level)
        .ifPresent(level -> facts.add(new Wordings.Fact("specify", "level " + level)));
    return new Words(s.label(), peak.map(Peak::showing), facts);
  }

  private static List<Wordings.Fact> worst(Optional<Peak> peak) {
    if (peak.isEmpty()) {
      return List.of(new Wordings.Fact("showing", "nobody sees it or nothing lights it"));
    }
    Peak p = peak.get();
    return List.of(
        new Wordings.Fact("showing", Wordings.times(p.showing()) + " threshold, at its worst"),
        new Wordings.Fact("light", p.source().label()),
        new Wordings.Fact("when", Wordings.shortDate(p.at()) + " at " + Wordings.clock(p.at())));
  }
}
