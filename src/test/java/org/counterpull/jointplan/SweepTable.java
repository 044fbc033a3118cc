package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.counterpull.jointplan.EdgePreparation.Kind;
import org.counterpull.jointplan.SweepBench.Form;
import org.counterpull.jointplan.SweepBench.Row;
import org.counterpull.jointplan.SweepBench.Stand;
import org.counterpull.machine.GateResult;

/** The table over thickness, joint, process and position, for docs. */
final class SweepTable {
  private static final String HEAD =
      """
      # Joint plans from 2 to 30 mm

      Written by `JointSweepTest`: S355J2 on both parts, machines that reach 300 A with solid and cored wire, 180 A with
      self-shielded wire and with stick, 220 A with TIG, a grinder for the edges. Each cell: preparation, passes of each run
      (the side that is welded first stands first), preheat, arc energy of the passes.

      What a form is: `fillet`; `square` edges, with the gap; `V`, `bevel` with depth and angle (included for V, of the edge for
      bevel); `2V`, `2bevel` from both sides with both depths; `steep V`, `steep bevel` on a backing strip. A dash means that
      this machine does not weld it; what stands in the way is said below the table, and what would change it in the plan.

      Where the table is not monotone:

      - **Fewer passes from 10 to 12 mm of a butt from both sides**: up to 10 mm one groove is filled and its root gouged and
        sealed; above, two grooves of half the depth take about half the metal.
      - **Fewer passes at 12 mm of a full penetration tee**: the same, a double bevel follows the bevel.
      - **More passes from 15 to 20 mm from one side**: above 16 mm a backing strip carries the root, and its wide gap takes
        more metal than an open root.
      - **Fillets stand still between 6 and 12, and between 12 and 20 mm**: without a load the leg is the least of AWS D1.1 for
        the thickness, which goes in steps.
      - **Energy of a pass falls where a joint goes from one pass to two**: the same metal is shared.
      - **Preheat rises overhead**: the machine is set cooler there, and a smaller heat input asks for more. Cored and
        self-shielded wire bring more hydrogen than solid wire and basic electrodes, which asks for about 30 K more.
      - **Preheat begins at 10 mm**: method B holds from there. Thinner S355 is welded dry and not colder than 5 C. With
        stick, where no electrode is named, basic ones are planned wherever rutile would ask for preheat.
      - **Preheat of a groove may lie above that of a fillet of the same thickness**: its root is the pass with the least
        heat, and preheat goes by it; below 0.5 kJ/mm it is reckoned with 0.5, the edge of method B.
      - **Passes shift by one from position to position**: the largest bead is what current and slowest travel of the position
        give together.
      - **A corner stands alike in both lays that are not upright**: welded from outside it lies in PC either way.

      """;

  private SweepTable() {}

  static String of(List<Row> rows) {
    StringBuilder text = new StringBuilder(HEAD);
    for (Form form : Form.values()) {
      text.append("## ")
          .append(form.words.substring(0, 1).toUpperCase(Locale.ROOT))
          .append(form.words.substring(1))
          .append("\n\n");
      for (Stand stand : Stand.values()) {
        table(text, rows, form, stand);
      }
    }
    return text.toString().stripTrailing() + "\n";
  }

  private static void table(StringBuilder text, List<Row> rows, Form form, Stand stand) {
    List<Row> here = rows.stream().filter(r -> r.form() == form && r.stand() == stand).toList();
    List<String> machines = here.stream().map(Row::machine).distinct().toList();
    String positions =
        here.stream()
            .flatMap(r -> r.plan().runs().stream())
            .map(run -> run.position().name())
            .collect(Collectors.toCollection(TreeSet::new))
            .stream()
            .collect(Collectors.joining(", "));
    text.append("### ").append(stand.words).append(" (").append(positions).append(")\n\n");
    text.append("| mm | ").append(String.join(" | ", machines)).append(" |\n|---:|");
    text.append("---|".repeat(machines.size())).append('\n');
    for (int t : SweepBench.THICKNESSES_MM) {
      text.append("| ").append(t).append(" |");
      for (String machine : machines) {
        here.stream()
            .filter(r -> r.thicknessMm() == t && r.machine().equals(machine))
            .forEach(r -> text.append(' ').append(cell(r.plan())).append(" |"));
      }
      text.append('\n');
    }
    text.append('\n');
    for (String machine : machines) {
      here.stream()
          .filter(r -> r.machine().equals(machine) && r.plan().runs().isEmpty())
          .findFirst()
          .ifPresent(r -> text.append(refused(r)));
    }
  }

  /** Why the first dash of a machine stands there; what is thicker meets the same. */
  private static String refused(Row row) {
    String why =
        row.plan().verdicts().get(0).gates().stream()
            .filter(gate -> gate.outcome() == GateResult.Outcome.SHUT)
            .map(GateResult::why)
            .distinct()
            .collect(Collectors.joining("; "));
    return "`" + row.machine() + "` from " + row.thicknessMm() + " mm: " + why + ".\n\n";
  }

  private static String cell(JointPlan plan) {
    if (plan.runs().isEmpty()) {
      return "-";
    }
    List<String> words = new ArrayList<>();
    words.add(edges(plan));
    words.add(
        plan.runs().stream()
                .map(run -> String.valueOf(run.passes().size()))
                .collect(Collectors.joining("+"))
            + (plan.runs().stream().mapToInt(r -> r.passes().size()).sum() == 1
                ? " pass"
                : " passes"));
    if (plan.preheat().value() > 20.5) {
      words.add(Math.round(plan.preheat().value()) + " C");
    }
    double low = energies(plan).stream().mapToDouble(e -> e).min().orElseThrow();
    double high = energies(plan).stream().mapToDouble(e -> e).max().orElseThrow();
    words.add(
        high - low < 0.05
            ? String.format(Locale.ROOT, "%.1f kJ/mm", high)
            : String.format(Locale.ROOT, "%.1f to %.1f kJ/mm", low, high));
    return String.join(", ", words);
  }

  private static List<Double> energies(JointPlan plan) {
    return plan.runs().stream()
        .flatMap(run -> run.passes().stream())
        .map(pass -> pass.arcEnergy().value())
        .toList();
  }

  private static String edges(JointPlan plan) {
    EdgePreparation p = plan.preparation();
    if (p.kind() == Kind.FILLET) {
      return String.format(Locale.ROOT, "z%.0f", plan.size().leg().orElseThrow().value());
    }
    String words = p.kind().words().replace("double ", "2").replaceFirst("\\bv$|(?<=2)v$", "V");
    if (p.kind() == Kind.SQUARE) {
      return String.format(Locale.ROOT, "square, gap %.1f", p.rootGapMm());
    }
    return p.secondDepthMm() > 0
        ? String.format(
            Locale.ROOT,
            "%s %.1f/%.1f %.0f°",
            words,
            p.firstDepthMm(),
            p.secondDepthMm(),
            p.angleDeg())
        : String.format(Locale.ROOT, "%s %.1f %.0f°", words, p.firstDepthMm(), p.angleDeg());
  }
}
