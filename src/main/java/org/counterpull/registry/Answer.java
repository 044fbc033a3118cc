package org.counterpull.registry;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.counterpull.quantity.Computed;

/**
 * What a published formula answers.
 *
 * @param result the value with unit, formula and warnings
 * @param spread difference between the greatest and least of several methods; empty where there is
 *     one method
 * @param methods value of each method by name; empty where there is one method
 */
public record Answer(Computed result, OptionalDouble spread, Map<String, Double> methods) {

  public Answer {
    methods = Collections.unmodifiableMap(new LinkedHashMap<>(methods));
  }

  /** The answer of a single method. */
  public static Answer of(Computed result) {
    return new Answer(result, OptionalDouble.empty(), Map.of());
  }
}
