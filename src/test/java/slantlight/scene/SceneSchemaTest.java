package slantlight.scene;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import slantlight.scene.file.Key;
import slantlight.scene.file.SceneFile;

/**
 * The shipped schema and the key table of docs/scene.md are what the records say. {@code mvn test
 * -Dtest=SceneSchemaTest -Dscene.update=true} rewrites them.
 */
class SceneSchemaTest {
  private static final Path SHIPPED =
      Path.of("src", "main", "resources", "slantlight", "scene", "scene.schema.json");
  private static final Path DOCUMENTED = Path.of("docs", "scene.schema.json");
  private static final Path DOCUMENT = Path.of("docs", "scene.md");
  private static final String START = "<!-- keys: written by SceneSchemaTest -->\n";
  private static final JsonMapper JSON =
      JsonMapper.builder()
          .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
          .enable(JsonReadFeature.ALLOW_TRAILING_COMMA)
          .build();

  @Test
  void theShippedSchemaIsFresh() throws IOException {
    String fresh = SceneSchema.text();
    if (Boolean.getBoolean("scene.update")) {
      Files.writeString(SHIPPED, fresh);
      Files.writeString(DOCUMENTED, fresh);
    }
    assertThat(SHIPPED).content().isEqualTo(fresh);
    assertThat(DOCUMENTED).content().isEqualTo(fresh);
    try (InputStream in = SceneSchema.class.getResourceAsStream(SceneSchema.RESOURCE)) {
      assertThat(in).isNotNull();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"one-room", "lake-house", "wide-glass", "narrow-glass"})
  void demoScenesAreValid(String name) throws IOException {
    String text = Files.readString(Path.of("scenes", name + ".json"));
    assertThat(schema().validate(JSON.readTree(text))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "name"|"nmae"
          45,|91,
          "units": "ft"|"units": "fathoms"
          "use": "living"|"use": "lounge"
          [[0, 0], [20, 0], [20, 14], [0, 14]]|[[0, 0], [20, 0]]
          "lumens": 800|"lumens": "bright"
          "kind": "window"|"kind": "porthole"
          "slantlight": 1|"slantlight": 2
          """)
  void spoiltScenesAreNot(String from, String to) throws IOException {
    JsonNode sound = JSON.readTree(SceneTexts.SOUND);
    assertThat(schema().validate(sound)).isEmpty();
    JsonNode spoilt = JSON.readTree(SceneTexts.SOUND.replace(from, to));
    assertThat(schema().validate(spoilt)).isNotEmpty();
  }

  private static JsonSchema schema() {
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
        .getSchema(SceneSchema.text());
  }

  @Test
  void theKeyTableIsFresh() throws IOException {
    String text = Files.readString(DOCUMENT, StandardCharsets.UTF_8);
    assertThat(text).contains(START);
    String head = text.substring(0, text.indexOf(START) + START.length());
    String fresh = head + table();
    if (Boolean.getBoolean("scene.update")) {
      Files.writeString(DOCUMENT, fresh);
    }
    assertThat(Files.readString(DOCUMENT)).isEqualTo(fresh);
  }

  @Test
  void everyKeyIsExplained() throws IOException {
    String text = Files.readString(DOCUMENT);
    for (Class<?> type : records()) {
      for (RecordComponent c : type.getRecordComponents()) {
        assertThat(c.getAnnotation(Key.class)).as(type + "." + c.getName()).isNotNull();
        assertThat(text).contains("`" + c.getName() + "`");
      }
    }
  }

  private static String table() {
    StringBuilder out = new StringBuilder();
    for (Class<?> type : records()) {
      out.append("\n### ").append(title(type)).append("\n\n");
      out.append("| key | value | limits | meaning |\n|---|---|---|---|\n");
      for (RecordComponent c : type.getRecordComponents()) {
        Key key = c.getAnnotation(Key.class);
        out.append("| `").append(c.getName()).append('`');
        out.append(key.required() ? " (required)" : "").append(" | ");
        out.append(value(c.getGenericType())).append(" | ").append(limits(c, key)).append(" | ");
        out.append(key.value().replace("|", "\\|")).append(" |\n");
      }
    }
    return out.toString();
  }

  private static String title(Class<?> type) {
    String name = type.getSimpleName().replaceFirst("File$", "");
    return name.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
  }

  private static String value(Type type) {
    if (type instanceof ParameterizedType list) {
      return "list of " + value(list.getActualTypeArguments()[0]);
    }
    Class<?> raw = (Class<?>) type;
    if (raw.isEnum()) {
      return "word";
    }
    return switch (raw.getSimpleName()) {
      case "String", "Zone", "Span" -> "text";
      case "Id" -> "short name";
      case "Double" -> "number";
      case "Integer" -> "whole number";
      case "Boolean" -> "true or false";
      case "Length" -> "length";
      case "Monthly" -> "number or twelve";
      case "Pair" -> "[azimuth, altitude]";
      case "ByLevel" -> "numbers by level";
      case "Point" -> "point";
      case "Direction", "Bearing" -> "direction";
      case "WallRef" -> "wall";
      case "Level" -> "level";
      default -> "[" + title(raw) + "](#" + title(raw).replace(' ', '-') + ")";
    };
  }

  private static String limits(RecordComponent c, Key key) {
    boolean list = c.getGenericType() instanceof ParameterizedType;
    List<String> parts = new ArrayList<>();
    if (list) {
      parts.add(key.fewest() + " to " + key.most() + " items");
    }
    boolean length = value(c.getGenericType()).endsWith("length");
    if (Double.isFinite(key.min()) && Double.isFinite(key.max())) {
      parts.add(number(key.min()) + " to " + number(key.max()) + (length ? " m" : ""));
    }
    return String.join(", ", parts);
  }

  private static String number(double v) {
    return v == Math.rint(v) ? Long.toString((long) v) : Double.toString(v);
  }

  /** The records of the file, from the scene down, each once. */
  private static List<Class<?>> records() {
    List<Class<?>> out = new ArrayList<>();
    Set<Class<?>> met = new HashSet<>();
    Deque<Class<?>> open = new ArrayDeque<>(List.of(SceneFile.class));
    while (!open.isEmpty()) {
      Class<?> type = open.removeFirst();
      if (!met.add(type)) {
        continue;
      }
      out.add(type);
      for (RecordComponent c : type.getRecordComponents()) {
        Type t = c.getGenericType();
        while (t instanceof ParameterizedType p) {
          t = p.getActualTypeArguments()[0];
        }
        if (t instanceof Class<?> raw && raw.isRecord() && raw.getSimpleName().endsWith("File")) {
          open.addLast(raw);
        }
      }
    }
    return out;
  }
}
