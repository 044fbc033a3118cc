package org.counterpull.machine;

/** What a machine can make of a weld. */
public record MachineVerdict(String machine) {}
