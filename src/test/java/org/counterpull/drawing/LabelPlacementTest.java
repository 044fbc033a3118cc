package org.counterpull.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.counterpull.drawing.LabelPlacement.Stroke;
import org.counterpull.drawing.LabelPlacement.Wanted;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers beside what they name: none covers another, no leader crosses another. */
class LabelPlacementTest {
  @ParameterizedTest
  @CsvSource({"20, 860, 620", "60, 860, 620", "12, 340, 300", "20, 340, 440"})
  void labelsKeepApart(int count, double width, double height) {
    for (int seed = 0; seed < 5; seed++) {
      Random random = new Random(seed);
      List<Wanted> wanted = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        Point anchor =
            new Point(
                width * (0.15 + 0.7 * random.nextDouble()),
                height * (0.2 + 0.6 * random.nextDouble()));
        wanted.add(new Wanted(anchor, 15, 11));
      }
      List<Point> places =
          new LabelPlacement(26, width, height, List.of(), List.of()).place(wanted);
      for (int i = 0; i < count; i++) {
        assertThat(places.get(i).x()).isBetween(15.0, width - 15);
        assertThat(places.get(i).y()).isBetween(26 + 11.0, height - 11);
        for (int j = 0; j < i; j++) {
          apart(wanted, places, i, j);
        }
      }
    }
  }

  private static void apart(List<Wanted> wanted, List<Point> places, int i, int j) {
    Point a = places.get(i);
    Point b = places.get(j);
    assertThat(Math.abs(a.x() - b.x()) >= 30 || Math.abs(a.y() - b.y()) >= 22)
        .as("%s and %s overlap", a, b)
        .isTrue();
    assertThat(new Stroke(wanted.get(i).anchor(), a).crosses(new Stroke(wanted.get(j).anchor(), b)))
        .as("leaders of %s and %s cross", i, j)
        .isFalse();
  }
}
