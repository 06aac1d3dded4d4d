package slantlight.light;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import slantlight.TestHouses;
import slantlight.geom.Frame;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.scene.Lamp;
import slantlight.scene.Opening;
import slantlight.scene.Paint;
import slantlight.scene.PrescribedLight;
import slantlight.scene.Shade;
import slantlight.scene.Sheen;
import slantlight.scene.Surface;
import slantlight.sky.CieSky;
import slantlight.sky.SkyState;

/** Variations of the test houses, states and kernels for the tests of light. */
public final class LightHouses {
  /** Coarser than the default, for quick tests. */
  public static final TransportOptions QUICK = new TransportOptions(0.8, 3, 0.15, 15, 0.2, 8000);

  /** Illuminance and light vector: rows n, u, v. */
  public static final Kernel VECTOR =
      new Kernel() {
        @Override
        public int rows() {
          return Kernel.VECTOR.rows();
        }

        @Override
        public void weigh(double wu, double wv, double wn, double[] out) {
          Kernel.VECTOR.weigh(wu, wv, wn, out);
        }

        @Override
        public double widest(double wu, double wv, double wn) {
          return Transport.FINE; // as finely as a list of incident light
        }
      };

  private LightHouses() {}

  /** The house with every surface painted the same. */
  public static House painted(House h, double lrv) {
    List<Surface> surfaces = h.surfaces().stream().map(s -> paint(s, lrv)).toList();
    return h.withSurfaces(surfaces);
  }

  private static Surface paint(Surface s, double lrv) {
    return s.withPaint(new Paint(lrv, Sheen.FLAT));
  }

  public static House withLamps(House h, Lamp... lamps) {
    return h.withLamps(List.of(lamps));
  }

  public static House withSun(House h, Vec3 sun) {
    PrescribedLight light =
        new PrescribedLight(Optional.of(sun), 100_000, 5, 5000, java.util.OptionalDouble.empty());
    return h.withPrescribed(light);
  }

  /** The house with its single opening changed. */
  public static House withOpening(House h, java.util.function.UnaryOperator<Opening> change) {
    List<Opening> openings = new ArrayList<>(h.openings());
    openings.set(0, change.apply(openings.get(0)));
    return h.withOpenings(openings);
  }

  /** An empty hole: no glass, no frame. */
  public static Opening bare(Opening o) {
    return changed(o, 1, 0, 0, 0, Optional.empty());
  }

  /** The same glass, set back. */
  static Opening setBack(Opening o, double reveal) {
    return changed(o, o.transmittance(), o.panes(), o.frameShare(), reveal, o.shade());
  }

  private static Opening changed(
      Opening o,
      double transmittance,
      int panes,
      double frameShare,
      double reveal,
      Optional<Shade> shade) {
    return new Opening(
        o.id(),
        o.label(),
        o.roomId(),
        o.kind(),
        o.surfaceId(),
        o.toRoomId(),
        o.face(),
        transmittance,
        panes,
        frameShare,
        reveal,
        shade);
  }

  /** No sun; even sky and ground. */
  public static LightState even(House h, double skyLuminance, double groundLuminance) {
    CieSky sky = CieSky.ofZenith(CieSky.UNIFORM, Vec3.UP, skyLuminance);
    return state(h, new SkyState(Vec3.UP, 0, sky, Math.PI * skyLuminance, 0.2, groundLuminance), 1);
  }

  /** Sun and an even sky over ground of reflectance 0.2. */
  public static LightState sunny(House h, Vec3 sun, double beam, double skyLuminance) {
    CieSky sky = CieSky.ofZenith(CieSky.UNIFORM, sun, skyLuminance);
    return state(h, new SkyState(sun, beam, sky, Math.PI * skyLuminance, 0.2, Double.NaN), 0);
  }

  public static LightState state(House h, SkyState sky, double lampShare) {
    return new LightState(sky, Collections.nCopies(h.lamps().size(), lampShare));
  }

  /** A point of a ceiling. */
  public static SamplePoint below(double x, double y, double z) {
    return new SamplePoint(Frame.of(new Vec3(x, y, z), Vec3.EAST, Vec3.DOWN), "room");
  }

  public static SamplePoint at(Vec3 p, Vec3 u, Vec3 n) {
    return new SamplePoint(Frame.of(p, u, n), "room");
  }

  /** A closed box: no window at all. */
  public static House closedBox(double w, double d, double h, double lrv) {
    House box = TestHouses.boxRoom(w, d, h, 1, 2, 1, 2, lrv);
    List<Surface> surfaces = new ArrayList<>();
    for (Surface s : box.surfaces()) {
      Surface whole =
          new Surface(
              s.id(),
              s.label(),
              s.roomId(),
              s.kind(),
              slantlight.geom.Face.of(s.face().frame(), s.face().outer()),
              new Paint(lrv, Sheen.FLAT),
              s.boarded(),
              s.framing(),
              s.boards(),
              s.level(),
              s.covered(),
              s.joints());
      surfaces.add(whole);
    }
    return box.withSurfaces(surfaces).withOpenings(List.of()).withLamps(List.of());
  }
}
