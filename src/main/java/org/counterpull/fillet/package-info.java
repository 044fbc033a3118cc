/**
 * Fillet welds and partial penetration: leg and throat, least and largest sizes, section, and the
 * arc energy that a leg takes.
 *
 * <p>Leg {@code z} and throat {@code a} are two sizes and both are always named. Sources: AWS D1.1
 * and EN 1993-1-8 (sizes), structural welding guides of the 1990s (energy), from memory unless a
 * class says otherwise. Limits: legs are equal unless a method takes two; angles between the faces
 * 60 to 120 degrees.
 */
package org.counterpull.fillet;
