/**
 * Stock as it is bought: its shapes, their dimensions, and how people write them.
 *
 * <p>A part's length runs along x, y goes across it from front to back, z goes up. The first
 * dimension of a flat is its width (y), the second its thickness (z). A rectangular tube is written
 * across (y) by up (z). Of an angle A x B x T, A is the upright leg (z, at the front), B the lying
 * leg (y, at the bottom). A channel or I section is written H x B x web x flange, H up and B
 * across; the channel's web stands upright at the front and its flanges point to the back.
 */
package org.counterpull.stock;
