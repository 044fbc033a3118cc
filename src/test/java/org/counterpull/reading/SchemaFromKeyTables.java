package org.counterpull.reading;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.stream.Stream;

/** Writes the schema that the reader's key tables amount to. */
final class SchemaFromKeyTables {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String SCALAR = "{\"type\": [\"string\", \"number\"]}";
  private static final String NAME_PATTERN = "^[^/#\\[\\]{}\"]{1,60}$";

  private SchemaFromKeyTables() {}

  static String text() throws Exception {
    ObjectNode schema = table(FileKeys.TOP);
    ObjectNode whole = JSON.createObjectNode();
    whole.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    whole.put("title", "Weldment file");
    whole.setAll(schema);
    ObjectNode definitions = whole.putObject("$defs");
    forms(definitions);
    for (KeyTable table : FileKeys.ALL) {
      // The group of a steel or of a step has a name of its own beside the form that allows it.
      if (table != FileKeys.TOP && !definitions.has(table.name())) {
        definitions.set(table.name(), table(table));
      }
    }
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
    return JSON.writer(printer).writeValueAsString(whole) + "\n";
  }

  private static ObjectNode table(KeyTable table) throws Exception {
    ObjectNode node = JSON.createObjectNode();
    node.put("description", table.what());
    node.put("type", "object");
    ObjectNode properties = node.putObject("properties");
    ArrayNode required = JSON.createArrayNode();
    for (Key key : table.keys()) {
      properties.set(key.name(), property(key));
      if (key.needed()) {
        required.add(key.name());
      }
    }
    if (table.names().contains("like")) {
      ArrayNode either = node.putArray("anyOf");
      either.addObject().set("required", required);
      either.addObject().putArray("required").add("like");
    } else if (!required.isEmpty()) {
      node.set("required", required);
    }
    node.put("additionalProperties", false);
    return node;
  }

  private static ObjectNode property(Key key) throws Exception {
    ObjectNode node = JSON.createObjectNode();
    String otherwise =
        key.needed() || key.otherwise().isEmpty() ? "" : "; left out: " + key.otherwise();
    node.put("description", key.meaning() + otherwise);
    String word = key.form().word();
    if (word.startsWith("named:")) {
      node.putArray("type").add("object").add("null");
      if (!key.name().equals("runs")) {
        node.putObject("propertyNames").put("pattern", NAME_PATTERN);
      }
      node.putObject("additionalProperties").put("$ref", reference(word));
    } else if (word.startsWith("list:")) {
      node.put("type", "array");
      node.putObject("items").put("$ref", reference(word));
    } else if (word.equals("choice")) {
      key.form().choices().forEach(node.withArray("enum")::add);
    } else {
      node.put("$ref", reference(word));
    }
    if (!word.contains(":")) {
      node.putArray("examples").add(key.example());
    }
    return node;
  }

  private static String reference(String word) {
    return "#/$defs/" + word.substring(word.indexOf(':') + 1).replace(" ", "%20");
  }

  private static void forms(ObjectNode definitions) throws Exception {
    for (String scalar :
        List.of(
            "text",
            "name",
            "length",
            "temperature",
            "speed",
            "force",
            "time",
            "angle",
            "pressure",
            "mass",
            "heat per length",
            "subject")) {
      definitions.set(scalar, JSON.readTree(SCALAR));
    }
    definitions.set(
        "number",
        JSON.readTree("{\"type\": [\"number\", \"string\"], \"pattern\": \"^[-+0-9.eE]+$\"}"));
    definitions.set(
        "truth", JSON.readTree("{\"enum\": [true, false, \"yes\", \"no\", \"true\", \"false\"]}"));
    definitions.set("names", oneOrMore("name"));
    definitions.set("texts", oneOrMore("text"));
    definitions.set("include", oneOrMore("text"));
    definitions.set("subjects", oneOrMore("subject"));
    definitions.set("stock", stock());
    definitions.set("end", pattern("^(square|mite?red .+ long (front|back|top|bottom))$"));
    definitions.set(
        "place",
        pattern("^(middle|flush \\S+|(edge )?.+ from (left|right|front|back|top|bottom))$"));
    definitions.set("point", array("length", 3, 3));
    definitions.set("corner", array("length", 2, 2));
    definitions.set("outline", array("corner", 3, 501));
    ArrayNode points = either(definitions, "points");
    points.addObject().put("$ref", "#/$defs/point");
    points.add(array("point", 1, 500));
    ArrayNode direction = either(definitions, "direction");
    Words.DIRECTIONS.forEach(direction.addObject().putArray("enum")::add);
    direction.add(array("number", 3, 3));
    ArrayNode sides = either(definitions, "sides");
    Stream.concat(Stream.of("both", "all"), Words.SIDES.stream())
        .forEach(sides.addObject().putArray("enum")::add);
    ObjectNode list = sides.addObject().put("type", "array");
    Words.SIDES.forEach(list.putObject("items").putArray("enum")::add);
    ArrayNode steels = either(definitions, "steel");
    steels.addObject().put("$ref", "#/$defs/text");
    steels.addObject().put("$ref", "#/$defs/steel%20values");
    definitions.set("steel values", table(PartKeys.STEEL));
    ArrayNode steps = JSON.createArrayNode();
    steps.addObject().put("$ref", "#/$defs/name");
    steps.addObject().put("$ref", "#/$defs/step");
    definitions.set("step", table(JointKeys.ORDER));
    ObjectNode order = definitions.putObject("order").put("type", "array");
    order.putObject("items").set("anyOf", steps);
  }

  private static ArrayNode either(ObjectNode definitions, String name) {
    return definitions.putObject(name).putArray("anyOf");
  }

  private static JsonNode oneOrMore(String form) {
    ObjectNode node = JSON.createObjectNode();
    ArrayNode either = node.putArray("anyOf");
    either.addObject().put("$ref", "#/$defs/" + form);
    either.add(array(form, 1, 500));
    return node;
  }

  private static ObjectNode array(String form, int least, int most) {
    ObjectNode node = JSON.createObjectNode().put("type", "array");
    node.putObject("items").put("$ref", "#/$defs/" + form);
    return node.put("minItems", least).put("maxItems", most);
  }

  private static ObjectNode pattern(String pattern) {
    return JSON.createObjectNode().put("type", "string").put("pattern", pattern);
  }

  private static ObjectNode stock() {
    ObjectNode node =
        pattern(
            "^(flat|flat bar|plate|sheet|angle|channel|[iIhH][- ]section|[iIhH]-beam|square tube|"
                + "rectangular tube|round bar|square bar|round tube) .+$");
    Stream.of(
            "flat 60 x 10",
            "plate 8",
            "angle 50 x 50 x 6",
            "channel 100 x 50 x 5 x 8",
            "i-section 100 x 55 x 4.1 x 5.7",
            "square tube 50 x 3",
            "rectangular tube 60 x 40 x 4",
            "round bar 20",
            "square bar 12",
            "round tube 48.3 x 3.2")
        .forEach(node.putArray("examples")::add);
    return node;
  }
}
