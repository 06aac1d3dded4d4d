package slantlight.view;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slantlight.TestHouses;
import slantlight.report.TestScores;
import slantlight.scene.House;
import slantlight.score.JointScore;

class WordingsTest {
  private static final JointScore BUTT = Studio.MODEL.joint("room/ceiling#B3").orElseThrow();

  /** A board of 48 in at 2.5 m: 4 ft at 98.4 in. */
  @Test
  void reasonsAreToldInFeetWhereBoardsAreBoughtInInches() {
    assertThat(Wordings.reasons(Studio.HOUSE, BUTT))
        .contains(
            new Wordings.Fact("length", "4' 0\", 4' 0\" in view"),
            new Wordings.Fact("seen from", "standing in the middle, 8' 2\" off"));
  }

  @Test
  void reasonsAreToldInMetresElsewhere() {
    House metric = TestHouses.metric(TestScores.house());
    assertThat(Wordings.reasons(metric, BUTT))
        .contains(
            new Wordings.Fact("length", "1.22 m, 1.22 m in view"),
            new Wordings.Fact("seen from", "standing in the middle, 2.5 m off"));
  }
}
