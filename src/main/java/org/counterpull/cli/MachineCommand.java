package org.counterpull.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.counterpull.machine.Machine;
import org.counterpull.machine.MachineAssessor;
import org.counterpull.machine.MachineVerdict;
import org.counterpull.machine.Verdict;
import org.counterpull.machine.WeldTask;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Tells whether a machine can weld a thickness. */
@Command(
    name = "machine",
    mixinStandardHelpOptions = true,
    description = "Tells whether a machine can weld a thickness, and what would change it.",
    footer = {
      "%nExample:",
      "  counterpull machine --process mag --max-current 140 --duty \"20%% at 90 A\"",
      "      --supply \"120 V 20 A\" --thickness \"1/2 in\""
    })
final class MachineCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @ArgGroup(exclusive = false, heading = "A machine and a question:%n")
  private MachineOptions options = new MachineOptions();

  @Option(names = "--json", description = "answer as JSON")
  private boolean json;

  @Override
  public Integer call() {
    Machine machine = options.machine();
    WeldTask task = options.task();
    MachineVerdict verdict = MachineAssessor.assess(machine, task);
    List<MachineVerdict> table = MachineAssessor.table(machine, machine.processes().get(0), task);
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      ObjectNode node = VerdictText.json(verdict);
      ArrayNode rows = node.putArray("table");
      table.forEach(row -> rows.add(VerdictText.json(row)));
      out.println(JsonText.write(node));
    } else {
      VerdictText.print(out, verdict);
      VerdictText.printTable(out, table);
    }
    return refused(verdict) ? ExitCode.REFUSED : ExitCode.DONE;
  }

  static boolean refused(MachineVerdict verdict) {
    return verdict.verdict() == Verdict.TACK_ONLY || verdict.verdict() == Verdict.NO;
  }
}
