package org.counterpull.mount;

/**
 * How far something is used by the load.
 *
 * @param what is used
 * @param load what it has to carry, with its unit
 * @param allowable what it may carry, with its unit
 * @param use above 1 it is overloaded
 * @param source the rule
 */
public record StrengthUse(String what, String load, String allowable, double use, String source) {}
