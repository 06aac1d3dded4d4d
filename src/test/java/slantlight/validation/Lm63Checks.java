package slantlight.validation;

import static slantlight.validation.Check.near;
import static slantlight.validation.Check.within;

import java.nio.file.Path;
import java.util.List;
import slantlight.scene.Lm63Exception;
import slantlight.scene.Lm63Reader;
import slantlight.scene.Photometry;

/** Reading of a photometric file against hand integration. */
final class Lm63Checks {
  private static final String SUBJECT = "Photometric files";
  private static final Path FILE =
      Path.of("src", "test", "resources", "lm63", "axial-downlight.ies");

  private Lm63Checks() {}

  static List<Check> all() {
    Photometry p;
    try {
      p = Lm63Reader.read(FILE);
    } catch (Lm63Exception e) {
      throw new IllegalStateException(e);
    }
    String hand = "hand calculation on an invented LM-63-2002 file";
    double down = p.candela(0, 0) / 4;
    double aside = p.candela(Math.PI / 4, 1) * Math.pow(Math.cos(Math.PI / 4), 3) / 4;
    return List.of(
        near(SUBJECT, "flux, candela linear in angle, lm", hand, 2404.72, p.lumens(), 0.005, 2),
        within(
            SUBJECT,
            "flux by zones of mean candela, lm",
            hand + "; a coarser sum",
            2426.90,
            p.lumens(),
            0.01,
            0),
        near(SUBJECT, "illuminance 2 m below, lx", hand, 250, down, 0.001, 2),
        near(SUBJECT, "illuminance 2 m below and 2 m aside, lx", hand, 53.03, aside, 0.005, 2));
  }
}
