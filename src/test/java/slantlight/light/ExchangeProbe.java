package slantlight.light;

/** Lets checks outside the package ask for factors between whole surfaces. */
public final class ExchangeProbe {
  private ExchangeProbe() {}

  /** Configuration factor from one surface to another, as the transport has it. */
  public static double factor(Transport t, String from, String to) {
    RoomLight rooms = t.roomLight();
    double flux = 0;
    double area = 0;
    for (Patch p : rooms.patches()) {
      if (!t.house().surfaces().get(p.surface()).id().equals(from)) {
        continue;
      }
      area += p.area();
      for (int g = 0; g < rooms.mesh.groups; g++) {
        Patch first = rooms.patches().get(rooms.mesh.groupStart[g]);
        if (t.house().surfaces().get(first.surface()).id().equals(to)) {
          flux += p.area() * rooms.exchange.patchFactor(p.index(), g);
        }
      }
    }
    return flux / area;
  }
}
