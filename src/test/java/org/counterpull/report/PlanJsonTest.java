package org.counterpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.counterpull.plan.Plan;
import org.counterpull.quantity.LengthUnit;
import org.junit.jupiter.api.Test;

/** plan.json: its schema, its numbers, its order. */
class PlanJsonTest {
  private static String json(Plan plan) {
    return new PlanReport(plan, LengthUnit.MM).json();
  }

  private static Schema schema() throws IOException {
    try (InputStream in = PlanJsonTest.class.getResourceAsStream("/schema/plan.schema.json")) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
  }

  @Test
  void obeysItsSchema() throws IOException {
    Schema schema = schema();
    for (Plan plan : List.of(SamplePlan.usual(), SamplePlan.refused(), SamplePlan.hostile())) {
      assertThat(schema.validate(json(plan), InputFormat.JSON)).isEmpty();
    }
  }

  @Test
  void theSchemaIsStrict() throws IOException {
    String renamed = json(SamplePlan.usual()).replaceFirst("\"inRange\"", "\"within\"");
    assertThat(schema().validate(renamed, InputFormat.JSON)).isNotEmpty();
  }

  @Test
  void isTheSameToTheByte() {
    assertThat(json(SamplePlan.usual())).isEqualTo(json(SamplePlan.usual()));
  }

  @Test
  void saysRefusalsFirstAndHoldsAllParts() throws IOException {
    JsonNode plan = new ObjectMapper().readTree(json(SamplePlan.refused()));
    List<String> keys = new ArrayList<>();
    plan.fieldNames().forEachRemaining(keys::add);
    assertThat(keys)
        .containsExactly(
            "refusals",
            "cautions",
            "weldment",
            "seed",
            "assumptions",
            "joints",
            "runs",
            "preheat",
            "machines",
            "operations",
            "precedence",
            "orderReasons",
            "consumables",
            "cost",
            "checks",
            "heat",
            "practice",
            "formulas");
    assertThat(plan.get("runs")).hasSize(20);
    assertThat(plan.get("runs").get(19).get("number").asInt()).isEqualTo(20);
    assertThat(plan.get("checks").get(0).get("expected").isNull()).isTrue();
    assertThat(plan.get("checks").get(1).get("expected").asDouble()).isEqualTo(0.31);
    assertThat(plan.get("machines").get(0).get("verdicts")).hasSize(plan.get("joints").size());
    assertThat(plan.get("machines").get(0).get("verdicts").get(0).get("gates")).hasSize(5);
  }

  @Test
  void roundsToSixDigitsAndWritesNoExponent() throws IOException {
    String text = json(SamplePlan.usual());
    JsonNode plan = new ObjectMapper().readTree(text);
    // 46.44444444 kg to six significant digits is 46.4444
    assertThat(plan.get("consumables").get("massKg").get("value").asText()).isEqualTo("46.4444");
    // 12.0000004 m/min to six significant digits is 12
    JsonNode pass = plan.get("runs").get(0).get("passes").get(0);
    assertThat(pass.get("wireFeed").get("value").asText()).isEqualTo("12");
    assertThat(text).doesNotContainPattern(": -?[0-9.]+[eE]").doesNotContain("\r");
  }

  @Test
  void warnsOnlyWhereARangeWasLeft() throws IOException {
    JsonNode pass = new ObjectMapper().readTree(json(SamplePlan.usual())).at("/runs/0/passes/0");
    assertThat(pass.get("heatInput").has("warnings")).isFalse();
    assertThat(pass.get("heatInput").get("inRange").asBoolean()).isTrue();
    assertThat(pass.get("coolingTime").get("inRange").asBoolean()).isFalse();
    assertThat(pass.get("coolingTime").get("warnings")).hasSize(1);
  }
}
