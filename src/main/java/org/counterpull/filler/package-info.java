/**
 * Filler metals by class: what each class welds, under which gas and pole, in how many passes, how
 * much hydrogen it brings and how it is kept. Inputs: designations as printed on packet and spool.
 * Limits: classes by memory of the standards; the packet rules over them.
 */
package org.counterpull.filler;
