package slantlight.scene.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads JSON (RFC 8259, and besides it line and block comments and trailing commas) into a tree
 * whose every value knows its line and column. Files over 64 MiB, nesting over 64 deep and more
 * than 500,000 values are refused.
 */
public final class TreeReader {
  /** Largest file read, bytes. */
  public static final long MOST_BYTES = 64L << 20;

  static final int MOST_DEPTH = 64;
  static final int MOST_VALUES = 500_000;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
          .enable(JsonReadFeature.ALLOW_TRAILING_COMMA)
          .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(MOST_DEPTH)
                  .maxStringLength(10_000)
                  .maxNumberLength(100)
                  .maxNameLength(1_000)
                  .build())
          .build();

  private final JsonParser parser;
  private final Faults faults;
  private int values;

  private TreeReader(JsonParser parser, Faults faults) {
    this.parser = parser;
    this.faults = faults;
  }

  /** The tree of a file; empty, with faults added, when it cannot be read. */
  public static Optional<Node> read(Path file, Faults faults) {
    Optional<String> text = text(file, faults);
    return text.flatMap(t -> tree(t, faults));
  }

  private static Optional<String> text(Path file, Faults faults) {
    try {
      if (Files.isDirectory(file)) {
        faults.whole("is a folder, not a scene file", "give the path of a JSON file");
        return Optional.empty();
      }
      long size = Files.size(file);
      if (size > MOST_BYTES) {
        faults.whole(
            "is " + (size >> 20) + " MiB large",
            "a scene file may have 64 MiB at most; is this the right file?");
        return Optional.empty();
      }
      return decoded(Files.readAllBytes(file), faults);
    } catch (NoSuchFileException e) {
      faults.whole("there is no such file", "check the path, or write a starter scene with `new`");
    } catch (IOException e) {
      faults.whole("cannot be read (" + e.getMessage() + ")", "check the file and its permissions");
    }
    return Optional.empty();
  }

  private static Optional<String> decoded(byte[] bytes, Faults faults) {
    try {
      String text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes))
              .toString();
      if (text.indexOf('\0') < 0) {
        return Optional.of(text.startsWith("\ufeff") ? text.substring(1) : text);
      }
    } catch (CharacterCodingException e) {
      // Told below together with the other sign of a binary file.
    }
    faults.whole("is not text", "a scene file is JSON text in UTF-8; is this the right file?");
    return Optional.empty();
  }

  private static Optional<Node> tree(String text, Faults faults) {
    try (JsonParser parser = FACTORY.createParser(text)) {
      return new TreeReader(parser, faults).whole();
    } catch (JsonProcessingException e) {
      JsonLocation at = e.getLocation();
      int line = at == null ? 1 : at.getLineNr();
      int column = at == null ? 1 : at.getColumnNr();
      faults.add(Node.Place.whole(line, column), what(e), expected(e));
    } catch (IOException e) {
      faults.whole("cannot be read (" + e.getMessage() + ")", "check the file");
    }
    return Optional.empty();
  }

  private static String what(JsonProcessingException e) {
    if (e instanceof JsonEOFException) {
      return "the file ends in the middle of a value";
    }
    if (e instanceof StreamConstraintsException) {
      String message = e.getOriginalMessage();
      if (message.contains("nesting")) {
        return "values are nested more than " + MOST_DEPTH + " deep";
      }
      return message.contains("too many values")
          ? "there are more than " + MOST_VALUES + " values"
          : "a string, key or number is too long";
    }
    String message = e.getOriginalMessage();
    int end = message.indexOf('\n');
    return "is not JSON here: " + (end < 0 ? message : message.substring(0, end));
  }

  private static String expected(JsonProcessingException e) {
    if (e instanceof StreamConstraintsException) {
      return "no scene needs that; is this the right file?";
    }
    if (e instanceof JsonEOFException) {
      return "close every { with }, every [ with ] and every string with \"";
    }
    return "check commas, quotes and brackets just before this place";
  }

  private Optional<Node> whole() throws IOException {
    if (parser.nextToken() == null) {
      faults.whole("is empty", "write a starter scene with `new`");
      return Optional.empty();
    }
    Node root = value(whole(parser.currentTokenLocation()));
    if (parser.nextToken() != null) {
      faults.add(
          whole(parser.currentTokenLocation()),
          "something follows the end of the scene",
          "one scene, one pair of { }");
    }
    return Optional.of(root);
  }

  private static Node.Place whole(JsonLocation at) {
    return Node.Place.whole(at.getLineNr(), at.getColumnNr());
  }

  private Node value(Node.Place place) throws IOException {
    if (++values > MOST_VALUES) {
      throw new StreamConstraintsException("too many values", parser.currentLocation());
    }
    return switch (parser.currentToken()) {
      case START_OBJECT -> object(place);
      case START_ARRAY -> array(place);
      case VALUE_STRING -> new Node.Text(place, parser.getText());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Node.Num(place, parser.getDoubleValue());
      case VALUE_TRUE, VALUE_FALSE -> new Node.Bool(place, parser.getBooleanValue());
      default -> new Node.Nothing(place);
    };
  }

  private Node object(Node.Place place) throws IOException {
    List<Node.Member> members = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String key = parser.currentName();
      JsonLocation l = parser.currentTokenLocation();
      Node.Place keyPlace = place.key(key, l.getLineNr(), l.getColumnNr());
      parser.nextToken();
      JsonLocation v = parser.currentTokenLocation();
      Node value = value(keyPlace.moved(v.getLineNr(), v.getColumnNr()));
      if (seen.add(key)) {
        members.add(new Node.Member(key, keyPlace, value));
      } else {
        faults.add(keyPlace, "the key is given twice", "keep one of the two");
      }
    }
    return new Node.Obj(place, members);
  }

  private Node array(Node.Place place) throws IOException {
    List<Node> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      JsonLocation l = parser.currentTokenLocation();
      items.add(value(place.item(items.size(), l.getLineNr(), l.getColumnNr())));
    }
    return new Node.Arr(place, items);
  }
}
