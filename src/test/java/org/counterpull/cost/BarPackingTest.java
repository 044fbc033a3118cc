package org.counterpull.cost;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BarPackingTest {

  /**
   * 6000 = 3000 + 3000 needs no cut after the second piece: one cut of 3 mm, so 2998.5 each fit.
   */
  @Test
  void theLastPieceOfABarNeedsNoCut() {
    assertThat(BarPacking.of(List.of(2998.5, 2998.5), 6000, 3).bars()).hasSize(1);
    assertThat(BarPacking.of(List.of(2999.0, 2999.0), 6000, 3).bars()).hasSize(2);
  }

  /** First fit decreasing takes 4 bars of 60 here; 3 is the least, for the sum is 180. */
  @Test
  void betterThanFirstFit() {
    List<Double> pieces = List.of(44.0, 24.0, 24.0, 22.0, 21.0, 17.0, 8.0, 8.0, 6.0, 6.0);
    BarPacking packing = BarPacking.of(pieces, 60, 0);
    assertThat(packing.bars()).hasSize(3);
    assertThat(packing.leastPossible()).isTrue();
  }

  /** Against trying every assignment of up to seven pieces. */
  @Test
  void neverMoreThanTheLeastNumber() {
    Random random = new Random(7);
    for (int job = 0; job < 200; job++) {
      List<Double> pieces = new ArrayList<>();
      for (int i = 0; i < 1 + random.nextInt(7); i++) {
        pieces.add(1.0 + random.nextInt(9));
      }
      BarPacking packing = BarPacking.of(pieces, 10, 0.5);
      assertThat(packing.leastPossible()).isTrue();
      assertThat(packing.bars().stream().mapToInt(List::size).sum()).isEqualTo(pieces.size());
      for (List<Integer> bar : packing.bars()) {
        double used = bar.stream().mapToDouble(pieces::get).sum() + 0.5 * (bar.size() - 1);
        assertThat(used).isLessThanOrEqualTo(10 + 1e-9);
      }
      assertThat(packing.bars())
          .as(pieces.toString())
          .hasSize(byTryingAll(pieces, 0, new ArrayList<>()));
    }
  }

  private static int byTryingAll(List<Double> pieces, int next, List<Double> filled) {
    if (next == pieces.size()) {
      return filled.size();
    }
    int best = Integer.MAX_VALUE;
    double size = pieces.get(next) + 0.5;
    for (int bar = 0; bar < filled.size(); bar++) {
      if (filled.get(bar) + size <= 10.5 + 1e-9) {
        filled.set(bar, filled.get(bar) + size);
        best = Math.min(best, byTryingAll(pieces, next + 1, filled));
        filled.set(bar, filled.get(bar) - size);
      }
    }
    filled.add(size);
    best = Math.min(best, byTryingAll(pieces, next + 1, filled));
    filled.remove(filled.size() - 1);
    return best;
  }
}
