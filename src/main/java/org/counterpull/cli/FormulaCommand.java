package org.counterpull.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Printed;
import org.counterpull.registry.Answer;
import org.counterpull.registry.Argument;
import org.counterpull.registry.ArgumentException;
import org.counterpull.registry.FormulaRegistry;
import org.counterpull.registry.PublishedFormula;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Works one published formula, or tells what there is. */
@Command(
    name = "formula",
    mixinStandardHelpOptions = true,
    description = "Works a published formula, with its source and range.",
    footer = {
      "%nExamples:",
      "  counterpull formula list",
      "  counterpull formula show t85",
      "  counterpull formula t85 heat-input=0.77 thickness=\"1/2 in\" preheat=\"68 F\""
    })
final class FormulaCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      paramLabel = "NAME",
      description = "a formula's name, or 'list', or 'show' followed by a name")
  private String name;

  @Parameters(
      index = "1..*",
      paramLabel = "key=value",
      description = "its arguments; a bare number is in the unit that 'show' gives")
  private List<String> words = List.of();

  @Option(names = "--json", description = "answer as JSON")
  private boolean json;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    switch (name) {
      case "list" -> list(out);
      case "show" -> show(out);
      default -> work(out);
    }
    return ExitCode.DONE;
  }

  private void list(PrintWriter out) {
    if (!words.isEmpty()) {
      throw new BadInput("'list' takes no further words\nTry: counterpull formula list");
    }
    if (json) {
      var all = JsonText.array();
      FormulaRegistry.all().forEach(formula -> all.add(described(formula)));
      out.println(JsonText.write(all));
      return;
    }
    for (PublishedFormula formula : FormulaRegistry.all()) {
      out.printf("%-22s %s%n", formula.name(), formula.formula().gives());
    }
  }

  private void show(PrintWriter out) {
    if (words.size() != 1) {
      throw new BadInput("'show' takes one name\nTry: counterpull formula show t85");
    }
    PublishedFormula formula = find(words.get(0));
    if (json) {
      out.println(JsonText.write(described(formula)));
      return;
    }
    out.printf(
        "%s: %s, in %s%n", formula.name(), formula.formula().gives(), formula.formula().unit());
    for (Argument argument : formula.arguments()) {
      String unit = argument.unit().isEmpty() ? "" : "in " + argument.unit();
      String words = argument.words().isEmpty() ? unit : String.join("|", argument.words());
      String fallback = argument.defaultText().map(text -> "; " + text + " if left out").orElse("");
      out.printf(
          "  %-16s %s%n",
          argument.name(), argument.meaning() + (words.isEmpty() ? "" : ", " + words) + fallback);
    }
    out.println("Source: " + formula.formula().source());
  }

  private void work(PrintWriter out) {
    PublishedFormula formula = find(name);
    Answer answer;
    try {
      answer = formula.evaluate(arguments());
    } catch (ArgumentException e) {
      throw new BadInput("formula " + name + ": " + e.problem() + "\nTry: " + e.tryThis());
    }
    if (json) {
      out.println(JsonText.write(answered(formula, answer)));
      return;
    }
    Computed result = answer.result();
    out.println(formula.name() + " = " + Printed.number(result.value(), 6) + " " + result.unit());
    answer
        .methods()
        .forEach((method, value) -> out.println("  " + method + ": " + Printed.number(value, 6)));
    answer.spread().ifPresent(spread -> out.println("  spread: " + Printed.number(spread, 4)));
    result.warnings().forEach(warning -> out.println("  outside its range: " + warning));
    out.println("Source: " + formula.formula().source());
  }

  private Map<String, String> arguments() {
    Map<String, String> given = new LinkedHashMap<>();
    for (String word : words) {
      int equals = word.indexOf('=');
      if (equals < 1) {
        throw new BadInput(
            "formula "
                + name
                + ": '"
                + word
                + "' is no argument\nTry: key=value, such as thickness=12");
      }
      if (given.put(word.substring(0, equals), word.substring(equals + 1)) != null) {
        throw new BadInput(
            "formula "
                + name
                + ": '"
                + word.substring(0, equals)
                + "' is given twice\nTry: give it once");
      }
    }
    return given;
  }

  private static PublishedFormula find(String name) {
    return FormulaRegistry.find(name)
        .orElseThrow(
            () -> {
              List<String> near = FormulaRegistry.near(name);
              return new BadInput(
                  "there is no formula '"
                      + name
                      + "'\nTry: "
                      + (near.isEmpty()
                          ? "counterpull formula list"
                          : "did you mean " + String.join(" or ", near) + "?"));
            });
  }

  private static ObjectNode described(PublishedFormula formula) {
    ObjectNode node = JsonText.object();
    node.put("formula", formula.name());
    node.put("gives", formula.formula().gives());
    node.put("unit", formula.formula().unit());
    node.put("source", formula.formula().source());
    var arguments = node.putArray("arguments");
    for (Argument argument : formula.arguments()) {
      ObjectNode one = arguments.addObject();
      one.put("name", argument.name())
          .put("unit", argument.unit())
          .put("meaning", argument.meaning());
      one.put("default", argument.defaultText().orElse(null));
      if (!argument.words().isEmpty()) {
        argument.words().forEach(one.putArray("words")::add);
      }
    }
    return node;
  }

  private static ObjectNode answered(PublishedFormula formula, Answer answer) {
    ObjectNode node = JsonText.object();
    node.put("formula", formula.name());
    node.put("value", answer.result().value());
    node.put("unit", answer.result().unit());
    node.put("inRange", answer.result().inRange());
    var warnings = node.putArray("warnings");
    answer.result().warnings().forEach(warnings::add);
    node.put("source", formula.formula().source());
    if (!answer.methods().isEmpty()) {
      ObjectNode methods = node.putObject("methods");
      answer.methods().forEach(methods::put);
    }
    answer.spread().ifPresent(spread -> node.put("spread", spread));
    return node;
  }
}
