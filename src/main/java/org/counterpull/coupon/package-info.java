/**
 * Test pieces: what a shop welds, measures and reads so that the published forms of shrinkage fit
 * its own welds.
 *
 * <p>{@link org.counterpull.coupon.RunPulls} says by the closed forms which runs of a job, and
 * which of their effects, leave most of its checks uncertain; {@link org.counterpull.coupon.Coupon}
 * is a small piece with the process, thickness and size of that run and what is expected on it;
 * {@link org.counterpull.coupon.Calibrated} turns readings into factors with the band that remains.
 */
package org.counterpull.coupon;
