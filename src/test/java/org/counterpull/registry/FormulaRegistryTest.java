package org.counterpull.registry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class FormulaRegistryTest {

  /** Each value stands in the tests of its package with its source; here the path from text. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "heat-input | efficiency=0.8;voltage=24;current=200;travel-speed=5 | 0.7680 | kJ/mm | 5e-5",
        "heat-input | efficiency=80%;voltage=24 V;current=200 A;travel-speed=30 cm/min | 0.7680"
            + " | kJ/mm | 5e-5",
        "t85 | heat-input=1;thickness=10;preheat=20 | 11.36 | s | 0.005",
        "t85 | heat-input=1.2;thickness=25 mm;preheat=68 F;f2=0.45;f3=0.67 | 4.252 | s | 5e-4",
        "ce-iiw | C=.25;Si=.40;Mn=1.0;Cu=.20 | 0.430 | % | 5e-4",
        "cet | C=.25;Si=.40;Mn=1.0;Cu=.20 | 0.360 | % | 5e-4",
        "pcm | C=.13;Si=.18;Mn=.70;Cu=.15;Ni=.06;Cr=.06 | 0.182 | % | 5.01e-4",
        "preheat-cet | cet=0.34;thickness=30;hydrogen=5;heat-input=1.5 | 108.1 | C | 0.05",
        "preheat-cet | cet=0.34;thickness=30;hydrogen=5 ml/100 g;heat-input=1500 J/mm | 108.1"
            + " | C | 0.05",
        "haz-hardness | C=.15;Si=.30;Mn=1.40;t85=5 | 340.0 | HV10 | 0.05",
        "moving-point-source | power=3600;travel-speed=5;conductivity=0.025;heat-capacity=0.005;"
            + "x=-10;y=8;z=0 | 439.9 | K | 0.05",
        "moving-line-source | power=3.6 kW;travel-speed=5;conductivity=25 W/mK;"
            + "heat-capacity=0.005;thickness=5;x=-10;y=8 | 548.0 | K | 0.05",
        "peak-temperature | net-heat-input=720;thickness=5;distance=3;preheat=25;melting=1510;"
            + "heat-capacity=0.0044 | 975.6 | C | 0.05",
        "section-mass | stock=flat 60 x 10;length=1 m | 4.71 | kg | 1e-9",
        "section-mass | stock=round tube 48.3 x 3.2;length=1000 | 3.559 | kg | 5e-4",
        "section-mass | stock=plate 8;width=1/2 in;length=1000 | 0.79756 | kg | 1e-9"
      })
  void fromTextToValue(String name, String arguments, double value, String unit, double within) {
    Answer answer = FormulaRegistry.find(name).orElseThrow().evaluate(map(arguments));
    assertThat(answer.result().value()).isCloseTo(value, within(within));
    assertThat(answer.result().unit()).isEqualTo(unit);
    assertThat(answer.result().formula().name()).isEqualTo(name);
    assertThat(answer.result().inRange()).isTrue();
  }

  @Test
  void hardnessShowsItsMethods() {
    Answer answer =
        FormulaRegistry.find("haz-hardness")
            .orElseThrow()
            .evaluate(map("C=.15;Si=.30;Mn=1.40;t85=5"));
    assertThat(answer.methods()).containsOnlyKeys("duren", "yurioka", "suzuki-bl70s");
    assertThat(answer.spread().orElseThrow()).isCloseTo(23.0, within(0.1));
  }

  @Test
  void outsideItsRangeAFormulaStillAnswers() {
    Answer answer =
        FormulaRegistry.find("preheat-cet")
            .orElseThrow()
            .evaluate(map("cet=0.6;thickness=5;hydrogen=5;heat-input=1"));
    assertThat(answer.result().inRange()).isFalse();
    assertThat(answer.result().value()).isFinite();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "t85 | heat-input=1;thicknes=10;preheat=20 | \"thicknes\" is no argument of this formula |"
            + " did you mean thickness",
        "t85 | heat-input=1;thickness=10 | preheat is missing: preheat or interpass temperature |"
            + " preheat=150 C",
        "t85 | heat-input=1;thickness=10 A;preheat=20 | thickness: \"A\" in \"10 A\" is no unit of"
            + " length | 12 mm, 1/2 in or 1-1/4 in (units: mm, cm, m, in, ft)",
        "t85 | heat-input=1;thickness=0;preheat=20 | thickness is 0 mm: it must be a finite number above 0 |"
            + " what is listed by: formula show t85",
        "section-mass | stock=plate 8;length=1 m | a plate needs a width | stock=\"plate 300 x 8\"",
        "section-mass | stock=flta 60 x 8;length=1 m | stock: \"flta\" is no shape of stock | did"
            + " you mean flat; such as flat 60 x 10",
        "section-mass | stock=flat 60 x 8;width=3;length=1 m | flat 60 x 8 has its width already |"
            + " leave width out"
      })
  void wrongArgumentsSayWhatToWrite(String name, String given, String problem, String tryThis) {
    assertThatThrownBy(() -> FormulaRegistry.find(name).orElseThrow().evaluate(map(given)))
        .isInstanceOfSatisfying(
            ArgumentException.class,
            e -> {
              assertThat(e.problem()).isEqualTo(problem);
              assertThat(e.tryThis()).isEqualTo(tryThis);
            });
  }

  @ParameterizedTest
  @MethodSource("all")
  void everyFormulaIsDocumented(PublishedFormula published) {
    assertThat(published.name()).matches("[a-z0-9-]+");
    assertThat(published.formula().source()).isNotBlank();
    assertThat(published.formula().gives()).isNotBlank();
    assertThat(published.arguments()).isNotEmpty();
    assertThat(published.arguments().stream().map(Argument::name)).doesNotHaveDuplicates();
    assertThat(published.arguments()).allSatisfy(a -> assertThat(a.meaning()).isNotBlank());
  }

  static Stream<PublishedFormula> all() {
    return FormulaRegistry.all().stream();
  }

  @Test
  void nearNames() {
    assertThat(FormulaRegistry.find("t58")).isEmpty();
    assertThat(FormulaRegistry.near("t58")).contains("t85");
    assertThat(FormulaRegistry.near("heat-imput")).containsExactly("heat-input");
  }

  private static Map<String, String> map(String arguments) {
    Map<String, String> map = new HashMap<>();
    for (String argument : arguments.split(";")) {
      String[] parts = argument.split("=", 2);
      map.put(parts[0].strip(), parts[1].strip());
    }
    return map;
  }
}
