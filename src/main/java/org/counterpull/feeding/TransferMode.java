package org.counterpull.feeding;

/** How metal crosses the arc. */
public enum TransferMode {
  SHORT_CIRCUIT,
  GLOBULAR,
  SPRAY
}
