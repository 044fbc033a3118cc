package org.counterpull.jointplan;

/**
 * What is melted and under what.
 *
 * @param designation class by the open standard, such as {@code G 42 4 M21 3Si1 (ER70S-6)}
 * @param diameterMm of wire, electrode or rod
 * @param gas shielding gas with flow, or {@code "none"}
 * @param polarity in words
 * @param storage how it is kept and dried, in one sentence
 */
public record Filler(
    String designation, double diameterMm, String gas, String polarity, String storage) {}
