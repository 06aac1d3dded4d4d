package slantlight.light;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slantlight.geom.Vec3;

/** All light arriving in front of one sample at one moment, as a list of small cones. */
public record IncidentField(SamplePoint at, List<Incident> incidents) {
  public IncidentField {
    incidents = List.copyOf(incidents);
  }

  /** Illuminance, lx. */
  public double illuminance() {
    return lightVector().dot(at.frame().n());
  }

  /** Gershun's light vector over the hemisphere in front of the sample, lx, world. */
  public Vec3 lightVector() {
    double x = 0;
    double y = 0;
    double z = 0;
    for (Incident i : incidents) {
      x += i.direction().x() * i.normalLux();
      y += i.direction().y() * i.normalLux();
      z += i.direction().z() * i.normalLux();
    }
    return new Vec3(x, y, z);
  }

  /** The same split by source, in the order first met. */
  public Map<Source, IncidentField> bySource() {
    Map<Source, java.util.ArrayList<Incident>> parts = new LinkedHashMap<>();
    for (Incident i : incidents) {
      parts.computeIfAbsent(i.source(), s -> new java.util.ArrayList<>()).add(i);
    }
    Map<Source, IncidentField> out = new LinkedHashMap<>();
    parts.forEach((source, list) -> out.put(source, new IncidentField(at, list)));
    return out;
  }
}
