/**
 * What a power source and the socket it hangs on can give: duty cycle, conventional load voltage,
 * supply current, and the largest welding current that a circuit carries.
 *
 * <p>Sources: IEC 60974-1 for the load voltage and the meaning of a duty cycle, NEC article 630 for
 * the effective supply current, plain circuit arithmetic for the rest. Limits: a duty cycle holds
 * at the ambient temperature of the plate (40 C for most sets) and the I2R law leaves out the fixed
 * losses of a machine; a breaker trips by temperature, not on a line.
 */
package org.counterpull.power;
