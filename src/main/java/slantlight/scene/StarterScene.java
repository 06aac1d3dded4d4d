package slantlight.scene;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.ZoneId;
import java.util.Locale;
import slantlight.units.Length;
import slantlight.units.LengthUnit;

/**
 * A first scene of one room with one glass wall, commented so that a newcomer can change it.
 *
 * @param units unit of the plain numbers
 * @param width along the glass wall, m
 * @param depth away from the glass wall, m
 * @param height of the walls, m
 * @param facingDeg azimuth toward which the glass looks, degrees clockwise from true north
 * @param latitude degrees north
 * @param longitude degrees east
 * @param glass width of the glass, m
 */
public record StarterScene(
    String name,
    LengthUnit units,
    double width,
    double depth,
    double height,
    double facingDeg,
    double latitude,
    double longitude,
    ZoneId zone,
    double glass) {
  /** Wall left at each end of the glass and above it, at least, m. */
  public static final double LEAST_WALL = 0.05;

  /** Above the glass, where the height allows it, m. */
  private static final double OVER_GLASS = 8 * LengthUnit.IN.metres();

  /** The scene file's text. */
  public String text() {
    String plainUnit = units.name().toLowerCase(Locale.ROOT);
    double head = Math.max(height / 2, height - OVER_GLASS);
    double step = -(units.imperial() ? 8 * LengthUnit.IN.metres() : 0.2);
    String example =
        units.imperial() ? "\"12' 6 1/2\\\"\" and \"3.81 m\"" : "\"3.81 m\" and \"150 mm\"";
    String sixteen = units.imperial() ? "16 in" : "400 mm";
    return """
        // A starter scene with invented data: one room, one glass wall. Change what differs from yours,
        // then run:  slantlight check FILE   and   slantlight score FILE
        // On the drawing x runs right, y up, z up from the floor. Plain numbers are in UNIT; strings
        // such as EXAMPLE work as well.
        {
          "slantlight": 1,
          "name": NAME,
          "note": "Started from a template; check every number.",
          "units": "UNIT",
          // Azimuth of the drawing's up direction, degrees clockwise from true north. The glass is in
          // the drawing's lower wall ("south") and looks toward FACING degrees.
          "north": NORTH,
          "site": {
            "latitude": LATITUDE,
            // Degrees east: negative in the Americas.
            "longitude": LONGITUDE,
            "zone": "ZONE",
            // Share of light the ground sends back, January to December: grass 0.2, fresh snow 0.8.
            "groundReflectance": [0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2, 0.2],
            // Share of daytime with a clear sky; one number stands for all months.
            "clearShare": 0.5
          },
          "outside": {
            "ground": GROUND
            // A pool, a lake, a terrace, an eave: see docs/scene.md.
          },
          "rooms": [
            {
              "id": "living",
              "label": "Living room",
              // living, kitchen, bedroom, study, hall, stair, bath, laundry, closet, garage, storage ...
              "use": "living",
              "height": HEIGHT,
              // Inner faces of the walls, corner by corner.
              "outline": [[0, 0], [WIDTH, 0], [WIDTH, DEPTH], [0, DEPTH]],
              "openings": [
                // Without an offset it stands in the middle of its wall.
                { "id": "glass", "label": "glass wall", "kind": "window", "wall": "south",
                  "sill": 0, "width": GLASS, "head": HEAD }
              ],
              "finishes": {
                // LRV: light reflectance value from the paint card, 0 black to 100 white.
                "walls": { "paint": { "lrv": 78, "sheen": "eggshell" },
                           "framing": { "spacing": "SPACING" } },
                "ceiling": { "paint": { "lrv": 86, "sheen": "flat" },
                             "framing": { "direction": "north-south", "spacing": "SPACING" } },
                "floor": { "paint": { "lrv": 30, "sheen": "satin" } }
              }
            }
          ],
          "fixtures": [
            { "id": "pendant", "label": "pendant", "room": "living",
              "position": [LAMPX, LAMPY, LAMPZ], "distribution": "diffuser", "lumens": 1600,
              "on": ["dusk to 23:00"] }
          ]
        }
        """
        .replace("EXAMPLE", example)
        .replace("UNIT", plainUnit)
        .replace("FACING", decimal(facingDeg, 2))
        .replace("NORTH", decimal(north(), 4))
        .replace("LATITUDE", decimal(latitude, 6))
        .replace("LONGITUDE", decimal(longitude, 6))
        .replace("ZONE", zone.getId())
        .replace("GROUND", length(step))
        .replace("HEIGHT", length(height))
        .replace("WIDTH", length(width))
        .replace("DEPTH", length(depth))
        .replace("GLASS", length(glass))
        .replace("HEAD", length(head))
        .replace("SPACING", sixteen)
        .replace("LAMPX", length(width / 2))
        .replace("LAMPY", length(depth / 2))
        .replace("LAMPZ", length(height * 0.8))
        .replace("NAME", quoted(name));
  }

  /** The drawing's lower wall looks toward up + 180 degrees. */
  private double north() {
    double a = (((facingDeg - 180) % 360) + 360) % 360;
    return a > 180 ? a - 360 : a;
  }

  private String length(double metres) {
    return decimal(new Length(metres).metres() / units.metres(), 4);
  }

  private static String decimal(double value, int digits) {
    BigDecimal d = BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_UP);
    return d.signum() == 0 ? "0" : d.stripTrailingZeros().toPlainString();
  }

  private static String quoted(String text) {
    StringBuilder out = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\\') {
        out.append('\\').append(c);
      } else {
        out.append(c < ' ' ? ' ' : c);
      }
    }
    return out.append('"').toString();
  }
}
