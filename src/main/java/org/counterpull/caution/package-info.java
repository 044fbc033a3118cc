/**
 * Cautions: what can hurt people or spoil the work, as data with what brings each up.
 *
 * <p>They name the kind of regulation and defer to it; the program certifies nothing.
 */
package org.counterpull.caution;
