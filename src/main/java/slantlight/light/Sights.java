package slantlight.light;

/** One {@link Sight} for each thread. */
final class Sights {
  private final ThreadLocal<Sight> local;

  Sights(Interior interior, Outdoors outdoors, double coneAngle, double edgeAngle) {
    local = ThreadLocal.withInitial(() -> new Sight(interior, outdoors, coneAngle, edgeAngle));
  }

  Sight get() {
    return local.get();
  }
}
