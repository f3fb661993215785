package gripwright.export.picture;

import gripwright.quantity.Numbers;
import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes an SVG document of lines, dots and labels. Black, white and gray only, so that a printed
 * page shows all of it. Coordinates are pixels with one decimal, so that equal input gives equal
 * bytes.
 */
final class Svg {

  private static final String NAMESPACE = "http://www.w3.org/2000/svg";
  private static final String HATCHING = "hatching";

  private final StringWriter text = new StringWriter();
  private final XMLStreamWriter xml;

  /**
   * Starts a document on a white ground.
   *
   * @param title read aloud by screen readers, and shown when the pointer rests on the picture
   * @param description the same in full
   */
  Svg(double width, double height, String title, String description) {
    try {
      xml = XMLOutputFactory.newFactory().createXMLStreamWriter(text);
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
    start(
        "svg",
        "xmlns",
        NAMESPACE,
        "width",
        number(width),
        "height",
        number(height),
        "viewBox",
        "0 0 " + number(width) + " " + number(height),
        "role",
        "img",
        "font-family",
        "sans-serif",
        "font-size",
        "12");
    element("title", title);
    element("desc", description);
    newLine();
    start("defs");
    start(
        "pattern",
        "id",
        HATCHING,
        "width",
        "6",
        "height",
        "6",
        "patternUnits",
        "userSpaceOnUse",
        "patternTransform",
        "rotate(45)");
    empty("rect", "width", "6", "height", "6", "fill", "white");
    empty("line", "x1", "0", "y1", "0", "x2", "0", "y2", "6", "stroke", "gray");
    end();
    end();
    newLine();
    empty("rect", "width", "100%", "height", "100%", "fill", "white");
  }

  /** Starts a group moved to the right and down. */
  void group(double right, double down) {
    newLine();
    start("g", "transform", "translate(" + number(right) + " " + number(down) + ")");
  }

  /** Ends a group. */
  void end() {
    run(xml::writeEndElement);
  }

  /** Draws a line with ends that are {@code butt} or {@code round}. */
  void line(double[] from, double[] to, double width, String colour, String ends) {
    line(from, to, "stroke", colour, "stroke-width", number(width), "stroke-linecap", ends);
  }

  /** Draws a thin dashed line. */
  void dashed(double[] from, double[] to) {
    line(from, to, "stroke", "gray", "stroke-dasharray", "4 3");
  }

  private void line(double[] from, double[] to, String... style) {
    newLine();
    empty(
        "line",
        "x1",
        number(from[0]),
        "y1",
        number(from[1]),
        "x2",
        number(to[0]),
        "y2",
        number(to[1]));
    attributes(style);
  }

  /** Draws the outline of a path. */
  void path(String path) {
    newLine();
    empty("path", "d", path, "fill", "none", "stroke", "black", "stroke-width", "1.6");
  }

  /** Draws a hatched rectangle without an outline. */
  void hatched(double left, double top, double width, double height) {
    newLine();
    empty(
        "rect",
        "x",
        number(left),
        "y",
        number(top),
        "width",
        number(width),
        "height",
        number(height),
        "fill",
        "url(#" + HATCHING + ")");
  }

  /** Draws a black dot. */
  void dot(double[] at, double radius) {
    newLine();
    empty("circle", "cx", number(at[0]), "cy", number(at[1]), "r", number(radius));
  }

  /** Writes a label on a white halo, which keeps it readable over lines. */
  void label(double x, double y, String anchor, String label) {
    newLine();
    start(
        "text",
        "x",
        number(x),
        "y",
        number(y),
        "text-anchor",
        anchor,
        "stroke",
        "white",
        "stroke-width",
        "3",
        "stroke-linejoin",
        "round",
        "paint-order",
        "stroke");
    run(() -> xml.writeCharacters(label));
    end();
  }

  /** Writes a line of text in a weight such as {@code bold}. */
  void text(double x, double y, String weight, double size, String line) {
    newLine();
    start("text", "x", number(x), "y", number(y), "font-weight", weight, "font-size", number(size));
    run(() -> xml.writeCharacters(line));
    end();
  }

  /** Ends the document and returns it. */
  String finish() {
    newLine();
    end();
    newLine();
    run(xml::close);
    return text.toString();
  }

  /** Returns a coordinate with one decimal. */
  static String number(double pixels) {
    return Numbers.plain(pixels, 1);
  }

  private void element(String name, String content) {
    newLine();
    start(name);
    run(() -> xml.writeCharacters(content));
    end();
  }

  private void start(String name, String... attributes) {
    run(() -> xml.writeStartElement(name));
    attributes(attributes);
  }

  private void empty(String name, String... attributes) {
    run(() -> xml.writeEmptyElement(name));
    attributes(attributes);
  }

  private void attributes(String... attributes) {
    for (int i = 0; i < attributes.length; i += 2) {
      String name = attributes[i];
      String value = attributes[i + 1];
      run(() -> xml.writeAttribute(name, value));
    }
  }

  private void newLine() {
    run(() -> xml.writeCharacters("\n"));
  }

  private interface Step {
    void run() throws XMLStreamException;
  }

  /** A writer into memory fails only if its calls are in the wrong order. */
  private static void run(Step step) {
    try {
      step.run();
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
  }
}
