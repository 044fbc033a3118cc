package org.counterpull.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.feeding.ShieldingGas;
import org.counterpull.machine.JointKind;
import org.counterpull.machine.Machine;
import org.counterpull.machine.Panel;
import org.counterpull.machine.PlateText;
import org.counterpull.machine.WeldTask;
import org.counterpull.position.WeldingPosition;
import org.counterpull.power.Conversion;
import org.counterpull.power.PlateDuty;
import org.counterpull.quantity.LengthUnit;
import org.counterpull.quantity.QuantityParser;
import picocli.CommandLine.Option;

/** A machine and a question for it, given as options. */
final class MachineOptions {
  private static final double SMALLEST_CURRENT_A = 30;
  private static final double AMBIENT_C = 20;

  @Option(
      names = "--process",
      paramLabel = "WORD",
      split = ",",
      description = "mma, mag, mig, fcaw, fcaw-s or tig; several with commas")
  private List<String> processes = List.of();

  @Option(names = "--max-current", paramLabel = "A", description = "largest current, such as 140")
  private String maxCurrent;

  @Option(
      names = "--min-current",
      paramLabel = "A",
      description = "smallest current; 30 A if left out")
  private String minCurrent;

  @Option(
      names = "--duty",
      paramLabel = "DUTY",
      description = "points of its plate: \"20%% at 90 A\"")
  private String duty;

  @Option(
      names = "--supply",
      paramLabel = "SUPPLY",
      description = "\"120 V 20 A\", \"400 V 16 A three-phase\"")
  private String supply;

  @Option(
      names = "--lead",
      paramLabel = "LEAD",
      description = "extension lead: \"25 m 2.5 mm2\" or \"50 ft 12 AWG\"")
  private String lead;

  @Option(
      names = "--plain",
      description = "no power factor correction: 0.80/0.70 instead of 0.85/0.99")
  private boolean plain;

  @Option(
      names = "--wire",
      paramLabel = "MM",
      split = ",",
      description = "wire diameters at hand; 0.8 if left out")
  private List<String> wires = List.of();

  @Option(
      names = "--electrode",
      paramLabel = "MM",
      split = ",",
      description = "covered electrodes at hand")
  private List<String> electrodes = List.of();

  @Option(names = "--gas", paramLabel = "GAS", description = "Ar + 18 CO2 if left out")
  private String gas;

  @Option(
      names = "--thickness",
      paramLabel = "LENGTH",
      description = "thickness of the parts, such as \"1/2 in\"")
  private String thickness;

  @Option(names = "--bar", paramLabel = "SIDES", description = "the parts are bars: \"1/2 x 2 in\"")
  private String bar;

  @Option(
      names = "--joint",
      paramLabel = "KIND",
      description = "tee (as if left out), butt, corner or lap")
  private String joint = "tee";

  @Option(
      names = "--leg",
      paramLabel = "LENGTH",
      description = "fillet leg; the least for the thickness if left out")
  private String leg;

  @Option(
      names = "--position",
      paramLabel = "PA..PG",
      description = "ISO 6947; PB for fillets, PA for butts if left out")
  private String position;

  /** True when a machine is described. */
  boolean given() {
    return !processes.isEmpty() || maxCurrent != null || duty != null || supply != null;
  }

  /** Thickness asked about, mm; that of the bar where only a bar is given. */
  double thicknessMm() {
    if (thickness == null && bar == null) {
      throw missing("--thickness", "\"1/2 in\"");
    }
    return thickness == null
        ? barSection().orElseThrow().thicknessMm()
        : read("--thickness", thickness, text -> QuantityParser.parseSizeMm(text, LengthUnit.MM));
  }

  /** The machine. */
  Machine machine() {
    List<WeldingProcess> understood = understood();
    double largest =
        read(
            "--max-current",
            required("--max-current", maxCurrent, "140"),
            QuantityParser::parseCurrentA);
    double smallest =
        minCurrent == null
            ? Math.min(SMALLEST_CURRENT_A, largest)
            : read("--min-current", minCurrent, QuantityParser::parseCurrentA);
    PlateDuty plate =
        new PlateDuty(read("--duty", required("--duty", duty, "\"20% at 90 A\""), PlateText::duty));
    ShieldingGas bottle =
        gas == null ? ShieldingGas.ARGON_18_CO2 : read("--gas", gas, PlateText::gas);
    return new Machine(
        Math.round(largest)
            + " A "
            + String.join("/", understood.stream().map(WeldingProcess::word).toList()),
        understood,
        smallest,
        largest,
        plate,
        read("--supply", required("--supply", supply, "\"230 V 16 A\""), PlateText::supply),
        plain ? Conversion.PLAIN : Conversion.CORRECTED,
        sizes("--wire", wires.isEmpty() ? List.of("0.8") : wires),
        sizes("--electrode", electrodes),
        bottle,
        List.of(),
        lead == null ? Optional.empty() : Optional.of(read("--lead", lead, PlateText::lead)),
        Panel.PLAIN);
  }

  private List<WeldingProcess> understood() {
    if (processes.isEmpty()) {
      throw missing("--process", "mag");
    }
    return processes.stream().map(ProcessOption::parse).toList();
  }

  /** The question. */
  WeldTask task() {
    JointKind kind =
        Arrays.stream(JointKind.values())
            .filter(k -> k.word().equalsIgnoreCase(joint))
            .findFirst()
            .orElseThrow(
                () ->
                    new BadInput(
                        "--joint: there is no \"" + joint + "\"\nTry: tee, butt, corner or lap"));
    WeldingPosition lies =
        position == null
            ? (kind.isFillet() ? WeldingPosition.PB : WeldingPosition.PA)
            : WeldingPosition.parse(position)
                .orElseThrow(
                    () ->
                        new BadInput(
                            "--position: there is no \""
                                + position
                                + "\"\nTry: PA, PB, PC, PD, PE, PF or PG"));
    OptionalDouble wanted =
        leg == null
            ? OptionalDouble.empty()
            : OptionalDouble.of(
                read("--leg", leg, text -> QuantityParser.parseSizeMm(text, LengthUnit.MM)));
    return new WeldTask(
        kind,
        thicknessMm(),
        thicknessMm(),
        wanted,
        lies,
        AMBIENT_C,
        OptionalDouble.empty(),
        barSection());
  }

  private Optional<org.counterpull.machine.BarSection> barSection() {
    return bar == null ? Optional.empty() : Optional.of(read("--bar", bar, PlateText::bar));
  }

  private static List<Double> sizes(String option, List<String> texts) {
    List<Double> sizes = new ArrayList<>();
    for (String text : texts) {
      sizes.add(read(option, text, t -> QuantityParser.parseSizeMm(t, LengthUnit.MM)));
    }
    return sizes;
  }

  private static String required(String option, String text, String example) {
    if (text == null) {
      throw missing(option, example);
    }
    return text;
  }

  private static BadInput missing(String option, String example) {
    return new BadInput(option + " is missing\nTry: " + option + " " + example);
  }

  private static <T> T read(String option, String text, Function<String, T> reader) {
    try {
      return reader.apply(text);
    } catch (IllegalArgumentException e) {
      throw new BadInput(option + ": " + e.getMessage().replace(". Try: ", "\nTry: "));
    }
  }
}
