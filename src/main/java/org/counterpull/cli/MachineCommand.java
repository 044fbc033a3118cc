package org.counterpull.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.counterpull.contact.Contact;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.JointPlanner;
import org.counterpull.machine.Machine;
import org.counterpull.machine.MachineAssessor;
import org.counterpull.machine.MachineVerdict;
import org.counterpull.machine.Verdict;
import org.counterpull.machine.WeldTask;
import org.counterpull.procedure.ProcedureLibrary;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
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

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "FILE",
      description = "a weldment file: each of its machines is asked for each of its joints")
  private Path file;

  @ArgGroup(exclusive = false, heading = "A machine and a question:%n")
  private MachineOptions options = new MachineOptions();

  @Option(names = "--json", description = "answer as JSON")
  private boolean json;

  @Override
  public Integer call() {
    if (file != null) {
      if (options.given()) {
        throw new BadInput(
            "a file and a machine in options were both given\nTry: one of the two, so that it is clear"
                + " what is asked");
      }
      return ofFile();
    }
    Machine machine = options.machine();
    WeldTask task = options.task();
    List<MachineVerdict> each =
        machine.processes().stream().map(p -> MachineAssessor.assess(machine, p, task)).toList();
    MachineVerdict verdict = MachineAssessor.assess(machine, task);
    List<MachineVerdict> table = MachineAssessor.table(machine, verdict.point().process(), task);
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      ObjectNode node = VerdictText.json(verdict);
      ArrayNode others = node.putArray("processes");
      each.forEach(one -> others.add(VerdictText.json(one)));
      ArrayNode rows = node.putArray("table");
      table.forEach(row -> rows.add(VerdictText.json(row)));
      out.println(JsonText.write(node));
    } else {
      each.forEach(one -> VerdictText.print(out, one));
      VerdictText.printTable(out, table);
    }
    return refused(verdict) ? ExitCode.REFUSED : ExitCode.DONE;
  }

  /** Every machine of a file for every joint of it. */
  private int ofFile() {
    SoundWeldment sound = SoundWeldment.read(file);
    JointPlanner planner = new JointPlanner(sound.weldment(), ProcedureLibrary.bundled());
    PrintWriter out = spec.commandLine().getOut();
    ArrayNode joints = JsonText.array();
    boolean allWelded = true;
    for (Contact contact : sound.contacts()) {
      JointPlan joint = planner.plan(sound.weldment().joint(contact.joint()), contact);
      allWelded &= joint.machine().isPresent();
      ObjectNode node = joints.addObject();
      node.put("joint", contact.joint());
      node.put("machine", joint.machine().orElse(null));
      ArrayNode verdicts = node.putArray("verdicts");
      joint.verdicts().forEach(verdict -> verdicts.add(VerdictText.json(verdict)));
      if (!json) {
        out.println("joint " + contact.joint() + ": " + joint.machine().orElse("no machine here"));
        joint.verdicts().forEach(verdict -> VerdictText.print(out, verdict));
        out.println();
      }
    }
    if (json) {
      ObjectNode node = JsonText.object();
      node.set("joints", joints);
      out.println(JsonText.write(node));
    }
    return allWelded ? ExitCode.DONE : ExitCode.REFUSED;
  }

  static boolean refused(MachineVerdict verdict) {
    return verdict.verdict() == Verdict.TACK_ONLY || verdict.verdict() == Verdict.NO;
  }
}
