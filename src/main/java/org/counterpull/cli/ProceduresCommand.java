package org.counterpull.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.counterpull.procedure.Procedure;
import org.counterpull.procedure.ProcedureBook;
import org.counterpull.procedure.ProcedureException;
import org.counterpull.procedure.ProcedureLibrary;
import org.counterpull.procedure.Range;
import org.counterpull.quantity.Printed;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Lists the starting settings with their sources. */
@Command(
    name = "procedures",
    mixinStandardHelpOptions = true,
    description = "Lists the starting settings that plans draw on, with their sources.")
final class ProceduresCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(
      names = "--process",
      paramLabel = "WORD",
      description = "only this process: mma, mag, mig, fcaw, fcaw-s, tig")
  private String process;

  @Option(
      names = "--procedures",
      paramLabel = "DIR",
      description = "a folder of your own rows; the same id overrides")
  private Path folder;

  @Option(names = "--json", description = "list as JSON")
  private boolean json;

  @Override
  public Integer call() {
    List<Procedure> rows = book(folder).rows().stream().filter(this::wanted).toList();
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      ArrayNode all = JsonText.array();
      rows.forEach(row -> all.add(described(row)));
      out.println(JsonText.write(all));
      return ExitCode.DONE;
    }
    for (Procedure row : rows) {
      out.printf(
          Locale.ROOT,
          "%-30s %-6s %-11s %s  %s mm  %s A  %s V  %s mm/s%n    %s%n",
          row.id(),
          row.scope().process().word(),
          row.scope().joint().word(),
          row.scope().position().name(),
          range(row.scope().thicknessMm()),
          range(row.settings().currentA()),
          range(row.settings().voltageV()),
          range(row.settings().travelMmPerS()),
          row.source());
    }
    out.println(rows.size() + " rows");
    return ExitCode.DONE;
  }

  /**
   * The bundled rows with a folder's own.
   *
   * @param folder of YAML rows; null for the bundled rows alone
   * @throws BadInput when the folder or a row can't be read
   */
  static ProcedureBook book(Path folder) {
    if (folder == null) {
      return ProcedureLibrary.bundled();
    }
    if (!Files.isDirectory(folder)) {
      throw new BadInput(
          "--procedures: " + folder + " is no folder\nTry: a folder with .yaml files");
    }
    try {
      return ProcedureLibrary.withFolder(ProcedureLibrary.bundled(), folder);
    } catch (IOException e) {
      throw new BadInput("--procedures: " + folder + " can't be read: " + e.getMessage());
    } catch (ProcedureException | IllegalArgumentException e) {
      throw new BadInput("--procedures: " + e.getMessage());
    }
  }

  private boolean wanted(Procedure row) {
    if (process == null) {
      return true;
    }
    return row.scope().process() == ProcessOption.parse(process);
  }

  private static ObjectNode described(Procedure row) {
    ObjectNode node = JsonText.object();
    node.put("id", row.id()).put("family", row.family());
    node.put("process", row.scope().process().word())
        .put("material", row.scope().material().word());
    node.put("joint", row.scope().joint().word()).put("position", row.scope().position().name());
    range(node.putArray("thicknessMm"), row.scope().thicknessMm());
    node.put("electrode", row.electrode().classification());
    range(node.putArray("diameterMm"), row.electrode().diameterMm());
    node.put("gas", row.shielding().map(s -> s.name()).orElse("none"));
    node.put("polarity", row.electrode().polarity().word());
    range(node.putArray("currentA"), row.settings().currentA());
    range(node.putArray("voltageV"), row.settings().voltageV());
    range(node.putArray("travelMmPerS"), row.settings().travelMmPerS());
    node.put("passes", row.passes()).put("source", row.source());
    return node;
  }

  private static void range(ArrayNode node, Range range) {
    node.add(range.low()).add(range.high());
  }

  private static String range(Range range) {
    String low = Printed.number(range.low(), 3);
    String high = Printed.number(range.high(), 3);
    return low.equals(high) ? low : low + "-" + high;
  }
}
