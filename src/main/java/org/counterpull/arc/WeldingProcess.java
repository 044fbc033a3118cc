package org.counterpull.arc;

/** Arc welding processes that a small shop uses. */
public enum WeldingProcess {
  MMA,
  MAG,
  MIG,
  FCAW,
  FCAW_S,
  TIG
}
