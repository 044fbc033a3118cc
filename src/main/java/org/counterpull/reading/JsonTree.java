package org.counterpull.reading;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;

/** Reads JSON into the same tree as YAML: a number stays the text that was written. */
final class JsonTree {
  private final String file;
  private final TreeBuilder builder;
  private int depth;

  private JsonTree(String file, Problems problems) {
    this.file = file;
    this.builder = new TreeBuilder(problems);
  }

  /** The tree of a text; empty when the text says nothing. */
  static Optional<Node> read(String text, String file, Problems problems) throws FaultyText {
    JsonTree tree = new JsonTree(file, problems);
    try (JsonParser parser = new JsonFactory().createParser(text)) {
      for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
        tree.take(token, parser);
      }
      if (tree.depth > 0) {
        throw tree.fault(parser.currentLocation(), "the file ends inside a bracket");
      }
    } catch (JsonProcessingException e) {
      throw tree.fault(e.getLocation(), words(e.getOriginalMessage()));
    } catch (IOException e) {
      throw new UncheckedIOException("reading from memory", e);
    }
    return tree.builder.root();
  }

  private void take(JsonToken token, JsonParser parser) throws IOException, FaultyText {
    Place place = place(parser.currentTokenLocation());
    if (depth == 0 && builder.root().isPresent()) {
      throw new FaultyText(
          place, "there is more behind the end of the JSON", "one pair of braces around it all");
    }
    if (token.isStructStart()) {
      builder.begin(place, token == JsonToken.START_OBJECT);
      depth++;
    } else if (token.isStructEnd()) {
      builder.end();
      depth--;
    } else {
      boolean quoted = token == JsonToken.VALUE_STRING || token == JsonToken.FIELD_NAME;
      builder.scalar(new Node.Scalar(place, parser.getText(), quoted));
    }
  }

  private FaultyText fault(JsonLocation location, String what) {
    return new FaultyText(
        place(location),
        "the text is no JSON from here: " + what,
        "double quotation marks around keys and texts, commas between entries, no comma at the end");
  }

  /** The parser's sentence up to where it starts to talk about itself. */
  private static String words(String said) {
    String line = said.lines().findFirst().orElse("").replaceAll("\\p{Cntrl}", "?");
    int aside = line.indexOf(" (for ");
    return aside < 0 ? line : line.substring(0, aside);
  }

  private Place place(JsonLocation location) {
    return location == null
        ? new Place(file, 1, 1)
        : new Place(file, Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
  }
}
