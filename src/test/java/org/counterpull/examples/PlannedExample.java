package org.counterpull.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.counterpull.cli.CommandRun;

/** A bundled example as the plan command plans it, with questions to put to plan.json. */
final class PlannedExample {
  private final CommandRun run;
  private final JsonNode plan;

  private PlannedExample(CommandRun run, JsonNode plan) {
    this.run = run;
    this.plan = plan;
  }

  static PlannedExample of(String name, Path folder) throws IOException {
    CommandRun run =
        CommandRun.of(
            "plan",
            "examples/" + name + ".yaml",
            "--heat",
            "none",
            "--mount",
            "none",
            "--out",
            folder.toString());
    assertThat(run.err()).isEmpty();
    JsonNode plan = new ObjectMapper().readTree(Files.readString(folder.resolve("plan.json")));
    return new PlannedExample(run, plan);
  }

  int exitCode() {
    return run.code();
  }

  JsonNode json() {
    return plan;
  }

  JsonNode joint(String name) {
    return named(plan.get("joints"), "name", name);
  }

  JsonNode run(String name) {
    return named(plan.get("runs"), "name", name);
  }

  /** The verdict of a machine for a joint. */
  String verdict(String machine, String joint) {
    JsonNode verdicts = named(plan.get("machines"), "name", machine).get("verdicts");
    return named(verdicts, "joint", joint).get("verdict").asText();
  }

  /** Number of the step whose id begins so; the first of them. */
  int step(String idBegin) {
    return steps(idBegin).stream().mapToInt(Integer::intValue).min().orElseThrow();
  }

  /** Numbers of all steps whose id begins so. */
  List<Integer> steps(String idBegin) {
    List<Integer> numbers = new ArrayList<>();
    for (JsonNode operation : plan.get("operations")) {
      if (operation.get("id").asText().startsWith(idBegin)) {
        numbers.add(operation.get("number").asInt());
      }
    }
    assertThat(numbers).as("steps %s in %s", idBegin, ids()).isNotEmpty();
    return numbers;
  }

  /** Number of the last step of these. */
  int lastStep(String idBegin) {
    return steps(idBegin).stream().mapToInt(Integer::intValue).max().orElseThrow();
  }

  List<String> texts(JsonNode list, String field) {
    return StreamSupport.stream(list.spliterator(), false).map(n -> n.get(field).asText()).toList();
  }

  private List<String> ids() {
    return texts(plan.get("operations"), "id");
  }

  private static JsonNode named(JsonNode list, String field, String name) {
    return StreamSupport.stream(list.spliterator(), false)
        .filter(node -> node.get(field).asText().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + name));
  }
}
