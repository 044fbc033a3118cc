package org.counterpull.jointplan;

import java.util.Optional;
import org.counterpull.quantity.Computed;

/**
 * Size of a weld; leg and throat are both named everywhere.
 *
 * @param leg leg length z, mm; empty for groove welds
 * @param throat effective throat a, mm
 * @param given true when the file gives it
 * @param reason where it comes from, in one sentence
 */
public record WeldSize(Optional<Computed> leg, Computed throat, boolean given, String reason) {}
