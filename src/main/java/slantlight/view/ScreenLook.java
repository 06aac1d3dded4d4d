package slantlight.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slantlight.decide.Verdict;
import slantlight.scene.Surface;
import slantlight.score.Band;
import slantlight.score.JointScore;
import slantlight.sheet.Colour;
import slantlight.sheet.Ink;
import slantlight.sheet.Look;
import slantlight.sheet.PaperMap;
import slantlight.sheet.Pen;
import slantlight.view.draw.Palette;

/** A sheet on the screen: joints as wide as they are finished, coloured by the measure chosen. */
record ScreenLook(ViewModel model, Stage stage, JointColours colours) implements Look {
  private static final int PIECES = 8;

  /** How much of a joint's colour is left where boards are drawn over it. */
  private static final double UNDER_BOARDS = 0.6;

  private boolean bare() {
    return stage.look != Stage.Look.BOARDS;
  }

  @Override
  public Colour field(Surface surface) {
    return new Colour.Plain(tint(surface.id()));
  }

  private int tint(String surfaceId) {
    return model
        .verdict(surfaceId)
        .map(Verdict::level)
        .map(Palette::ofLevel)
        .orElse(Palette.PLASTER);
  }

  @Override
  public Pen outline() {
    return Pen.full(Ink.LINE, 0.3);
  }

  @Override
  public Optional<Pen> boards() {
    return bare() ? Optional.empty() : Optional.of(Pen.full(Ink.ACCENT, 0.27));
  }

  @Override
  public List<Stretch> stretches(JointScore j, PaperMap map) {
    double width = map.mm(model.featherWidth().applyAsDouble(j.joint()));
    int under = tint(ViewModel.surfaceOf(j.joint().id()));
    List<Stretch> out = new ArrayList<>();
    for (int i = 0; i < PIECES; i++) {
      int rgb = colours.at(j, (i + 0.5) / PIECES);
      int seen = bare() ? rgb : Palette.mix(under, rgb, UNDER_BOARDS);
      double from = (double) i / PIECES;
      out.add(new Stretch(from, (i + 1.0) / PIECES, Pen.full(new Colour.Plain(seen), width)));
    }
    return out;
  }

  /** Names of the joints that show; their numbers are those of the year's worst. */
  @Override
  public String name(JointScore j) {
    if (Band.of(j.atLevel(4).peakShowing()) == Band.QUIET) {
      return "";
    }
    String whole = Look.PAPER.name(j);
    return stage.measure == Stage.Measure.YEAR ? whole : whole.substring(0, whole.indexOf(' '));
  }

  @Override
  public boolean everyEye() {
    return true;
  }

  @Override
  public boolean worst() {
    return stage.measure != Stage.Measure.MOMENT;
  }
}
