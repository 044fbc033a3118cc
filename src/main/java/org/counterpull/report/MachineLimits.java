package org.counterpull.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.machine.GateResult;
import org.counterpull.machine.GateResult.Outcome;
import org.counterpull.machine.MachineVerdict;
import org.counterpull.machine.Verdict;
import org.counterpull.plan.Plan;
import org.counterpull.quantity.Printed;
import org.counterpull.weldment.ShopMachine;

/** What each machine of the shop can't do and what it would need, and who welds what, in words. */
final class MachineLimits {
  private final Plan plan;
  private final Measures measures;

  MachineLimits(Plan plan, Measures measures) {
    this.plan = plan;
    this.measures = measures;
  }

  /** Sentences, machine by machine in the order of the file; the split of the work last. */
  List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    for (ShopMachine machine : plan.weldment().machines()) {
      limits(machine).ifPresent(sentences::add);
      answers(machine).forEach((answer, joints) -> sentences.add(joints + ": " + answer));
    }
    split().ifPresent(sentences::add);
    return sentences;
  }

  private List<MachineVerdict> verdicts(ShopMachine machine) {
    return plan.joints().stream()
        .flatMap(joint -> Verdicts.of(machine.machine().name(), joint).stream())
        .toList();
  }

  private static String where(ShopMachine machine) {
    String name = machine.machine().name();
    return machine.place().equals(ShopMachine.HERE)
        ? name + " (here)"
        : name + " (" + machine.place() + ")";
  }

  /** What it gives, and how thick that reaches. */
  private Optional<String> limits(ShopMachine machine) {
    List<MachineVerdict> verdicts = verdicts(machine);
    if (verdicts.isEmpty()) {
      return Optional.empty();
    }
    MachineVerdict any = verdicts.get(0);
    double usableA = any.gate("electrical").figure("usable current");
    double coldUpTo =
        verdicts.stream().mapToDouble(MachineVerdict::notChilledUpToMm).max().orElseThrow();
    String cold =
        Double.isInfinite(coldUpTo)
            ? "its first pass is not chilled on any thickness here"
            : coldUpTo > 0
                ? "above " + measures.length(coldUpTo).text() + " cold parts chill its first pass"
                : "cold parts chill its first pass on any thickness";
    return Optional.of(
        where(machine)
            + " gives "
            + Printed.quantity(Math.round(usableA), "A")
            + " on its socket: one pass melts through "
            + measures.length(any.fusedInOnePassMm()).text()
            + " of square edge, and "
            + cold
            + ".");
  }

  /** What it can make of the joints, with joints of one answer together. */
  private Map<String, String> answers(ShopMachine machine) {
    Map<String, List<String>> byAnswer = new LinkedHashMap<>();
    for (JointPlan joint : plan.joints()) {
      Verdicts.of(machine.machine().name(), joint)
          .ifPresent(
              v ->
                  byAnswer
                      .computeIfAbsent(answer(v), k -> new ArrayList<>())
                      .add(joint.joint().name()));
    }
    Map<String, String> answers = new LinkedHashMap<>();
    byAnswer.forEach(
        (answer, joints) ->
            answers.put(answer, machine.machine().name() + " on " + String.join(", ", joints)));
    return answers;
  }

  private String answer(MachineVerdict verdict) {
    boolean refused = verdict.verdict() == Verdict.TACK_ONLY || verdict.verdict() == Verdict.NO;
    return refused ? refusal(verdict) : Verdicts.words(verdict.verdict()) + help(verdict);
  }

  private String refusal(MachineVerdict verdict) {
    List<GateResult> shut =
        verdict.gates().stream().filter(g -> g.outcome() == Outcome.SHUT).toList();
    String why = shut.stream().map(GateResult::why).collect(Collectors.joining("; "));
    String needs =
        shut.stream()
            .map(GateResult::wouldChange)
            .filter(w -> !w.isEmpty())
            .collect(Collectors.joining("; "));
    return Verdicts.words(verdict.verdict())
        + ": "
        + why
        + ", and the thicker part has "
        + measures.length(verdict.task().thickerMm()).text()
        + ". To weld it here it takes "
        + needs
        + also(verdict)
        + ".";
  }

  /** What else stands in the way once the shut gate is open. */
  private String also(MachineVerdict verdict) {
    List<String> also = helps(verdict);
    return also.isEmpty() ? "" : ", and then still " + String.join(" and ", also);
  }

  private String help(MachineVerdict verdict) {
    List<String> helps = helps(verdict);
    return (helps.isEmpty() ? "" : ": " + String.join(", ", helps)) + ".";
  }

  private List<String> helps(MachineVerdict verdict) {
    List<String> helps = new ArrayList<>();
    if (verdict.preheatC().isPresent()) {
      helps.add(
          "a preheat of "
              + measures.temperature(verdict.preheatC().getAsDouble()).text()
              + " against chilling");
    }
    int passes = verdict.preparation().passes();
    if (passes > 1) {
      helps.add(passes + " passes");
    }
    if (!verdict.gate("fusion").passed() && verdict.gate("fusion").outcome() != Outcome.SHUT) {
      helps.add("edges: " + verdict.preparation().words());
    }
    return helps;
  }

  /** Where the work goes: empty where one machine does all of it at the bench. */
  private Optional<String> split() {
    Map<String, List<RunPlan>> byMachine = new LinkedHashMap<>();
    for (RunPlan run : plan.runs()) {
      byMachine.computeIfAbsent(run.machine(), k -> new ArrayList<>()).add(run);
    }
    boolean allHere = plan.runs().stream().allMatch(r -> r.place().equals(ShopMachine.HERE));
    if (plan.runs().isEmpty() || allHere) {
      return Optional.empty();
    }
    List<String> shares = new ArrayList<>();
    byMachine.forEach(
        (machine, runs) ->
            shares.add(
                machine
                    + " ("
                    + runs.get(0).place()
                    + ") welds "
                    + runs.size()
                    + (runs.size() == 1 ? " run, " : " runs, ")
                    + minutes(runs)
                    + " of arc"));
    return Optional.of("The split: " + tacks() + String.join("; ", shares) + ".");
  }

  private static String minutes(List<RunPlan> runs) {
    double seconds = runs.stream().mapToDouble(RunPlan::arcTimeS).sum();
    return seconds < 90 ? Math.round(seconds) + " s" : Math.round(seconds / 60) + " min";
  }

  /** The first machine at the bench that can at least tack every joint. */
  private String tacks() {
    return plan.weldment().machines().stream()
        .filter(m -> m.place().equals(ShopMachine.HERE))
        .filter(m -> verdicts(m).stream().noneMatch(v -> v.verdict() == Verdict.NO))
        .findFirst()
        .map(
            m ->
                "cut, fit and tack at the bench with "
                    + m.machine().name()
                    + ", tacks at the preheat of their steps; then ")
        .orElse("");
  }
}
