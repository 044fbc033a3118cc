package org.counterpull.verification;

import java.util.List;

/**
 * One family of checks as a data file has it.
 *
 * @param family what the checks are about
 * @param formula name in the registry of formulas; null where it is solved
 * @param solved name among the {@link SolvedCases}; null where it is a formula
 * @param scale factor on the result; null for none
 * @param unit of the result; null for the formula's own
 * @param note a remark for readers of the data file
 * @param source of all its cases; null where each has its own
 * @param certainty of all its cases; null where each has its own
 * @param cases the checks
 */
record Family(
    String family,
    String formula,
    String solved,
    Double scale,
    String unit,
    String note,
    String source,
    String certainty,
    List<PublishedCase> cases) {

  String name() {
    return formula == null ? solved : formula;
  }
}
