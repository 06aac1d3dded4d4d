package slantlight.scene;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.github.victools.jsonschema.generator.CustomDefinition;
import com.github.victools.jsonschema.generator.FieldScope;
import com.github.victools.jsonschema.generator.Option;
import com.github.victools.jsonschema.generator.OptionPreset;
import com.github.victools.jsonschema.generator.SchemaGenerator;
import com.github.victools.jsonschema.generator.SchemaGeneratorConfigBuilder;
import com.github.victools.jsonschema.generator.SchemaVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import slantlight.scene.file.Key;
import slantlight.scene.file.SceneFile;
import slantlight.scene.file.Values;
import slantlight.units.Length;

/**
 * JSON Schema (2020-12) of the scene file, generated from its records. It knows the shape of every
 * value; what one value demands of another (a window inside its wall) only {@link SceneReader}
 * knows.
 */
public final class SceneSchema {
  /** The shipped copy, on the class path. */
  public static final String RESOURCE = "/slantlight/scene/scene.schema.json";

  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private static final String NUMBER_OR_TEXT = "[\"number\", \"string\"]";

  /** Schemas of the values that are more than a plain JSON value. */
  private static final Map<Class<?>, String> SPECIAL =
      Map.ofEntries(
          Map.entry(Length.class, "{\"type\": " + NUMBER_OR_TEXT + "}"),
          Map.entry(
              Values.Id.class,
              "{\"type\": \"string\", \"pattern\": \"^[A-Za-z0-9][A-Za-z0-9._-]{0,59}$\"}"),
          Map.entry(Values.Zone.class, "{\"type\": \"string\"}"),
          Map.entry(
              Values.Monthly.class,
              "{\"anyOf\": [{\"type\": \"number\", \"minimum\": 0, \"maximum\": 1}, {\"type\":"
                  + " \"array\", \"items\": {\"type\": \"number\", \"minimum\": 0, \"maximum\": 1},"
                  + " \"minItems\": 12, \"maxItems\": 12}]}"),
          Map.entry(
              Values.Pair.class,
              "{\"type\": \"array\", \"items\": {\"type\": \"number\"}, \"minItems\": 2,"
                  + " \"maxItems\": 2}"),
          Map.entry(
              Values.ByLevel.class,
              "{\"type\": \"object\", \"patternProperties\": {\"^[0-5]$\": {\"type\": \"number\","
                  + " \"minimum\": 0}}, \"additionalProperties\": false}"),
          Map.entry(
              Values.Point.class,
              "{\"type\": \"array\", \"items\": {\"type\": "
                  + NUMBER_OR_TEXT
                  + "}, \"minItems\": 2, \"maxItems\": 3}"),
          Map.entry(
              Values.Direction.class,
              "{\"anyOf\": [{\"type\": \"string\"}, {\"type\": \"array\", \"items\": {\"type\":"
                  + " \"number\"}, \"minItems\": 3, \"maxItems\": 3}]}"),
          Map.entry(
              Values.WallRef.class,
              "{\"anyOf\": [{\"type\": \"string\"}, {\"type\": \"integer\", \"minimum\": 1}]}"),
          Map.entry(Values.Span.class, "{\"type\": \"string\"}"),
          Map.entry(
              Values.Level.class,
              "{\"anyOf\": [{\"const\": \"auto\"}, {\"type\": \"integer\", \"minimum\": 0,"
                  + " \"maximum\": 5}]}"),
          Map.entry(Values.Bearing.class, "{\"type\": " + NUMBER_OR_TEXT + "}"));

  private SceneSchema() {}

  /** The schema as text, the same on every run. */
  public static String text() {
    try {
      return MAPPER.writeValueAsString(schema()) + "\n";
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static ObjectNode schema() {
    SchemaGeneratorConfigBuilder builder =
        new SchemaGeneratorConfigBuilder(
                MAPPER, SchemaVersion.DRAFT_2020_12, OptionPreset.PLAIN_JSON)
            .with(Option.FORBIDDEN_ADDITIONAL_PROPERTIES_BY_DEFAULT)
            .with(Option.DEFINITIONS_FOR_ALL_OBJECTS);
    builder
        .forTypesInGeneral()
        .withCustomDefinitionProvider(
            (type, context) ->
                Optional.ofNullable(special(type.getErasedType()))
                    .map(n -> new CustomDefinition(n, true))
                    .orElse(null));
    builder
        .forFields()
        .withIgnoreCheck(f -> key(f).isEmpty())
        .withDescriptionResolver(f -> key(f).map(Key::value).orElse(null))
        .withRequiredCheck(f -> key(f).map(Key::required).orElse(false))
        .withNumberInclusiveMinimumResolver(f -> plain(f, true))
        .withNumberInclusiveMaximumResolver(f -> plain(f, false))
        .withArrayMinItemsResolver(
            f -> key(f).filter(k -> list(f) && k.fewest() > 0).map(Key::fewest).orElse(null))
        .withArrayMaxItemsResolver(f -> key(f).filter(k -> list(f)).map(Key::most).orElse(null));
    ObjectNode schema = new SchemaGenerator(builder.build()).generateSchema(SceneFile.class);
    schema.put("title", "Slantlight scene");
    return schema;
  }

  private static Optional<Key> key(FieldScope field) {
    return Optional.ofNullable(field.getRawMember().getAnnotation(Key.class));
  }

  private static boolean list(FieldScope field) {
    return !field.isFakeContainerItemScope() && field.getType().isInstanceOf(List.class);
  }

  /** Limit of a plain number; a length's limit depends on its unit and is left to the reader. */
  private static BigDecimal plain(FieldScope field, boolean low) {
    Class<?> type = field.getType().getErasedType();
    if (type != Double.class && type != Integer.class) {
      return null;
    }
    double limit = key(field).map(k -> low ? k.min() : k.max()).orElse(Double.NaN);
    return Double.isFinite(limit) ? BigDecimal.valueOf(limit).stripTrailingZeros() : null;
  }

  private static ObjectNode special(Class<?> type) {
    if (type.isEnum()) {
      ArrayNode words = MAPPER.createArrayNode();
      for (Object e : type.getEnumConstants()) {
        words.add(((Enum<?>) e).name().toLowerCase(Locale.ROOT).replace('_', '-'));
      }
      ObjectNode node = MAPPER.createObjectNode();
      node.set("enum", words);
      return node;
    }
    String text = SPECIAL.get(type);
    if (text == null) {
      return null;
    }
    try {
      JsonNode node = MAPPER.readTree(text);
      return (ObjectNode) node;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
