package org.counterpull.machine;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What a machine can do with a weld, and on what grounds.
 *
 * @param verdict the answer
 * @param machine name of the machine
 * @param task what was asked
 * @param point how the machine is set
 * @param gates the five gates
 * @param preparation edges and passes
 * @param preheatC preheat of the first pass, C; empty where none is needed
 * @param arcTimeSPerM arc time of a metre of weld, s
 * @param waitSPerM pauses that the duty cycle asks for on a metre of weld, s
 * @param fusedInOnePassMm thickness fused in one pass at full output, mm
 * @param notChilledUpToMm thickness up to which a first pass is not chilled, mm; infinite above 20
 * @param notes what else must be known, in sentences
 */
public record MachineVerdict(
    Verdict verdict,
    String machine,
    WeldTask task,
    WorkingPoint point,
    List<GateResult> gates,
    PreparationChoice preparation,
    OptionalDouble preheatC,
    double arcTimeSPerM,
    double waitSPerM,
    double fusedInOnePassMm,
    double notChilledUpToMm,
    List<String> notes) {

  public MachineVerdict {
    gates = List.copyOf(gates);
    notes = List.copyOf(notes);
  }

  /** A gate by its name. */
  public GateResult gate(String name) {
    return gates.stream()
        .filter(gate -> gate.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no gate '" + name + "'"));
  }

  /** What would change the verdict, gate by gate; empty where every gate is open. */
  public List<String> whatWouldChangeIt() {
    return gates.stream()
        .filter(gate -> !gate.passed())
        .map(gate -> gate.name() + ": " + gate.wouldChange())
        .toList();
  }
}
