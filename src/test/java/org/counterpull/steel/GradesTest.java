package org.counterpull.steel;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class GradesTest {

  @Test
  void everyRowIsSound() {
    assertThat(Grades.all()).hasSizeGreaterThanOrEqualTo(19);
    for (Grade grade : Grades.all()) {
      assertThat(grade.source()).isNotBlank();
      assertThat(grade.typical().isPresent() && !grade.family().hardensByCarbon()).isFalse();
      grade.tensileMPa().ifPresent(fu -> assertThat(fu).isBetween(100.0, 1300.0));
      grade.yieldMPa().ifPresent(fy -> assertThat(fy).isLessThan(grade.tensileMPa().orElseThrow()));
    }
  }

  @Test
  void whatMustNotBeWeldedSaysWhy() {
    for (String name : new String[] {"12L14", "1095", "52100", "A325", "7075", "grey iron"}) {
      assertThat(Grades.find(name).orElseThrow().notWelded()).as(name).isPresent();
    }
    assertThat(Grades.find("S355J2").orElseThrow().notWelded()).isEmpty();
  }

  @Test
  void namesAreForgiving() {
    assertThat(Grades.find("s355").orElseThrow().designation()).isEqualTo("S355J2");
    assertThat(Grades.find("astm a36").orElseThrow().designation()).isEqualTo("A36");
    assertThat(Grades.find("A 500 gr B").orElseThrow().designation()).isEqualTo("A500 grade B");
    assertThat(Grades.find("ductile iron").orElseThrow().family()).isEqualTo(Family.CAST_IRON);
    assertThat(Grades.find("6061").orElseThrow().family()).isEqualTo(Family.ALUMINIUM);
    assertThat(Grades.find("unobtainium")).isEmpty();
  }

  @Test
  void nearNamesAreOffered() {
    assertThat(Grades.near("S335J2")).contains("S355J2");
    assertThat(Grades.near("1081")).contains("1018");
  }

  /** EN 1993-1-8 with EN 10025-2: fu 360, 430 and 470 MPa. */
  @Test
  void strengthOfStructuralSteel() {
    assertThat(Grades.find("S235JR").orElseThrow().tensileMPa()).hasValue(360);
    assertThat(Grades.find("S275JR").orElseThrow().tensileMPa()).hasValue(430);
    assertThat(Grades.find("S355J2").orElseThrow().tensileMPa()).hasValue(470);
  }
}
