package org.counterpull.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.Contact;
import org.counterpull.contact.WeldLine;
import org.counterpull.quantity.Printed;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads a weldment file and says how its parts meet. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Reads a weldment file, says all that is wrong with it, or lists its runs.")
final class CheckCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "the weldment file, YAML or JSON")
  private Path file;

  @Option(names = "--json", description = "list joints and runs as JSON")
  private boolean json;

  @Override
  public Integer call() {
    SoundWeldment sound = SoundWeldment.read(file);
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.println(JsonText.write(described(sound)));
    } else {
      print(out, sound);
    }
    return ExitCode.DONE;
  }

  private static void print(PrintWriter out, SoundWeldment sound) {
    int lines = sound.contacts().stream().mapToInt(c -> c.lines().size()).sum();
    out.printf(
        "%s: %d parts, %d joints, %d lines that can be welded%n",
        sound.weldment().name(),
        sound.weldment().parts().size(),
        sound.weldment().joints().size(),
        lines);
    for (Contact contact : sound.contacts()) {
      out.printf(
          Locale.ROOT,
          "%n%s: %s, %s mm2 in contact%n",
          contact.joint(),
          contact.form().word(),
          Printed.number(contact.areaMm2(), 4));
      for (WeldLine line : contact.lines()) {
        out.printf(
            Locale.ROOT,
            "  %-26s %7.1f mm  %s %-26s %s%n",
            line.run(),
            line.path().lengthMm(),
            line.position().name(),
            line.position().meaning(),
            line.reach().open()
                ? ""
                : "out of reach: " + String.join(", ", line.reach().blockedBy()) + " in the way");
      }
    }
    if (!sound.weldment().assumptions().isEmpty()) {
      out.println("\nAssumed:");
      sound.weldment().assumptions().forEach(a -> out.println("  " + a.where() + ": " + a.what()));
    }
  }

  private static ObjectNode described(SoundWeldment sound) {
    ObjectNode node = JsonText.object();
    node.put("weldment", sound.weldment().name());
    ArrayNode joints = node.putArray("joints");
    ArrayNode runs = node.putArray("runs");
    for (Contact contact : sound.contacts()) {
      joints
          .addObject()
          .put("name", contact.joint())
          .put("form", contact.form().word())
          .put("contactAreaMm2", contact.areaMm2())
          .put("gapMm", contact.gapMm());
      for (WeldLine line : contact.lines()) {
        ObjectNode run = runs.addObject();
        run.put("name", line.run()).put("joint", line.joint()).put("side", line.side().word());
        point(run.putArray("from"), line.path().start());
        point(run.putArray("to"), line.path().end());
        point(run.putArray("direction"), line.path().tangent(line.path().lengthMm() / 2));
        run.put("lengthMm", line.path().lengthMm());
        run.put("position", line.position().name());
        run.put("dihedralDeg", line.dihedralDeg());
        run.put("gapMm", line.gapMm());
        run.put("reach", line.reach().share());
        line.reach().blockedBy().forEach(run.putArray("blockedBy")::add);
      }
    }
    ArrayNode assumptions = node.putArray("assumptions");
    sound
        .weldment()
        .assumptions()
        .forEach(a -> assumptions.addObject().put("where", a.where()).put("what", a.what()));
    return node;
  }

  private static void point(ArrayNode node, Vector3D point) {
    for (double coordinate : point.toArray()) {
      node.add(Math.round(coordinate * 1e6) / 1e6 + 0.0);
    }
  }
}
