package slantlight.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import slantlight.geom.Vec2;

/**
 * A drawing as SVG 1.1: sized in real millimetres, one group a layer, text as text. Colours are
 * attributes for light paper; classes {@code f-KEY} and {@code s-KEY} let a style sheet change
 * them.
 */
public final class SvgText {

  private static final String FONTS = "Barlow, 'Helvetica Neue', Arial, 'DejaVu Sans', sans-serif";

  private final StringBuilder out = new StringBuilder();
  private final Drawing drawing;

  private SvgText(Drawing drawing) {
    this.drawing = drawing;
  }

  /** A file of its own, marked with what it was made from. */
  public static String file(Drawing drawing, String madeFrom) {
    SvgText svg = new SvgText(drawing);
    svg.write("<metadata>" + Xml.escape(madeFrom) + "</metadata>\n");
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + svg.out + "\n";
  }

  /** The svg element alone, for use inside a page. */
  public static String element(Drawing drawing) {
    SvgText svg = new SvgText(drawing);
    svg.write("");
    return svg.out.toString();
  }

  private void write(String metadata) {
    String id = drawing.id();
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"");
    out.append(n(drawing.width())).append("mm\" height=\"").append(n(drawing.height()));
    out.append("mm\" viewBox=\"0 0 ").append(n(drawing.width())).append(' ');
    out.append(n(drawing.height())).append("\" role=\"img\" aria-labelledby=\"");
    out.append(id).append("-t ").append(id).append("-d\" font-family=\"").append(FONTS);
    out.append("\">\n<title id=\"").append(id).append("-t\">").append(Xml.escape(drawing.title()));
    out.append("</title>\n<desc id=\"").append(id).append("-d\">");
    out.append(Xml.escape(drawing.description())).append("</desc>\n").append(metadata);
    for (Layer layer : drawing.layers()) {
      out.append("<g id=\"").append(id).append('-').append(layer.id()).append("\">\n");
      for (Mark mark : layer.marks()) {
        if (mark instanceof Mark.Path path) {
          path(path);
        } else if (mark instanceof Mark.Label label) {
          label(label);
        }
      }
      out.append("</g>\n");
    }
    out.append("</svg>");
  }

  private void path(Mark.Path path) {
    out.append("<path class=\"");
    path.fill().ifPresent(f -> style("f-", f, path.pen().isPresent() ? " " : ""));
    path.pen().ifPresent(p -> style("s-", p.ink(), ""));
    out.append("\" d=\"");
    for (List<Vec2> ring : path.rings()) {
      run(ring, path.closed());
    }
    out.append("\" fill=\"").append(path.fill().map(Colour::hex).orElse("none")).append('"');
    if (path.rings().size() > 1) {
      out.append(" fill-rule=\"evenodd\"");
    }
    path.pen().ifPresent(this::pen);
    if (!path.key().isEmpty()) {
      out.append(" data-key=\"").append(Xml.escape(path.key())).append('"');
    }
    if (path.hover().isEmpty()) {
      out.append("/>\n");
    } else {
      out.append("><title>").append(Xml.escape(path.hover())).append("</title></path>\n");
    }
  }

  private void style(String what, Colour colour, String end) {
    if (colour instanceof Ink ink) {
      out.append(what).append(ink.key()).append(end);
    }
  }

  private void pen(Pen pen) {
    out.append(" stroke=\"").append(pen.ink().hex()).append("\" stroke-width=\"");
    out.append(n(pen.width())).append('"');
    if (!pen.dashes().isEmpty()) {
      out.append(" stroke-dasharray=\"");
      for (int i = 0; i < pen.dashes().size(); i++) {
        out.append(i == 0 ? "" : " ").append(n(pen.dashes().get(i)));
      }
      out.append('"');
    }
  }

  private void run(List<Vec2> ring, boolean closed) {
    for (int i = 0; i < ring.size(); i++) {
      out.append(i == 0 ? 'M' : 'L');
      out.append(n(ring.get(i).x())).append(' ').append(n(ring.get(i).y()));
    }
    if (closed) {
      out.append('Z');
    }
  }

  private void label(Mark.Label label) {
    if (label.plated()) {
      path(label.plate());
    }
    String x = n(label.at().x());
    String y = n(label.at().y());
    out.append("<text class=\"f-").append(label.ink().key()).append("\" x=\"").append(x);
    out.append("\" y=\"").append(y).append("\" font-size=\"").append(n(label.size()));
    out.append("\" fill=\"").append(label.ink().hex()).append('"');
    if (label.strong()) {
      out.append(" font-weight=\"600\"");
    }
    switch (label.anchor()) {
      case START -> {}
      case MIDDLE -> out.append(" text-anchor=\"middle\"");
      case END -> out.append(" text-anchor=\"end\"");
    }
    if (label.turnDeg() != 0) {
      out.append(" transform=\"rotate(").append(n(label.turnDeg())).append(' ').append(x);
      out.append(' ').append(y).append(")\"");
    }
    out.append('>').append(Xml.escape(label.text())).append("</text>\n");
  }

  /** A number to a hundredth of a millimetre. */
  private static String n(double value) {
    BigDecimal d = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN);
    return d.signum() == 0 ? "0" : d.stripTrailingZeros().toPlainString();
  }
}
