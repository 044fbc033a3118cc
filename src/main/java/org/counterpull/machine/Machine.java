package org.counterpull.machine;

import java.util.List;
import org.counterpull.arc.WeldingProcess;

/** A power source. */
public record Machine(
    String name, List<WeldingProcess> processes, double minCurrentA, double maxCurrentA) {}
