package org.counterpull.jointplan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.Lay;
import org.counterpull.contact.LinePath;
import org.counterpull.contact.WeldLine;
import org.counterpull.position.WeldingPosition;
import org.counterpull.weldment.Side;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source: EN 1993-1-8:2005, 4.3.2.1, and from memory: AWS D1.1, Z loss. */
class SkewWordsTest {
  private static WeldLine line(double dihedralDeg) {
    return new WeldLine(
        "seam/front",
        "seam",
        Side.FRONT,
        new LinePath.Straight(Vector3D.ZERO, new Vector3D(200, 0, 0)),
        new Vector3D(0, -1, 1).normalize(),
        dihedralDeg,
        WeldLine.Shape.FILLET,
        10,
        12,
        Optional.empty(),
        0,
        Map.of(Lay.AS_DRAWN, WeldingPosition.PB),
        new WeldLine.Reach(1, List.of()));
  }

  @ParameterizedTest
  @CsvSource({
    "50, 'less 3 mm that stay unfused'",
    "40, 'less 6 mm that stay unfused'",
    "25, 'counts for nothing'",
    "135, 'by test only'"
  })
  void facesFarFromSquareArePointedOut(double dihedralDeg, String words) {
    assertThat(SkewWords.of(List.of(line(dihedralDeg)))).singleElement().asString().contains(words);
  }

  @Test
  void betweenSixtyAnd120NothingIsSaid() {
    assertThat(SkewWords.of(List.of(line(60), line(90), line(120)))).isEmpty();
  }
}
