/**
 * Procedures: starting settings by process, material, joint, position and thickness, each row with
 * its ranges and what it stands on.
 *
 * <p>The bundled rows lie in {@code /procedures} as YAML; a shop's own folder adds rows and
 * overrides bundled ones by id. Between two rows of one family settings are interpolated and say
 * so; outside a family there is no answer. Limits: starting points for scrap, not qualified
 * procedures.
 */
package org.counterpull.procedure;
