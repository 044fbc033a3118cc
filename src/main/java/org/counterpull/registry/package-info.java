/**
 * The published formulas by name: their arguments with units and defaults, read from text, and
 * their results with source and range.
 *
 * <p>To publish a formula, write a {@link org.counterpull.registry.PublishedFormula} beside its
 * family's others and name the family in {@link org.counterpull.registry.FormulaRegistry}.
 */
package org.counterpull.registry;
