package org.counterpull.procedure;

/** A procedures file that cannot be used: which file, which row, what is wrong. */
public final class ProcedureException extends RuntimeException {
  public ProcedureException(String message, Throwable cause) {
    super(message, cause);
  }
}
