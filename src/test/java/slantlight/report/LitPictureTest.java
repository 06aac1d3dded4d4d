package slantlight.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import slantlight.geom.Vec2;
import slantlight.light.LightModel;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.score.HouseScore;
import slantlight.units.Progress;

class LitPictureTest {
  private static HouseScore score;
  private static LightModel light;

  @BeforeAll
  static void solve() {
    score = TestScores.score();
    light = Transport.of(score.house(), TransportOptions.DEFAULT, Progress.NONE);
  }

  @Test
  void levelFiveIsSmootherThanLevelFourInTheSameLight() throws Exception {
    ReportData data = ReportMaker.of(light, score, TestScores.made(), Optional.empty(), List.of());
    assertThat(data.pictures()).hasSize(4);
    List<Double> rough = new ArrayList<>();
    for (ReportData.Picture p : data.pictures()) {
      Files.write(Path.of("target", "lit" + rough.size() + ".png"), p.png());
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(p.png()));
      rough.add(roughness(image));
      assertThat(p.alt()).contains("Room ceiling at level");
    }
    assertThat(rough.get(1)).isLessThan(rough.get(0));
    assertThat(rough.get(3)).isLessThan(0.8 * rough.get(2));
    Files.writeString(
        Path.of("target", "report-lit.html"),
        ReportPage.forScreen(data, PrintedSheets.THAT_MATTER));
  }

  /** Without relief the slope is nothing; on a flank it has the table's peak slope. */
  @Test
  void reliefFollowsTheRidgeTable() {
    Relief flat = new Relief(List.of(), 4);
    assertThat(flat.slope(new Vec2(1, 1)).length()).isZero();
    slantlight.board.Joint joint = score.surfaces().get(0).layout().joints().get(0);
    Relief relief = new Relief(List.of(joint), 4);
    slantlight.sight.JointRidge ridge =
        slantlight.sight.RidgeTable.standard()
            .ridge(slantlight.sight.RidgeKind.of(joint.kind()), 4);
    Vec2 along = joint.to().minus(joint.from()).unit();
    Vec2 across = new Vec2(-along.y(), along.x());
    Vec2 flank = joint.from().lerp(joint.to(), 0.5).plus(across.times(ridge.crown().width() / 4));
    assertThat(relief.slope(flank).length())
        .isCloseTo(ridge.crown().peakSlope(), org.assertj.core.data.Offset.offset(1e-9));
  }

  /** Mean step between neighbouring pixels two apart. */
  private static double roughness(BufferedImage image) {
    double sum = 0;
    for (int y = 2; y < image.getHeight(); y++) {
      for (int x = 2; x < image.getWidth(); x++) {
        int v = image.getRaster().getSample(x, y, 0);
        sum += Math.abs(v - image.getRaster().getSample(x - 2, y, 0));
        sum += Math.abs(v - image.getRaster().getSample(x, y - 2, 0));
      }
    }
    return sum;
  }
}
