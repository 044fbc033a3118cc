package org.counterpull.access;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * A tool on its way to a place.
 *
 * @param name as the plan says it
 * @param shankMm length between the hole and the tool's body
 * @param bodyMm diameter of the body
 * @param lengthMm length of the body
 */
public record Tool(String name, double shankMm, double bodyMm, double lengthMm) {
  private static final String RESOURCE = "/access/tools.yaml";
  private static final List<Tool> ALL = read();

  public static final Tool DRILL = named("drill and chuck");
  public static final Tool REAMER = named("reamer on an extension");
  public static final Tool TAP = named("tap with wrench");
  public static final Tool GREASE_GUN = named("grease gun");
  public static final Tool HAND = named("hand");

  private static Tool named(String name) {
    return ALL.stream().filter(tool -> tool.name().equals(name)).findFirst().orElseThrow();
  }

  private static List<Tool> read() {
    try (InputStream in = Tool.class.getResourceAsStream(RESOURCE)) {
      List<Tool> tools = new ArrayList<>();
      for (JsonNode row : new YAMLMapper().readTree(in)) {
        tools.add(
            new Tool(
                row.required("tool").asText(),
                row.required("shank").asDouble(),
                row.required("body").asDouble(),
                row.required("length").asDouble()));
      }
      return List.copyOf(tools);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + RESOURCE, e);
    }
  }
}
