package org.counterpull.markup;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Writes XML that is HTML or SVG as well. Text and attribute values always pass through the escape;
 * there is no way to put in a string as markup, other than a resource of the program itself.
 */
public final class Markup {
  private static final Pattern NAME = Pattern.compile("[a-zA-Z][a-zA-Z0-9:-]*");

  private final StringBuilder out = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /**
   * Opens an element.
   *
   * @param element its name
   * @param attributes names and values in turn; an attribute whose value is empty is left out,
   *     unless it is {@code alt}
   */
  public Markup open(String element, String... attributes) {
    start(element, attributes);
    out.append('>');
    open.push(element);
    return this;
  }

  /** Closes the element that was opened last. */
  public Markup close() {
    out.append("</").append(open.pop()).append('>');
    return this;
  }

  /** Closes the element that was opened last and ends the line. */
  public Markup closeLine() {
    close();
    out.append('\n');
    return this;
  }

  /** An element without content. */
  public Markup empty(String element, String... attributes) {
    start(element, attributes);
    out.append(" />");
    return this;
  }

  /** An element that holds only text. */
  public Markup element(String element, String text, String... attributes) {
    return open(element, attributes).text(text).close();
  }

  /** Text, escaped. */
  public Markup text(String text) {
    escape(text);
    return this;
  }

  /** Another piece, as it stands. */
  public Markup add(Markup piece) {
    piece.requireClosed();
    out.append(piece.out);
    return this;
  }

  /** A style sheet of the program, read from its resources. */
  public Markup style(String resource) {
    out.append("<style>\n").append(resource(resource)).append("</style>\n");
    return this;
  }

  /** A script of the program, read from its resources. */
  public Markup script(String resource) {
    out.append("<script>\n//<![CDATA[\n").append(resource(resource)).append("//]]>\n</script>\n");
    return this;
  }

  /** The declaration in front of a page. */
  public Markup doctype() {
    out.append("<!DOCTYPE html>\n");
    return this;
  }

  @Override
  public String toString() {
    requireClosed();
    return out.toString();
  }

  /** A coordinate: at most two decimals, no exponent, no minus before a zero. */
  public static String number(double value) {
    long hundredths = Math.round(value * 100);
    if (hundredths % 100 == 0) {
      return Long.toString(hundredths / 100);
    }
    String text = String.format(Locale.ROOT, "%.2f", hundredths / 100.0);
    return text.endsWith("0") ? text.substring(0, text.length() - 1) : text;
  }

  private void start(String element, String... attributes) {
    requireName(element);
    if (attributes.length % 2 != 0) {
      throw new IllegalArgumentException(
          "attributes of " + element + " are not names and values in turn");
    }
    out.append('<').append(element);
    for (int i = 0; i < attributes.length; i += 2) {
      attribute(attributes[i], attributes[i + 1]);
    }
  }

  private void attribute(String name, String value) {
    requireName(name);
    if (name.toLowerCase(Locale.ROOT).startsWith("on")) {
      throw new IllegalArgumentException("no attribute that holds a script: " + name);
    }
    if ((name.equals("href") || name.equals("src")) && !value.startsWith("#")) {
      throw new IllegalArgumentException("only links inside the page: " + value);
    }
    if (value.isEmpty() && !name.equals("alt")) {
      return;
    }
    out.append(' ').append(name).append("=\"");
    escape(value);
    out.append('"');
  }

  private static void requireName(String name) {
    if (!NAME.matcher(name).matches()) {
      throw new IllegalArgumentException("no name of an element or attribute: " + name);
    }
  }

  private void requireClosed() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("still open: " + open);
    }
  }

  private void escape(String text) {
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.appendCodePoint(allowed(c) ? c : 0xFFFD);
              }
            });
  }

  /** The characters that XML 1.0 allows. */
  private static boolean allowed(int c) {
    return c == '\t'
        || c == '\n'
        || c == '\r'
        || c >= 0x20 && c <= 0xD7FF
        || c >= 0xE000 && c <= 0xFFFD
        || c >= 0x10000;
  }

  private static String resource(String path) {
    try (InputStream in = Markup.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("missing from the program: " + path);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
