package org.counterpull.drawing;

import java.util.List;
import java.util.stream.Collectors;
import org.counterpull.markup.Markup;

/** An SVG drawing in the making: a few marks in the units of its view box. */
final class Sheet {
  static final String INK = "#111";
  static final String GREY = "#767676";

  private final Markup markup = new Markup();

  /**
   * Opens the drawing.
   *
   * @param kind class of the drawing, for the page's style sheet
   * @param title what it is
   * @param description what it shows, in sentences
   */
  Sheet(String kind, double width, double height, String title, String description) {
    markup.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "class",
        kind,
        "role",
        "img",
        "width",
        n(width),
        "height",
        n(height),
        "viewBox",
        "0 0 " + n(width) + " " + n(height),
        "font-family",
        "Arial, Helvetica, 'DejaVu Sans', sans-serif");
    markup.element("title", title).element("desc", description);
    markup.empty("rect", "width", n(width), "height", n(height), "fill", "#fff");
  }

  Sheet line(Point from, Point to, String colour, double width) {
    return line(from, to, colour, width, "");
  }

  /** A line; dashes as in SVG, empty for none. */
  Sheet line(Point from, Point to, String colour, double width, String dashes) {
    markup.empty(
        "line",
        "x1",
        n(from.x()),
        "y1",
        n(from.y()),
        "x2",
        n(to.x()),
        "y2",
        n(to.y()),
        "stroke",
        colour,
        "stroke-width",
        n(width),
        "stroke-linecap",
        "round",
        "stroke-dasharray",
        dashes);
    return this;
  }

  Sheet polyline(List<Point> points, String colour, double width, String dashes) {
    markup.empty(
        "polyline",
        "points",
        points(points),
        "fill",
        "none",
        "stroke",
        colour,
        "stroke-width",
        n(width),
        "stroke-linecap",
        "round",
        "stroke-linejoin",
        "round",
        "stroke-dasharray",
        dashes);
    return this;
  }

  Sheet polygon(List<Point> points, String fill, String colour, double width) {
    markup.empty(
        "polygon",
        "points",
        points(points),
        "fill",
        fill,
        "stroke",
        colour,
        "stroke-width",
        n(width),
        "stroke-linejoin",
        "round");
    return this;
  }

  Sheet circle(Point centre, double radius, String fill, String colour, double width) {
    markup.empty(
        "circle",
        "cx",
        n(centre.x()),
        "cy",
        n(centre.y()),
        "r",
        n(radius),
        "fill",
        fill,
        "stroke",
        colour,
        "stroke-width",
        n(width));
    return this;
  }

  /** A box; a fill may be a pattern. */
  Sheet box(Point corner, double width, double height, double round, String fill, String colour) {
    markup.empty(
        "rect",
        "x",
        n(corner.x()),
        "y",
        n(corner.y()),
        "width",
        n(width),
        "height",
        n(height),
        "rx",
        round > 0 ? n(round) : "",
        "fill",
        fill,
        "stroke",
        colour,
        "stroke-width",
        "1");
    return this;
  }

  /** Text; anchor is start, middle or end. */
  Sheet text(Point at, String text, double size, String anchor, String colour) {
    return text(at, text, size, anchor, colour, "");
  }

  Sheet bold(Point at, String text, double size, String anchor) {
    return text(at, text, size, anchor, INK, "bold");
  }

  private Sheet text(
      Point at, String text, double size, String anchor, String colour, String weight) {
    markup.element(
        "text",
        text,
        "x",
        n(at.x()),
        "y",
        n(at.y()),
        "font-size",
        n(size),
        "text-anchor",
        anchor,
        "fill",
        colour,
        "font-weight",
        weight);
    return this;
  }

  /** A head of an arrow at a place, pointing along a direction. */
  Sheet arrowHead(Point tip, Point direction, double size, String colour) {
    Point back = direction.unit().times(-size);
    Point side = direction.unit().turned().times(size * 0.42);
    return polygon(
        List.of(tip, tip.plus(back).plus(side), tip.plus(back).minus(side)), colour, colour, 0.5);
  }

  /** Slanting strokes as a fill named {@code id}. */
  Sheet hatch(String id, double spacing, double angleDeg, String background, double stroke) {
    markup.open("defs");
    markup.open(
        "pattern",
        "id",
        id,
        "patternUnits",
        "userSpaceOnUse",
        "width",
        n(spacing),
        "height",
        n(spacing),
        "patternTransform",
        "rotate(" + n(angleDeg) + ")");
    markup.empty("rect", "width", n(spacing), "height", n(spacing), "fill", background);
    markup.empty(
        "line",
        "x1",
        "0",
        "y1",
        "0",
        "x2",
        "0",
        "y2",
        n(spacing),
        "stroke",
        INK,
        "stroke-width",
        n(stroke));
    markup.close().close();
    return this;
  }

  /** The finished drawing. */
  Markup done() {
    return markup.close();
  }

  /** A guess at the width of a text, wide enough for the usual fonts. */
  static double textWidth(String text, double size) {
    return text.length() * size * 0.58;
  }

  private static String points(List<Point> points) {
    return points.stream().map(p -> n(p.x()) + "," + n(p.y())).collect(Collectors.joining(" "));
  }

  private static String n(double value) {
    return Markup.number(value);
  }
}
