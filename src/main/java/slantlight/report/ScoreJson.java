package slantlight.report;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slantlight.decide.Verdict;
import slantlight.geom.Vec2;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.scene.Room;
import slantlight.scene.Surface;
import slantlight.score.Band;
import slantlight.score.Calendar;
import slantlight.score.HouseScore;
import slantlight.score.JointScore;
import slantlight.score.LevelScore;
import slantlight.score.Peak;
import slantlight.score.SpotScore;
import slantlight.score.SurfaceScore;

/**
 * The score of a house as JSON, by docs/score.schema.json. Lengths are metres, angles degrees,
 * illuminance lux; plane coordinates are those of the surface seen from inside the room. A number
 * that does not exist (no beam, nobody to see it) is null.
 */
public final class ScoreJson {
  /** Changes when a reader of the old form would go wrong. */
  static final int FORMAT_VERSION = 1;

  private final JsonGenerator json;

  private ScoreJson(JsonGenerator json) {
    this.json = json;
  }

  /** The whole document as text. */
  public static String of(HouseScore score, List<Verdict> verdicts, Provenance made) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      write(score, verdicts, made, bytes);
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return bytes.toString(StandardCharsets.UTF_8);
  }

  /**
   * Writes the whole document as UTF-8; {@code out} stays open.
   *
   * @param verdicts of the scored surfaces, in any order; a surface without one has a null verdict
   */
  public static void write(
      HouseScore score, List<Verdict> verdicts, Provenance made, OutputStream out)
      throws IOException {
    DefaultPrettyPrinter lines =
        new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter(" ", "\n"));
    try (JsonGenerator json = new JsonFactory().createGenerator(out, JsonEncoding.UTF8)) {
      json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
      json.setPrettyPrinter(lines);
      new ScoreJson(json).document(score, verdicts, made);
      json.writeRaw('\n');
    }
  }

  private void document(HouseScore score, List<Verdict> verdicts, Provenance made)
      throws IOException {
    json.writeStartObject();
    json.writeStringField("format", "slantlight-score");
    json.writeNumberField("formatVersion", FORMAT_VERSION);
    json.writeStringField("version", made.version());
    scene(score.house(), made);
    json.writeNumberField("year", score.year());
    json.writeNumberField("stepMinutes", score.stepMinutes());
    json.writeNumberField("samples", score.samples());
    json.writeNumberField("moments", score.moments());
    bands();
    json.writeArrayFieldStart("surfaces");
    for (SurfaceScore s : score.surfaces()) {
      surface(score.house(), s, verdicts);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("cautions");
    for (String caution : Cautions.ALL) {
      json.writeString(caution);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void scene(House house, Provenance made) throws IOException {
    json.writeObjectFieldStart("scene");
    json.writeStringField("name", house.name());
    json.writeStringField("note", house.note());
    json.writeStringField("hash", made.sceneHash());
    number("latitudeDeg", house.site().latitudeDeg());
    number("longitudeDeg", house.site().longitudeDeg());
    json.writeStringField("zone", house.site().zone().getId());
    json.writeEndObject();
  }

  private void bands() throws IOException {
    json.writeArrayFieldStart("bands");
    for (Band band : Band.values()) {
      json.writeStartObject();
      json.writeStringField("name", word(band));
      number("from", band.from());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void surface(House house, SurfaceScore s, List<Verdict> verdicts) throws IOException {
    Surface surface = house.surface(s.surfaceId());
    Room room = house.room(surface.roomId());
    json.writeStartObject();
    json.writeStringField("id", surface.id());
    json.writeStringField("label", surface.label());
    json.writeStringField("room", room.id());
    json.writeStringField("roomLabel", room.label());
    json.writeStringField("kind", word(surface.kind()));
    number("area", surface.face().area());
    number("limit", room.attention().limit());
    json.writeFieldName("verdict");
    verdict(verdicts.stream().filter(v -> v.surfaceId().equals(surface.id())).findFirst());
    json.writeStringField("boardRun", word(s.layout().run()));
    json.writeStringField("boardReason", s.layout().reason());
    json.writeNumberField("boards", s.layout().boards().size());
    levels(s.levels());
    peak("worst", s.worst());
    json.writeArrayFieldStart("joints");
    for (JointScore j : s.joints()) {
      joint(surface, j);
    }
    json.writeEndArray();
    json.writeFieldName("spots");
    spots(s.spots());
    calendar(s.calendar());
    json.writeEndObject();
  }

  private void verdict(Optional<Verdict> verdict) throws IOException {
    if (verdict.isEmpty()) {
      json.writeNull();
      return;
    }
    Verdict v = verdict.get();
    json.writeStartObject();
    json.writeNumberField("level", v.level());
    json.writeNumberField("byShowing", v.byShowing());
    json.writeNumberField("byStandard", v.byStandard());
    json.writeStringField("reason", v.reason());
    json.writeStringField("standardReason", v.standardReason());
    json.writeBooleanField("unsolved", v.unsolved());
    json.writeArrayFieldStart("notes");
    for (String note : v.notes()) {
      json.writeString(note);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void joint(Surface surface, JointScore j) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", j.joint().id());
    json.writeStringField("kind", word(j.joint().kind()));
    point("from", j.joint().from());
    point("to", j.joint().to());
    point("fromWorld", surface.face().frame().toWorld(j.joint().from()));
    point("toWorld", surface.face().frame().toWorld(j.joint().to()));
    number("length", j.joint().length());
    number("visibleLength", j.visibleLength());
    levels(j.levels());
    peak("peak", j.peak());
    numbers("profile", j.profile());
    json.writeEndObject();
  }

  private void spots(Optional<SpotScore> spots) throws IOException {
    if (spots.isEmpty()) {
      json.writeNull();
      return;
    }
    json.writeStartObject();
    json.writeNumberField("count", spots.get().count());
    json.writeNumberField("followed", spots.get().followed());
    levels(spots.get().levels());
    peak("peak", spots.get().peak());
    json.writeEndObject();
  }

  private void levels(List<LevelScore> levels) throws IOException {
    json.writeArrayFieldStart("levels");
    for (LevelScore l : levels) {
      json.writeStartObject();
      json.writeNumberField("level", l.level());
      number("peakShowing", l.peakShowing());
      json.writeStringField("band", word(Band.of(l.peakShowing())));
      numbers("lengthShares", l.lengthShares());
      numbers("clearHours", l.clearHours());
      numbers("expectedHours", l.expectedHours());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void peak(String name, Optional<Peak> peak) throws IOException {
    if (peak.isEmpty()) {
      json.writeNullField(name);
      return;
    }
    Peak p = peak.get();
    json.writeObjectFieldStart(name);
    number("showing", p.showing());
    json.writeStringField("band", word(Band.of(p.showing())));
    number("contrast", p.contrast());
    json.writeStringField("at", p.at().toOffsetDateTime().toString());
    json.writeStringField("weather", word(p.weather()));
    point("place", p.place());
    json.writeStringField("eye", p.eyeId());
    number("eyeDistance", p.eyeDistance());
    json.writeObjectFieldStart("source");
    json.writeStringField("kind", word(p.source().kind()));
    json.writeStringField("via", p.source().via());
    json.writeStringField("label", p.source().label());
    number("share", p.sourceShare());
    json.writeEndObject();
    number("grazingDeg", Math.toDegrees(p.grazing()));
    number("shadowLength", p.shadowLength());
    number("illuminance", p.illuminance());
    number("slant", p.slant());
    json.writeEndObject();
  }

  private void calendar(Calendar c) throws IOException {
    json.writeObjectFieldStart("calendar");
    json.writeNumberField("stepMinutes", c.stepMinutes());
    json.writeArrayFieldStart("days");
    for (int day : c.days()) {
      json.writeNumber(day);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("showing");
    for (int row = 0; row < c.days().size(); row++) {
      json.writeStartArray();
      for (int column = 0; column < c.columns(); column++) {
        json.writeNumber(Figures.three(c.showing(row, column)));
      }
      json.writeEndArray();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void number(String name, double value) throws IOException {
    BigDecimal six = Figures.six(value);
    if (six == null) {
      json.writeNullField(name);
    } else {
      json.writeNumberField(name, six);
    }
  }

  private void numbers(String name, List<Double> values) throws IOException {
    json.writeArrayFieldStart(name);
    for (double value : values) {
      BigDecimal six = Figures.six(value);
      if (six == null) {
        json.writeNull();
      } else {
        json.writeNumber(six);
      }
    }
    json.writeEndArray();
  }

  private void point(String name, Vec2 p) throws IOException {
    numbers(name, List.of(p.x(), p.y()));
  }

  private void point(String name, Vec3 p) throws IOException {
    numbers(name, List.of(p.x(), p.y(), p.z()));
  }

  private static String word(Enum<?> e) {
    return e.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
