package slantlight.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import slantlight.scene.JointKind;

/** Pooled showing by table against the same asked directly, and the ridge table's order. */
class GainTableTest {
  @Test
  void tableAgreesWithTheDirectAnswerBetweenNodes() {
    EyeModel eye = EyeModel.STANDARD;
    JointRidge ridge = RidgeTable.standard().ridge(RidgeKind.BUTT, 4);
    double[] table = GainTable.of(ridge, 2.5, 0.7, eye);
    for (double l = 0.016; l < 60_000; l *= 1.13) {
      double q = 0.8;
      double direct =
          eye.pooled(
              q
                  * ridge.crown().peakSlope()
                  * eye.gain(EyeModel.frequency(ridge.crown().width(), 2.5, 0.7), l),
              q
                  * ridge.edge().peakSlope()
                  * eye.gain(EyeModel.frequency(ridge.edge().width(), 2.5, 0.7), l));
      double fast = q * GainTable.at(table, GainTable.position(l));
      assertThat(fast).as("at %s cd/m2", l).isCloseTo(direct, within(0.005 * direct));
    }
  }

  @Test
  void darknessShowsNothingAndTheTableHasNoStepAtItsFoot() {
    double[] table =
        GainTable.of(RidgeTable.standard().ridge(RidgeKind.TAPERED, 4), 3, 1, EyeModel.STANDARD);
    double foot = Math.scalb(1.0, GainTable.FIRST_LOG2);
    assertThat(GainTable.at(table, GainTable.position(0))).isZero();
    assertThat(GainTable.at(table, GainTable.position(foot * 0.9999999)))
        .isCloseTo(table[0], within(1e-6 * table[0]));
    assertThat(GainTable.at(table, GainTable.position(foot / 4)))
        .isCloseTo(table[0] / 2, within(1e-9));
    assertThat(GainTable.at(table, GainTable.position(1e9))).isEqualTo(table[GainTable.NODES - 1]);
    assertThat(GainTable.position(2)).isCloseTo(14, within(4e-6));
  }

  @Test
  void quickLogarithmIsCloseEverywhere() {
    for (double x = 0.001; x < 1e6; x *= 1.0071) {
      assertThat(GainTable.log2(x)).isCloseTo(Math.log(x) / Math.log(2), within(2e-6));
    }
  }

  @Test
  void poolingIsHomogeneousAndRulesByTheLargest() {
    EyeModel eye = EyeModel.STANDARD;
    assertThat(eye.pooled(3, 0)).isCloseTo(3, within(1e-12));
    assertThat(eye.pooled(6, 4)).isCloseTo(2 * eye.pooled(3, 2), within(1e-12));
    assertThat(eye.pooled(3, 3)).isCloseTo(3 * Math.pow(2, 1 / 3.5), within(1e-12));
  }

  @Test
  void everyLevelOfWorkLeavesLess() {
    RidgeTable table = RidgeTable.standard();
    for (RidgeKind kind : RidgeKind.values()) {
      double last = Double.POSITIVE_INFINITY;
      for (int level = 2; level <= 5; level++) {
        JointRidge ridge = table.ridge(kind, level);
        double k = GainTable.at(GainTable.of(ridge, 2.5, 1, EyeModel.STANDARD), 26);
        assertThat(k).as("%s level %s", kind, level).isLessThan(last);
        assertThat(ridge.lowShare()).isBetween(0.1, 1.0);
        assertThat(ridge.highShare()).isBetween(1.0, 3.0);
        assertThat(ridge.source()).containsAnyOf("from memory", "common practice");
        last = k;
      }
    }
    for (JointKind kind : JointKind.values()) {
      assertThat(table.ridge(RidgeKind.of(kind), 4)).isNotNull();
    }
    assertThat(table.ridge(RidgeKind.BACK_BLOCKED, 4).edge().peakSlope())
        .isLessThan(table.ridge(RidgeKind.BUTT, 4).edge().peakSlope());
  }

  @Test
  void aMeasuredCrownReplacesTheTablesOwn() {
    JointRidge ridge = RidgeTable.standard().ridge(RidgeKind.BUTT, 4);
    JointRidge found = ridge.measured(OptionalDouble.of(0.002), OptionalDouble.empty());
    assertThat(found.crown()).isEqualTo(new RaisedCosine(0.002, ridge.crown().width()));
    double share = 0.002 / ridge.crown().height();
    assertThat(found.edge().height()).isCloseTo(ridge.edge().height() * share, within(1e-12));
    assertThat(found.edge().width()).isEqualTo(ridge.edge().width());
    assertThat(found.source()).contains("measured");
    assertThat(ridge.measured(OptionalDouble.empty(), OptionalDouble.empty())).isSameAs(ridge);
    assertThat(ridge.scaled(2).crown().height()).isEqualTo(2 * ridge.crown().height());
  }

  @Test
  void ridgesScaleInBothParts() {
    JointRidge ridge = RidgeTable.standard().ridge(RidgeKind.CUT, 4);
    JointRidge half = ridge.scaled(0.5);
    assertThat(half.crown().height()).isEqualTo(ridge.crown().height() / 2);
    assertThat(half.edge().height()).isEqualTo(ridge.edge().height() / 2);
    assertThat(half.edge().width()).isEqualTo(ridge.edge().width());
  }

  @Test
  void aDegreeOfViewCountsThePeriods() {
    // 1 degree at 3 m covers 52.36 mm; a ridge of that width is one cycle per degree.
    double degree = 3 * Math.PI / 180;
    assertThat(EyeModel.frequency(degree, 3, 1)).isCloseTo(1, within(1e-12));
    assertThat(EyeModel.frequency(degree, 6, 1)).isCloseTo(2, within(1e-12));
    assertThat(EyeModel.frequency(degree, 3, 0.25)).isCloseTo(4, within(1e-12));
    assertThat(EyeModel.frequency(degree, 3, 0)).isCloseTo(1000, within(1e-9));
  }

  @Test
  void impossibleEyesRidgesAndLevelsAreRefused() {
    assertThatThrownBy(() -> new EyeModel(0, 3.5, 60)).hasMessageContaining("positive field");
    assertThatThrownBy(() -> new EyeModel(2.5, 0.99, 60)).hasMessageContaining("exponent");
    assertThatThrownBy(() -> new EyeModel(2.5, 3.5, 0)).hasMessageContaining("field");
    assertThat(new EyeModel(2.5, 1, 60).pooled(1, -2)).isCloseTo(3, within(1e-12));
    assertThatThrownBy(() -> new RaisedCosine(-1e-9, 1)).hasMessageContaining("height of 0");
    assertThatThrownBy(() -> new RaisedCosine(1, 0)).hasMessageContaining("positive width");
    assertThat(new RaisedCosine(0, 1).peakSlope()).isZero();
    RidgeTable table = RidgeTable.standard();
    assertThatThrownBy(() -> table.ridge(RidgeKind.BUTT, 6)).hasMessageContaining("0 to 5");
    assertThatThrownBy(() -> table.ridge(RidgeKind.BUTT, -1)).hasMessageContaining("-1");
  }

  @Test
  void tablesAreReadWholeOrRefused() {
    assertThat(DataTable.read("sound.csv").rows())
        .containsExactly(new String[] {"a", "1", ""}, new String[] {"b", "2", "x"});
    assertThatThrownBy(() -> DataTable.read("ragged.csv")).hasMessageContaining("2 fields");
    assertThatThrownBy(() -> DataTable.read("none.csv")).hasMessageContaining("none.csv");
  }
}
