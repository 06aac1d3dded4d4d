package slantlight.report;

import java.util.ArrayDeque;
import java.util.Deque;
import slantlight.sheet.Drawing;
import slantlight.sheet.SvgText;
import slantlight.sheet.Xml;

/** Writes well-formed XHTML; all text and attribute values are escaped. */
final class Html {
  private final StringBuilder out = new StringBuilder(1 << 16);
  private final Deque<String> open = new ArrayDeque<>();

  /** Opens an element; attributes are names and values in turn. */
  Html open(String name, String... attributes) {
    out.append('<').append(name);
    for (int i = 0; i < attributes.length; i += 2) {
      out.append(' ').append(attributes[i]).append("=\"");
      out.append(Xml.escape(attributes[i + 1])).append('"');
    }
    out.append('>');
    open.push(name);
    return this;
  }

  /** Closes the element opened last. */
  Html close() {
    out.append("</").append(open.pop()).append(">\n");
    return this;
  }

  /** An element that holds nothing but text. */
  Html leaf(String name, String text, String... attributes) {
    return open(name, attributes).text(text).close();
  }

  /** An element without content, such as img. */
  Html empty(String name, String... attributes) {
    open(name, attributes);
    open.pop();
    out.insert(out.length() - 1, '/');
    return this;
  }

  Html text(String text) {
    out.append(Xml.escape(text));
    return this;
  }

  /** Markup that is known to be well-formed and escaped, such as a drawing. */
  Html markup(String xml) {
    out.append(xml);
    return this;
  }

  /** A drawing with its title under it. */
  void figure(Drawing drawing) {
    open("figure")
        .open(
            "div",
            "class",
            "sheet",
            "tabindex",
            "0",
            "role",
            "region",
            "aria-label",
            drawing.title());
    markup(SvgText.element(drawing)).close().leaf("figcaption", drawing.title()).close();
  }

  @Override
  public String toString() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("not closed: " + open);
    }
    return out.toString();
  }
}
