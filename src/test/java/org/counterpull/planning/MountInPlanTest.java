package org.counterpull.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.counterpull.cli.CommandRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan asks by itself whether something may be welded straight to a tube. */
class MountInPlanTest {
  @TempDir Path folder;

  private String plan(String example) {
    CommandRun run =
        CommandRun.of(
            "plan", "examples/" + example, "--json", "--out", folder.resolve(example).toString());
    assertThat(run.err()).isEmpty();
    return run.out();
  }

  // The lug lies over the swept bore, 45 mm from the seal; the cap is 80 mm from the bore, 350 mm
  // from the seal.
  @Test
  void theCradlesLugIsAskedAboutAndItsCapIsNot() {
    String json = plan("cradle.yaml");
    assertThat(json)
        .contains("\"mount-lug\"", "not straight on the tube", "gland seal is 45 mm away");
    assertThat(json).doesNotContain("\"mount-cap\"");
  }

  @Test
  void noQuestionWhereTheClearanceIsAmple() {
    assertThat(List.of(plan("pit-cover.yaml"), plan("thick-bracket.yaml")))
        .allSatisfy(json -> assertThat(json).doesNotContain("\"mount-"));
  }
}
