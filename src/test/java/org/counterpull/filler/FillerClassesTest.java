package org.counterpull.filler;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.steel.Family;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FillerClassesTest {
  /** Designations as they stand on packets, against the classes that the standards equate. */
  @ParameterizedTest
  @CsvSource({
    "G3Si1, ER70S-6",
    "G 42 4 M21 3Si1, ER70S-6",
    "ISO 14341-A G 46 4 M21 4Si1, ER70S-6",
    "AWS A5.18 ER70S-6, ER70S-6",
    "W3Si1, ER70S-6",
    "E70C-6M H4, E70C-6M",
    "T 46 6 M M 1 H5, E70C-6M",
    "T 46 2 P M 1 H5, E71T-1",
    "T 42 2 P C 1 H5, E71T-1",
    "E71T-1C, E71T-1",
    "E71T-GS, E71T-GS",
    "E71T-3, E71T-GS",
    "E70T-10, E71T-GS",
    "E71T-13, E71T-GS",
    "E71T-14S, E71T-GS",
    "E71T-2C, E71T-2",
    "E71T-12M, E71T-1",
    "T 42 Z W N 1, E71T-11",
    "E71T-11, E71T-11",
    "E7018-1 H4R, E7018",
    "E 42 4 B 42 H5, E7018",
    "E 38 0 RC 11, E6013",
    "E6010, E6010",
    "E 38 3 C 21, E6010",
    "ER308LSi, 308L",
    "E316L-17, 316L",
    "G 19 12 3 L Si, 316L",
    "ER5356, 5356",
    "S Al 5356, 5356",
    "ER4043, 4043"
  })
  void packetsAreUnderstood(String designation, String name) {
    assertThat(FillerClasses.find(designation)).map(FillerClass::name).contains(name);
  }

  @Test
  void whatIsNoClassIsNotGuessed() {
    assertThat(FillerClasses.find("coat hanger")).isEmpty();
  }

  @Test
  void everyClassUnderstandsItsOwnNameAndHasASource() {
    for (FillerClass one : FillerClasses.all()) {
      assertThat(FillerClasses.find(one.name())).as(one.name()).contains(one);
      assertThat(one.source()).startsWith("from memory");
      assertThat(one.storage()).isNotBlank();
    }
  }

  /** The usual class of each process melts in that process and suits what is joined. */
  @Test
  void usualClassesSuit() {
    for (WeldingProcess process : WeldingProcess.values()) {
      for (Joined joined : Joined.values()) {
        FillerClasses.usual(process, joined, false)
            .ifPresent(
                c -> {
                  assertThat(c.processes()).as(process + " " + joined).contains(process);
                  assertThat(c.singlePass()).isFalse();
                });
      }
    }
    assertThat(FillerClasses.usual(WeldingProcess.MMA, Joined.ALUMINIUM, false)).isEmpty();
    assertThat(FillerClasses.usual(WeldingProcess.TIG, Joined.STAINLESS, true))
        .map(FillerClass::name)
        .contains("316L");
  }

  @Test
  void pairsOfMetals() {
    assertThat(Joined.of(List.of(Family.STAINLESS, Family.CARBON)))
        .isEqualTo(Joined.STAINLESS_TO_CARBON);
    assertThat(Joined.of(List.of(Family.ALUMINIUM, Family.CARBON)))
        .isEqualTo(Joined.NOTHING_TOGETHER);
    assertThat(Joined.of(List.of(Family.QUENCHED_AND_TEMPERED, Family.CARBON)))
        .isEqualTo(Joined.CARBON);
  }
}
