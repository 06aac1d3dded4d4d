package slantlight.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.FloatRange;
import slantlight.scene.JointKind;
import slantlight.sight.EyeModel;
import slantlight.sight.GainTable;
import slantlight.sight.JointRidge;
import slantlight.sight.RidgeKind;
import slantlight.sight.RidgeTable;

class GainCurveTest {
  private static final JointRidge RIDGE =
      RidgeTable.standard().ridge(RidgeKind.of(JointKind.BUTT), 4);
  private static final GainCurve CURVE =
      new GainCurve(GainTable.of(RIDGE, 2.5, 0.8, EyeModel.STANDARD));

  @Property
  void agreesWithTheEyeWithinHalfAPercent(@ForAll @FloatRange(min = 0.02f, max = 60000f) float l) {
    double uEdge = EyeModel.frequency(RIDGE.edge().width(), 2.5, 0.8);
    double uCrown = EyeModel.frequency(RIDGE.crown().width(), 2.5, 0.8);
    EyeModel eye = EyeModel.STANDARD;
    double exact =
        eye.pooled(
            RIDGE.edge().peakSlope() * eye.gain(uEdge, l),
            RIDGE.crown().peakSlope() * eye.gain(uCrown, l));
    assertThat((double) CURVE.at(l)).isCloseTo(exact, within(0.005 * exact));
  }
}
