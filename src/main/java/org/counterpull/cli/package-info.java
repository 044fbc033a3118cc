/**
 * The command line: verbs, options, exit codes, progress. Knows files and terminals; computes
 * nothing.
 */
package org.counterpull.cli;
