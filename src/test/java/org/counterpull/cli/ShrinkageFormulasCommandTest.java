package org.counterpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import org.counterpull.registry.Argument;
import org.counterpull.registry.FormulaRegistry;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The shrinkage formulas as they are asked on the command line: names, arguments, units and values
 * are a promise to scripts. Values worked by hand from E 206 000, alpha 12e-6, c 4.90e-3.
 */
class ShrinkageFormulasCommandTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "tendon-force | net-heat-input=1000 | 169227.4 | N",
        // x = 8: 0.0233 (8/6.2) exp(1 - 8/6.2)
        "free-angle | net-heat-input=800 thickness=10 | 0.0224889 | rad",
        // x = 6, 8, 10: kappa 0.7664, 0.8872, 1.008
        "free-shrinkage | net-heat-input=600 thickness=10 | 0.1126139 | mm",
        "free-shrinkage | net-heat-input=800 thickness=10 | 0.1738188 | mm",
        "free-shrinkage | net-heat-input=1000 thickness=10 | 0.2468571 | mm",
        "butt-shrinkage-high | weld-area=95.28 thickness=12 gap=2 | 1.688 | mm",
        "butt-shrinkage-low | weld-area=95.28 thickness=12 gap=2 | 0.794 | mm",
        // 1 / (1 + 0.086 x 10^0.87)
        "restrained-shrinkage | restraint=10 | 0.610677 | 1",
        // 0.005 x 40 x 8000^2 x 100 / 5e7
        "weld-camber | weld-area=40 distance=100 length=8000 inertia=5e7 | 25.6 | mm",
        // 0.3354 alpha/c Q beta R / (2 h), beta = (3 (1 - 0.09))^(1/4) / sqrt(R h)
        "girth-shrinkage | net-heat-input=800 radius=47.5 thickness=5 | 0.260373 | mm",
        // 4 pi2 206 000 / (12 x 0.91) (6/600)^2
        "buckling-stress | coefficient=4 thickness=6 width=600 | 74.47394 | MPa",
        "tolerance | class=B length=1500 kind=linear | 4 | mm",
        "tolerance | class=C length=300 kind=angular | 60 | minutes",
        "tolerance | class=F length=1800 kind=straight | 4.5 | mm"
      })
  void valueAndUnit(String name, String arguments, double value, String unit) throws Exception {
    List<String> words = new ArrayList<>(List.of("formula", name));
    words.addAll(List.of(arguments.split(" ")));
    words.add("--json");
    CommandRun run = CommandRun.of(words.toArray(String[]::new));
    assertThat(run.code()).as(run.err()).isZero();
    JsonNode answer = new ObjectMapper().readTree(run.out());
    assertThat(answer.get("formula").asText()).isEqualTo(name);
    assertThat(answer.get("value").asDouble()).isCloseTo(value, within(5e-6 * value));
    assertThat(answer.get("unit").asText()).isEqualTo(unit);
    assertThat(answer.get("source").asText()).isNotBlank();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "tendon-force | net-heat-input",
        "free-angle | net-heat-input thickness",
        "free-shrinkage | net-heat-input thickness",
        "butt-shrinkage-high | weld-area thickness gap",
        "butt-shrinkage-low | weld-area thickness gap",
        "restrained-shrinkage | restraint",
        "weld-camber | weld-area distance length inertia",
        "girth-shrinkage | net-heat-input radius thickness",
        "buckling-stress | coefficient thickness width",
        "tolerance | class length kind"
      })
  void argumentsKeepTheirNames(String name, String arguments) {
    assertThat(FormulaRegistry.find(name).orElseThrow().arguments().stream().map(Argument::name))
        .containsExactly(arguments.split(" "));
  }
}
