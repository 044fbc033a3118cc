package org.counterpull.reading;

/**
 * Where something stands.
 *
 * @param file as the user named it
 * @param line from 1
 * @param column from 1, in characters
 */
public record Place(String file, int line, int column) {}
