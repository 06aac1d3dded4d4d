package slantlight.light;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import slantlight.geom.Frame;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.scene.Opening;
import slantlight.scene.PrescribedLight;
import slantlight.sky.SunGrid;
import slantlight.units.Progress;
import slantlight.units.Workers;

/**
 * Light in one house: openings looked through cone by cone to sky, ground, water and blocks;
 * diffuse radiosity inside; lamps; and the sun's own beam.
 *
 * <p>Left out, and so to be remembered by who reads the numbers: light bounced by window reveals
 * and by the inside of the glass, light that outside walls throw on one another and on the ground,
 * mirror reflection inside.
 */
public final class Transport implements LightModel {
  private static final int MOMENTS_KEPT = 8;
  private static final double PATCH_CONES = 2;
  private static final double EDGE_CONES = 0.3;

  /** Widest angle of what is told apart in a list of incident light, radians. */
  static final double FINE = 0.12;

  private final House house;
  private final TransportOptions options;
  private final Columns columns;
  private final Outdoors outdoors;
  private final Interior interior;
  private final Sights sights;
  private final LampLight lamps;
  private final Beam beam;
  private final RoomLight rooms;
  private final Bounce bounce;
  private final Sources names;
  private final Map<LightState, RoomLight.Moment> moments =
      new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<LightState, RoomLight.Moment> eldest) {
          return size() > MOMENTS_KEPT;
        }
      };

  private Transport(House house, TransportOptions options, Progress progress) {
    this.house = house;
    columns = new Columns(house.lamps().size(), grid(house, options));
    outdoors = new Outdoors(house, columns);
    interior = new Interior(house, outdoors);
    this.options = options;
    double cone = options.coneAngle();
    sights = new Sights(interior, outdoors, cone, EDGE_CONES * cone);
    lamps = new LampLight(house, interior);
    beam = new Beam(interior, outdoors);
    // A patch takes only the sum of its cones, so it looks with a coarser eye.
    Sights coarse = new Sights(interior, outdoors, PATCH_CONES * cone, cone);
    Mesh mesh = new Mesh(house, interior, options);
    Exchange exchange = new Exchange(mesh, interior, coarse, progress);
    rooms =
        new RoomLight(
            mesh, exchange, columns, interior, coarse, lamps, beam, options.sunEdge(), progress);
    bounce = new Bounce(rooms.mesh, interior);
    names = new Sources(house);
  }

  /**
   * The light of a house of the same shape.
   *
   * @param shut id of an opening that a sheet shuts, or empty
   */
  private Transport(Transport like, House house, String shut) {
    this.house = house;
    options = like.options;
    double cone = options.coneAngle();
    columns = like.columns;
    outdoors = like.outdoors;
    boolean samePanes = shut.isEmpty() && house.openings().equals(like.house.openings());
    lamps = like.lamps;
    interior = samePanes ? like.interior : new Interior(house, outdoors, shut);
    sights = samePanes ? like.sights : new Sights(interior, outdoors, cone, EDGE_CONES * cone);
    beam = samePanes ? like.beam : new Beam(interior, outdoors);
    Mesh mesh = like.rooms.mesh.in(house);
    rooms =
        samePanes
            ? like.rooms.on(mesh)
            : new RoomLight(
                mesh,
                like.rooms.exchange.on(mesh),
                columns,
                interior,
                new Sights(interior, outdoors, PATCH_CONES * cone, cone),
                lamps,
                beam,
                options.sunEdge(),
                Progress.NONE);
    bounce = new Bounce(rooms.mesh, interior);
    names = new Sources(house);
  }

  @Override
  public Optional<LightModel> changed(House other) {
    return sameShape(other) ? Optional.of(new Transport(this, other, "")) : Optional.empty();
  }

  @Override
  public Optional<ShutOpening> shut(String openingId) {
    Transport behind = new Transport(this, house, openingId);
    return Optional.of(new ShutOpening(openingId, behind, behind));
  }

  /** What an opening is as seen from inside when it is as it is in another house. */
  Aperture aperture(House other, String openingId) {
    for (int i = 0; i < other.openings().size(); i++) {
      Opening o = other.openings().get(i);
      if (o.id().equals(openingId)) {
        return new Aperture(i, o, interior.room(o.roomId()), outdoors);
      }
    }
    throw new IllegalArgumentException("the house has no opening \"" + openingId + "\"");
  }

  /** Luminance of something outside, cd/m2. */
  double luminance(OutsideCell cell, LightState state) {
    return moment(state).luminance(cell);
  }

  /** Luminance of something outside by state, cd/m2, taken between the suns of the grid. */
  float[] luminances(OutsideCell cell, List<LightState> states) {
    float[][] response = {cell.response(columns)};
    float[][] out = new float[1][states.size()];
    NearFlecks none = NearFlecks.none(rooms);
    Coefficients.Sample[] only = {Coefficients.Sample.of(response, none, columns)};
    Basis one = new Coefficients(columns, rooms.flecks(), only);
    one.evaluate(0, one.block(states), out);
    return out[0];
  }

  private boolean sameShape(House other) {
    return faces(house).equals(faces(other))
        && holes(house).equals(holes(other))
        && house.lamps().equals(other.lamps())
        && house.site().equals(other.site())
        && house.outside().equals(other.outside())
        && house.prescribed().equals(other.prescribed());
  }

  private static List<Object> faces(House house) {
    List<Object> out = new ArrayList<>();
    house.surfaces().forEach(s -> out.add(List.of(s.roomId(), s.face())));
    return out;
  }

  private static List<Object> holes(House house) {
    List<Object> out = new ArrayList<>();
    house.openings().forEach(o -> out.add(List.of(o.roomId(), o.kind(), o.toRoomId(), o.face())));
    return out;
  }

  /**
   * Prepares a house: meshes it, finds what each patch sees and solves the bounced light for every
   * unit source.
   *
   * @throws java.util.concurrent.CancellationException if the progress says so
   */
  public static Transport of(House house, TransportOptions options, Progress progress) {
    return new Transport(house, options, progress);
  }

  private static SunGrid grid(House house, TransportOptions options) {
    return house
        .prescribed()
        .flatMap(PrescribedLight::sunDirection)
        .map(d -> SunGrid.fixed(d.unit()))
        .orElseGet(() -> SunGrid.of(house.site().latitudeDeg(), options.sunStepDeg()));
  }

  @Override
  public House house() {
    return house;
  }

  @Override
  public boolean sees(Vec3 a, Vec3 b) {
    return !interior.blocked(a.x(), a.y(), a.z(), b.x(), b.y(), b.z());
  }

  @Override
  public IncidentField incident(SamplePoint at, LightState state) {
    RoomLight.Moment moment = moment(state);
    List<Incident> list = direct(at, moment);
    Frame f = at.frame();
    bounce.at(
        interior.room(at.roomId()),
        f.origin(),
        f.n(),
        (dx, dy, dz) -> FINE,
        (group, patch, box, dx, dy, dz, weight) -> {
          double lux = weight * moment.luminance(group, patch, box);
          if (lux > 0) {
            list.add(new Incident(new Vec3(dx, dy, dz), lux, Sources.BOUNCED));
          }
        });
    return new IncidentField(at, list);
  }

  @Override
  public IncidentField direct(SamplePoint at, LightState state) {
    return new IncidentField(at, direct(at, moment(state)));
  }

  private List<Incident> direct(SamplePoint at, RoomLight.Moment moment) {
    List<Incident> list = new ArrayList<>();
    LightState state = moment.state();
    Frame f = at.frame();
    int room = interior.room(at.roomId());
    sun(at, room, state, list);
    sights
        .get()
        .outside(
            room,
            f.origin(),
            f.n(),
            (a, dx, dy, dz, weight, view) -> {
              double lux = weight * luminance(view, moment);
              if (lux > 0) {
                list.add(new Incident(new Vec3(dx, dy, dz), lux, names.through(view.kind, a)));
              }
            });
    lamps.at(
        room,
        f.origin(),
        f.n(),
        (lamp, dx, dy, dz, lux) -> {
          double lit = lux * state.lampShares().get(lamp);
          if (lit > 0) {
            list.add(new Incident(new Vec3(dx, dy, dz), lit, names.lamp(lamp)));
          }
        });
    return list;
  }

  private void sun(SamplePoint at, int room, LightState state, List<Incident> list) {
    Vec3 d = state.sky().sun();
    Vec3 n = at.frame().n();
    if (state.sky().sunNormalLux() <= 0 || d.dot(n) <= 0) {
      return;
    }
    Vec3 p = at.frame().origin().plus(n.times(Interior.LIFT));
    Aperture a = beam.through(room, p.x(), p.y(), p.z(), d.x(), d.y(), d.z());
    if (a != null) {
      double t = a.transmittance(Beam.cosine(a, d.x(), d.y(), d.z()));
      list.add(new Incident(d, t * state.sky().sunNormalLux(), names.through(SourceKind.SUN, a)));
    }
  }

  private double luminance(View view, RoomLight.Moment moment) {
    LightState state = moment.state();
    double sum = 0;
    if (view.zone >= 0) {
      sum +=
          view.zoneWeight
              * state.sky().luminance().toward(view.skyX, view.skyY, Math.max(1e-6, view.skyZ));
    }
    if (view.cell != null && view.cellWeight != 0) {
      sum += view.cellWeight * moment.luminance(view.cell);
    }
    if (view.mirrored != null) {
      sum += view.mirroredWeight * moment.luminance(view.mirrored);
    }
    Vec3 s = state.sky().sun();
    if (view.mirror != null && state.sky().sunNormalLux() > 0 && s.z() > 0) {
      double g = view.glitter(s.x(), s.y(), s.z());
      if (g > 1e-9) {
        sum += g * state.sky().sunNormalLux() * view.place.lit(s.x(), s.y(), s.z());
      }
    }
    return sum;
  }

  private RoomLight.Moment moment(LightState state) {
    synchronized (moments) {
      RoomLight.Moment kept = moments.get(state);
      if (kept != null) {
        return kept;
      }
    }
    RoomLight.Moment made = rooms.moment(state);
    synchronized (moments) {
      moments.put(state, made);
    }
    return made;
  }

  @Override
  public Basis basis(List<SamplePoint> points, List<Kernel> kernels, Progress progress) {
    if (points.size() != kernels.size()) {
      throw new IllegalArgumentException(
          points.size() + " points but " + kernels.size() + " kernels");
    }
    Coefficients.Sample[] samples = new Coefficients.Sample[points.size()];
    Tally tally = new Tally("light at the samples", samples.length, progress);
    Workers.each(
        samples.length,
        i -> {
          samples[i] = sample(points.get(i), kernels.get(i));
          tally.one();
        });
    return new Coefficients(columns, rooms.flecks(), samples);
  }

  /** Responses of one sample's rows to every unit source. */
  private Coefficients.Sample sample(SamplePoint at, Kernel kernel) {
    int count = kernel.rows();
    float[][] out = new float[count][columns.total];
    Exposure exposure = new Exposure(count, columns.lamps);
    Frame f = at.frame();
    int room = interior.room(at.roomId());
    double[] w = new double[count];
    sights
        .get()
        .outside(
            room,
            f.origin(),
            f.n(),
            (a, dx, dy, dz, weight, view) -> {
              weigh(kernel, f, dx, dy, dz, w);
              exposure.add(view, w, weight);
            });
    lamps.at(
        room,
        f.origin(),
        f.n(),
        (lamp, dx, dy, dz, lux) -> {
          weigh(kernel, f, dx, dy, dz, w);
          exposure.addLamp(lamp, w, lux);
        });
    exposure.addTo(out, columns);
    SunFlecks flecks = rooms.flecks();
    BouncedRows bounced = new BouncedRows(out);
    NearFlecks.Gathering near = new NearFlecks.Gathering(out.length, flecks, rooms);
    bounce.at(
        room,
        f.origin(),
        f.n(),
        (dx, dy, dz) ->
            kernel.widest(
                along(f.u(), dx, dy, dz), along(f.v(), dx, dy, dz), along(f.n(), dx, dy, dz)),
        (group, patch, box, dx, dy, dz, weight) -> {
          weigh(kernel, f, dx, dy, dz, w);
          double k = weight * rooms.reflectance(group) / Math.PI;
          bounced.add(rooms.response(group, patch), w, k);
          near.add(group, patch, box, w, k);
        });
    bounced.finish();
    return Coefficients.Sample.of(out, near.finish(out, columns.sun(Columns.INSIDE)), columns);
  }

  private static void weigh(Kernel kernel, Frame f, double dx, double dy, double dz, double[] out) {
    kernel.weigh(
        along(f.u(), dx, dy, dz),
        along(f.v(), dx, dy, dz),
        Math.max(1e-9, along(f.n(), dx, dy, dz)),
        out);
  }

  private static double along(Vec3 axis, double dx, double dy, double dz) {
    return dx * axis.x() + dy * axis.y() + dz * axis.z();
  }

  @Override
  public void findFlecks(Suns suns, Set<String> roomIds) {
    rooms.flecks().find(suns, seenFrom(roomIds));
  }

  @Override
  public void keepFlecks(Suns suns, Set<String> roomIds) {
    rooms.flecks().keep(suns, seenFrom(roomIds));
  }

  private int[] seenFrom(Set<String> roomIds) {
    return roomIds.stream()
        .flatMapToInt(id -> IntStream.of(interior.near(interior.room(id))))
        .distinct()
        .toArray();
  }

  @Override
  public SunGrid sunGrid() {
    return columns.grid;
  }

  @Override
  public SunBeams beams(List<SamplePoint> points) {
    return new SunBeamTests(beam, interior, points);
  }

  /** Where the light of a moment goes. */
  public EnergyBalance energy(LightState state) {
    return moment(state).balance();
  }

  /** Light on the inside surfaces, patch by patch, for drawing. */
  public List<PatchLight> surfaceLight(LightState state) {
    RoomLight.Moment moment = moment(state);
    return rooms.patches().stream()
        .map(
            p ->
                new PatchLight(
                    house.surfaces().get(p.surface()).id(),
                    p.frame().toPlane(p.centre()),
                    p.area(),
                    moment.illuminance(p.index())))
        .toList();
  }

  RoomLight roomLight() {
    return rooms;
  }
}
