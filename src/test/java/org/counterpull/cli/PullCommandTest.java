package org.counterpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the pull command ends with and prints. */
class PullCommandTest {
  @TempDir Path folder;

  private static final String TEE =
      """
      weldment: tee
      steel: S355J2
      parts:
        flange: {stock: flat 100 x 10, length: 2000, start: [0, 0, 0]}
        web: {stock: flat 60 x 10, length: 2000, onto: flange, face: top, set: on edge along}
      joints:
        seam: {between: [web, flange], weld: fillet, leg: 5}
      checks:
        camber: {straight: flange, within: %s}
      runs:
        seam/front: {shrinkage: {along: 50 kN}}
        seam/back: {shrinkage: {along: 50 kN}}
      """;

  private CommandRun pull(String within) throws IOException {
    Path file = folder.resolve("tee.yaml");
    Files.writeString(file, TEE.formatted(within));
    return CommandRun.of("pull", file.toString(), "--out", folder.resolve("out").toString());
  }

  /** The tee bows by about 2.4 mm whatever comes first (see PullJobTest). */
  @Test
  void outOfToleranceInEveryOrderEndsWithOne() throws IOException {
    CommandRun run = pull("0.5");
    assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(run.out()).contains("out of tolerance", "no order that was looked at brings it");
    assertThat(folder.resolve("out/shape.svg")).content().contains("camber: 2.");
  }

  @Test
  void inToleranceEndsWithZero() throws IOException {
    CommandRun run = pull("20");
    assertThat(run.code()).isEqualTo(ExitCode.DONE);
    assertThat(run.out()).contains("tolerance 20 mm: in tolerance", "why this order");
  }
}
