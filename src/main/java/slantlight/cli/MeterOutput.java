package slantlight.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import slantlight.geom.Vec3;
import slantlight.light.IncidentField;
import slantlight.report.Csv;

/**
 * Writes what the meter read.
 *
 * @param scene name of the scene
 * @param when the light, in words
 */
record MeterOutput(String scene, String when, List<Reading> readings) {
  MeterOutput {
    readings = List.copyOf(readings);
  }

  /** What was found at one point. */
  record Reading(PointsFile.Point point, String room, IncidentField field) {}

  /** For people. */
  void table(PrintWriter out, int width) {
    out.println(scene + ", " + when);
    out.println("E illuminance, lx; D light vector (points to the light), lx, x east y north z up");
    out.println();
    TextTable table =
        new TextTable(
            TextTable.left("Point"),
            TextTable.left("Room"),
            TextTable.wrap("Source"),
            TextTable.right("E"),
            TextTable.right("Dx"),
            TextTable.right("Dy"),
            TextTable.right("Dz"));
    for (Reading r : readings) {
      table.row(cells(r.point().name(), r.room(), "all", r.field()));
      r.field()
          .bySource()
          .forEach((source, part) -> table.row(cells("", "", "- " + source.label(), part)));
    }
    table.print(out, width);
  }

  private static String[] cells(String point, String room, String source, IncidentField f) {
    Vec3 d = f.lightVector();
    return new String[] {
      point, room, source, lux(f.illuminance()), lux(d.x()), lux(d.y()), lux(d.z())
    };
  }

  /** One line per point and source, and one for all light of the point. */
  void csv(PrintWriter out) {
    Csv csv =
        new Csv(
            "point", "room", "x_m", "y_m", "z_m", "nx", "ny", "nz", "source", "via", "label",
            "E_lx", "Dx_lx", "Dy_lx", "Dz_lx");
    for (Reading r : readings) {
      line(csv, r, "ALL", "", "all light", r.field());
      r.field()
          .bySource()
          .forEach((s, part) -> line(csv, r, s.kind().name(), s.via(), s.label(), part));
    }
    out.print(csv);
  }

  private static void line(
      Csv csv, Reading r, String kind, String via, String label, IncidentField f) {
    csv.text(r.point().name()).text(r.room());
    numbers(csv, r.point().at());
    numbers(csv, r.point().normal());
    csv.text(kind).text(via).text(label).number(Double.parseDouble(lux(f.illuminance())));
    Vec3 d = f.lightVector();
    csv.number(Double.parseDouble(lux(d.x())));
    csv.number(Double.parseDouble(lux(d.y())));
    csv.number(Double.parseDouble(lux(d.z()))).end();
  }

  private static void numbers(Csv csv, Vec3 v) {
    csv.number(rounded(v.x())).number(rounded(v.y())).number(rounded(v.z()));
  }

  /** For programs. */
  void json(PrintWriter out) {
    try (JsonGenerator g = new JsonFactory().createGenerator(out)) {
      g.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
      g.useDefaultPrettyPrinter();
      g.writeStartObject();
      g.writeStringField("scene", scene);
      g.writeStringField("light", when);
      g.writeArrayFieldStart("points");
      for (Reading r : readings) {
        json(g, r);
      }
      g.writeEndArray();
      g.writeEndObject();
      g.writeRaw('\n');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void json(JsonGenerator g, Reading r) throws IOException {
    g.writeStartObject();
    g.writeStringField("name", r.point().name());
    g.writeStringField("room", r.room());
    g.writeFieldName("at");
    vector(g, r.point().at(), 1e-4);
    g.writeFieldName("normal");
    vector(g, r.point().normal(), 1e-4);
    light(g, r.field());
    g.writeArrayFieldStart("sources");
    for (var e : r.field().bySource().entrySet()) {
      g.writeStartObject();
      g.writeStringField("kind", e.getKey().kind().name());
      g.writeStringField("via", e.getKey().via());
      g.writeStringField("label", e.getKey().label());
      light(g, e.getValue());
      g.writeEndObject();
    }
    g.writeEndArray();
    g.writeEndObject();
  }

  private static void light(JsonGenerator g, IncidentField f) throws IOException {
    g.writeFieldName("illuminance");
    g.writeNumber(lux(f.illuminance()));
    g.writeFieldName("lightVector");
    vector(g, f.lightVector(), 0);
  }

  /**
   * @param step places are rounded to it; 0 for amounts of light
   */
  private static void vector(JsonGenerator g, Vec3 v, double step) throws IOException {
    g.writeStartArray();
    for (double c : new double[] {v.x(), v.y(), v.z()}) {
      g.writeNumber(step > 0 ? Double.toString(rounded(c)) : lux(c));
    }
    g.writeEndArray();
  }

  /** Four digits: more than the model carries, enough to compare by. */
  private static String lux(double v) {
    if (Math.abs(v) < 0.005) {
      return "0";
    }
    int digits = Math.abs(v) >= 1000 ? 0 : Math.abs(v) >= 100 ? 1 : 2;
    return String.format(Locale.ROOT, "%." + digits + "f", v);
  }

  private static double rounded(double v) {
    return Math.round(v * 1e4) / 1e4;
  }
}
