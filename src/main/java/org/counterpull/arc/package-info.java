/**
 * The heat of an arc per length of weld, in the three senses that must not be mixed: arc energy (no
 * efficiency; what AWS and ASME limits mean), heat input (with the relative factor k of ISO/TR
 * 17671-1; what EN and ISO limits mean) and net heat (with the efficiency measured in calorimeters;
 * what temperature fields need).
 */
package org.counterpull.arc;
