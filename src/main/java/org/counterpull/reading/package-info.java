/**
 * From a weldment file to the validated model.
 *
 * <p>A file, YAML or JSON, becomes a tree that keeps the text of every value as it was written and
 * the place where it stands. Key tables say what may stand where; whatever is wrong becomes a
 * {@link org.counterpull.reading.Problem} with file, line, column, path and mend, all problems of a
 * file together. No type of the parsers leaves this package.
 *
 * <p>Order of work: text, tree, includes, {@code like}, sections, placements, names across
 * sections, graph of parts and joints.
 */
package org.counterpull.reading;
