package slantlight.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slantlight.view.draw.Palette;

class PaletteTest {
  /**
   * Simulation matrices for linear sRGB at severity 1.0. Source: Machado, Oliveira and Fernandes,
   * "A physiologically-based model for simulation of color vision deficiency", IEEE TVCG 15 (2009),
   * table of precomputed matrices (figures from memory).
   */
  private static final double[][][] DEFICIENT = {
    {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}},
    {
      {0.152286, 1.052583, -0.204868},
      {0.114503, 0.786281, 0.099216},
      {-0.003882, -0.048116, 1.051998}
    },
    {
      {0.367322, 0.860646, -0.227968},
      {0.280085, 0.672501, 0.047413},
      {-0.011820, 0.042940, 0.968881}
    },
    {
      {1.255528, -0.076749, -0.178779},
      {-0.078411, 0.930809, 0.147602},
      {0.004733, 0.691367, 0.303900}
    }
  };

  @Test
  void showingGetsDarkerWithEveryBandForEveryEye() {
    for (double[][] eye : DEFICIENT) {
      double last = 101;
      for (int rgb : Palette.bands()) {
        double l = lightness(rgb, eye);
        // Ten steps of CIE L* are told apart at a glance (from memory).
        assertThat(last - l).isGreaterThan(8);
        last = l;
      }
    }
  }

  @Test
  void showingBetweenBandsIsMonotoneToo() {
    for (double[][] eye : DEFICIENT) {
      double last = 101;
      for (double s = 0.5; s < 12; s *= 1.05) {
        double l = lightness(Palette.ofShowing(s), eye);
        assertThat(l).isLessThanOrEqualTo(last + 0.3);
        last = l;
      }
    }
  }

  @Test
  void levelsGetDarkerFromThreeToFive() {
    for (double[][] eye : DEFICIENT) {
      List<Double> l =
          List.of(3, 4, 5).stream().map(i -> lightness(Palette.ofLevel(i), eye)).toList();
      assertThat(l.get(0) - l.get(1)).isGreaterThan(6);
      assertThat(l.get(1) - l.get(2)).isGreaterThan(8);
    }
  }

  private static double lightness(int rgb, double[][] m) {
    double[] c = new double[3];
    for (int k = 0; k < 3; k++) {
      double v = (rgb >> (16 - 8 * k) & 255) / 255.0;
      c[k] = v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }
    double[] d = new double[3];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        d[i] += m[i][j] * c[j];
      }
      d[i] = Math.max(0, Math.min(1, d[i]));
    }
    double y = Hue.luminance(d[0], d[1], d[2]);
    return y > 0.008856 ? 116 * Math.cbrt(y) - 16 : 903.3 * y;
  }
}
