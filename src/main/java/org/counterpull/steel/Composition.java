package org.counterpull.steel;

/** Composition in mass %; what is not given is 0. */
public record Composition(
    double c,
    double si,
    double mn,
    double cr,
    double mo,
    double v,
    double ni,
    double cu,
    double nb,
    double b) {}
