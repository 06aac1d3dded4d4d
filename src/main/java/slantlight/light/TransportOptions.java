package slantlight.light;

/**
 * How finely light is traced.
 *
 * @param patchEdge edge of the patches that bounce light, m
 * @param groupSide patches along a side of a group; bounces after the first are exchanged between
 *     groups
 * @param coneAngle largest angle of a cone looked through an opening, radians
 * @param sunStepDeg step of the sun's grid, degrees
 * @param sunEdge edge of the parts of a patch among which the sun's beam is told apart, m
 * @param maxPatches the patch edge grows until no more than this many are needed
 */
public record TransportOptions(
    double patchEdge,
    int groupSide,
    double coneAngle,
    double sunStepDeg,
    double sunEdge,
    int maxPatches) {
  /** Fine enough for scoring. */
  public static final TransportOptions DEFAULT = new TransportOptions(0.3, 3, 0.12, 5, 0.15, 4000);

  public TransportOptions {
    if (!(patchEdge > 0 && groupSide > 0 && coneAngle > 0.005 && sunEdge > 0 && maxPatches > 0)) {
      throw new IllegalArgumentException("every option must be positive, cones above 0.005 rad");
    }
  }

  public TransportOptions withPatchEdge(double edge) {
    return new TransportOptions(edge, groupSide, coneAngle, sunStepDeg, sunEdge, maxPatches);
  }
}
