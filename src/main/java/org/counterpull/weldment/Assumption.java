package org.counterpull.weldment;

/**
 * Something that the file left open and the program filled in.
 *
 * @param where the path in the file, such as {@code machines.shop mag.efficiency}
 * @param what the value taken, with unit, and why
 */
public record Assumption(String where, String what) {}
