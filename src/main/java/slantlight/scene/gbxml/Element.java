package slantlight.scene.gbxml;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** An element of an XML file with the line it begins on. */
record Element(
    String name,
    int line,
    Map<String, String> attributes,
    List<Element> children,
    StringBuilder text) {
  private static final long MOST_BYTES = 64L << 20;
  private static final int DEEPEST = 100;
  private static final int MOST_ELEMENTS = 3_000_000;

  /** The attribute, or an empty text. */
  String attribute(String key) {
    return attributes.getOrDefault(key, "");
  }

  String content() {
    return text.toString().strip();
  }

  Stream<Element> all(String child) {
    return children.stream().filter(c -> c.name().equals(child));
  }

  Optional<Element> first(String child) {
    return all(child).findFirst();
  }

  /** The text of a child, or an empty text. */
  String textOf(String child) {
    return first(child).map(Element::content).orElse("");
  }

  /**
   * Reads a file. Document types and entities are refused, so that nothing outside the file is ever
   * read and nothing in it can grow.
   *
   * @throws ImportException if it cannot be read or is not well-formed
   */
  static Element read(Path file) throws ImportException {
    try {
      if (Files.size(file) > MOST_BYTES) {
        throw new ImportException(file + ": larger than 64 MiB; export fewer rooms");
      }
    } catch (IOException e) {
      throw new ImportException(file + ": cannot be read; check its name and permissions", e);
    }
    XMLInputFactory factory = XMLInputFactory.newFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, true);
    try (InputStream in = Files.newInputStream(file)) {
      return tree(file, factory.createXMLStreamReader(in));
    } catch (XMLStreamException e) {
      int line = e.getLocation() == null ? 0 : e.getLocation().getLineNumber();
      throw new ImportException(
          file + ":" + line + ": not well-formed XML; export the file again", e);
    } catch (IOException e) {
      throw new ImportException(file + ": cannot be read; check its name and permissions", e);
    }
  }

  private static Element tree(Path file, XMLStreamReader xml)
      throws XMLStreamException, ImportException {
    Deque<Element> open = new ArrayDeque<>();
    Element root = null;
    int count = 0;
    while (xml.hasNext()) {
      switch (xml.next()) {
        case XMLStreamConstants.START_ELEMENT -> {
          if (++count > MOST_ELEMENTS || open.size() > DEEPEST) {
            throw new ImportException(
                file + ":" + xml.getLocation().getLineNumber() + ": too large or too deep");
          }
          Element e = start(xml);
          if (open.isEmpty()) {
            root = e;
          } else {
            open.peek().children().add(e);
          }
          open.push(e);
        }
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA ->
            open.peek().text().append(xml.getText());
        case XMLStreamConstants.END_ELEMENT -> open.pop();
        case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE ->
            throw new ImportException(
                file
                    + ":"
                    + xml.getLocation().getLineNumber()
                    + ": document types and entities are not read; remove them");
        default -> {}
      }
    }
    return root;
  }

  private static Element start(XMLStreamReader xml) {
    Map<String, String> attributes = new HashMap<>();
    for (int i = 0; i < xml.getAttributeCount(); i++) {
      attributes.put(xml.getAttributeLocalName(i), xml.getAttributeValue(i));
    }
    return new Element(
        xml.getLocalName(),
        xml.getLocation().getLineNumber(),
        attributes,
        new ArrayList<>(),
        new StringBuilder());
  }
}
