package org.counterpull.registry;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;

/**
 * A formula that anybody may ask by name.
 *
 * @param formula name, meaning, unit and source of the result
 * @param arguments in the order in which they are shown
 * @param function from checked arguments to the answer
 */
public record PublishedFormula(
    Formula formula, List<Argument> arguments, Function<Arguments, Answer> function) {

  public PublishedFormula {
    arguments = List.copyOf(arguments);
  }

  /** A formula of one method. */
  public static PublishedFormula of(
      Formula formula, List<Argument> arguments, Function<Arguments, Computed> function) {
    return new PublishedFormula(formula, arguments, function.andThen(Answer::of));
  }

  /** The name by which it is asked. */
  public String name() {
    return formula.name();
  }

  /**
   * Evaluates it from texts by argument name.
   *
   * @throws ArgumentException when an argument is unknown, missing, unreadable or impossible
   */
  public Answer evaluate(Map<String, String> given) {
    Arguments read = Arguments.read(arguments, given);
    try {
      return function.apply(read);
    } catch (ArgumentException e) {
      throw e;
    } catch (IllegalArgumentException e) {
      throw new ArgumentException(e.getMessage(), "what is listed by: formula show " + name());
    }
  }
}
