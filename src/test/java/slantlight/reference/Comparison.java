package slantlight.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import slantlight.geom.Vec3;
import slantlight.light.IncidentField;
import slantlight.light.SamplePoint;
import slantlight.light.Transport;
import slantlight.units.Progress;

/**
 * The program's light beside the reference's at the points of one room. Illuminance is measured in
 * shares of the room's mean illuminance, the light vector in shares of its mean length.
 *
 * @param meanReference mean illuminance of the points by the reference, lx
 * @param meanProgram the same by the program, lx
 * @param differences one per point and quantity
 */
public record Comparison(
    String room, double meanReference, double meanProgram, List<Difference> differences) {
  /** Largest share of the room's mean by which the two may differ. */
  public static final double LIMIT = 0.02;

  /**
   * What the program's own steps (mesh, cones, cells of ground) are allowed as a standard error,
   * beside the reference's noise.
   */
  public static final double PROGRAM_ERROR = 0.005;

  private static final int BATCHES = 32;
  private static final int SIDE = 96;
  private static final Map<String, Comparison> DONE = new ConcurrentHashMap<>();

  public Comparison {
    differences = List.copyOf(differences);
  }

  /**
   * One quantity at one point, as shares of the room's mean.
   *
   * @param error standard error of the reference
   */
  public record Difference(String what, double difference, double error) {
    /** Difference in standard errors of both answers together. */
    double sigmas() {
      return Math.abs(difference) / Math.hypot(error, PROGRAM_ERROR);
    }

    @Override
    public String toString() {
      return String.format(
          Locale.ROOT,
          "%s differs by %.2f %% of the room's mean, %.1f standard errors",
          what,
          100 * difference,
          sigmas());
    }
  }

  /** Names of all rooms compared. */
  public static List<String> rooms() {
    return ReferenceRooms.all().stream().map(ReferenceRooms.Case::name).toList();
  }

  /** The comparison of one room, computed once. */
  public static Comparison of(String room) {
    return DONE.computeIfAbsent(
        room,
        name ->
            compare(
                ReferenceRooms.all().stream()
                    .filter(c -> c.name().equals(name))
                    .findFirst()
                    .orElseThrow()));
  }

  /** Largest share of the room's mean by which anything differs. */
  public double worst() {
    return differences.stream().mapToDouble(d -> Math.abs(d.difference())).max().orElse(0);
  }

  private static Comparison compare(ReferenceRooms.Case c) {
    PathTracer tracer = new PathTracer(c.house(), c.state(), false);
    Transport transport = Transport.of(c.house(), c.options(), Progress.NONE);
    List<Answer> answers = new ArrayList<>();
    List<IncidentField> fields = new ArrayList<>();
    for (SamplePoint p : c.points()) {
      answers.add(tracer.at(p.frame(), BATCHES, SIDE, 1 + answers.size()));
      fields.add(transport.incident(p, c.state()));
    }
    double mean = answers.stream().mapToDouble(Answer::illuminance).average().orElseThrow();
    double length = answers.stream().mapToDouble(a -> a.vector().length()).average().orElseThrow();
    List<Difference> differences = new ArrayList<>();
    for (int i = 0; i < answers.size(); i++) {
      Answer a = answers.get(i);
      IncidentField f = fields.get(i);
      String point = "at point " + (i + 1) + " ";
      differences.add(
          new Difference(
              point + "E", (f.illuminance() - a.illuminance()) / mean, a.error() / mean));
      Vec3 d = f.lightVector().minus(a.vector());
      Vec3 e = a.vectorError();
      differences.add(new Difference(point + "Dx", d.x() / length, e.x() / length));
      differences.add(new Difference(point + "Dy", d.y() / length, e.y() / length));
      differences.add(new Difference(point + "Dz", d.z() / length, e.z() / length));
    }
    double ours = fields.stream().mapToDouble(IncidentField::illuminance).average().orElseThrow();
    return new Comparison(c.name(), mean, ours, differences);
  }
}
