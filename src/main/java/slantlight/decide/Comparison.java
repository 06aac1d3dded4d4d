package slantlight.decide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import slantlight.board.Joint;
import slantlight.score.HouseScore;
import slantlight.score.JointScore;
import slantlight.score.Peak;
import slantlight.score.SurfaceScore;

/**
 * What differs between two scores, surface by surface and joint by joint.
 *
 * @param surfaces those of the first score in its order, then those only the second has
 */
public record Comparison(List<SurfaceChange> surfaces) {
  /** Joints whose ends lie this near to each other are the same joint, m. */
  private static final double SAME = 1e-3;

  private static final OptionalDouble NONE = OptionalDouble.empty();

  public Comparison {
    surfaces = List.copyOf(surfaces);
  }

  /**
   * One surface in both scores.
   *
   * @param before verdict in the first score, if it has the surface
   * @param after verdict in the second
   * @param showingBefore largest showing at level 4; empty without the surface
   */
  public record SurfaceChange(
      String surfaceId,
      String label,
      Optional<Verdict> before,
      Optional<Verdict> after,
      OptionalDouble showingBefore,
      OptionalDouble showingAfter,
      List<JointChange> joints) {
    public SurfaceChange {
      joints = List.copyOf(joints);
    }

    /** Showing after less showing before; a surface that is not there counts as 0. */
    public double difference() {
      return showingAfter.orElse(0) - showingBefore.orElse(0);
    }
  }

  /**
   * One joint in both scores; a joint that moved is one that went and one that came.
   *
   * @param before largest showing at level 4 in the first score; empty when it is not there
   */
  public record JointChange(String jointId, OptionalDouble before, OptionalDouble after) {}

  /** Compares two scores of houses that share surface ids. */
  public static Comparison of(HouseScore a, HouseScore b) {
    Map<String, SurfaceScore> before = byId(a);
    Map<String, SurfaceScore> after = byId(b);
    Set<String> ids = new LinkedHashSet<>(before.keySet());
    ids.addAll(after.keySet());
    List<SurfaceChange> out = new ArrayList<>();
    for (String id : ids) {
      Optional<SurfaceScore> old = Optional.ofNullable(before.get(id));
      Optional<SurfaceScore> now = Optional.ofNullable(after.get(id));
      String label = (now.isPresent() ? b : a).house().surface(id).label();
      out.add(
          new SurfaceChange(
              id,
              label,
              old.map(s -> Verdicts.of(a.house(), s)),
              now.map(s -> Verdicts.of(b.house(), s)),
              showing(old),
              showing(now),
              joints(old, now)));
    }
    return new Comparison(out);
  }

  private static Map<String, SurfaceScore> byId(HouseScore score) {
    Map<String, SurfaceScore> out = new LinkedHashMap<>();
    score.surfaces().forEach(s -> out.put(s.surfaceId(), s));
    return out;
  }

  private static OptionalDouble showing(Optional<SurfaceScore> score) {
    return score.isPresent()
        ? OptionalDouble.of(Showing.at(score.get(), 4))
        : OptionalDouble.empty();
  }

  private static List<JointChange> joints(Optional<SurfaceScore> old, Optional<SurfaceScore> now) {
    List<JointScore> before = old.map(SurfaceScore::joints).orElse(List.of());
    List<JointScore> left = new ArrayList<>(now.map(SurfaceScore::joints).orElse(List.of()));
    List<JointChange> out = new ArrayList<>();
    for (JointScore a : before) {
      Optional<JointScore> b = left.stream().filter(j -> same(a.joint(), j.joint())).findFirst();
      b.ifPresent(left::remove);
      out.add(new JointChange(a.joint().id(), peak(a), b.map(Comparison::peak).orElse(NONE)));
    }
    for (JointScore b : left) {
      out.add(new JointChange(b.joint().id(), NONE, peak(b)));
    }
    return out;
  }

  private static OptionalDouble peak(JointScore score) {
    return OptionalDouble.of(score.peak().map(Peak::showing).orElse(0.0));
  }

  private static boolean same(Joint a, Joint b) {
    boolean forward = a.from().distance(b.from()) < SAME && a.to().distance(b.to()) < SAME;
    boolean backward = a.from().distance(b.to()) < SAME && a.to().distance(b.from()) < SAME;
    return a.kind() == b.kind() && (forward || backward);
  }
}
