package org.counterpull.cost;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.counterpull.quantity.Require;

/**
 * Pieces packed into bars of one length, as few bars as can be.
 *
 * <p>First fit decreasing gives a start; where it takes more bars than the sum of the lengths asks
 * for, all ways to fill them with one bar less are tried, longest piece first, skipping bars that
 * are filled alike, until one is found or none is left. So the number is the least possible unless
 * the search is given up after 2 million steps, which the answer says.
 *
 * <p><b>Source:</b> first fit decreasing with branch and bound: Martello and Toth 1990, chapter on
 * bin packing, from memory.
 *
 * @param bars pieces in each bar, by their place in the list that was given
 * @param leastPossible no way with fewer bars exists
 */
public record BarPacking(List<List<Integer>> bars, boolean leastPossible) {
  private static final long MOST_STEPS = 2_000_000;
  private static final double SLACK_MM = 1e-6;

  public BarPacking {
    bars = bars.stream().map(List::copyOf).toList();
  }

  /**
   * Packs.
   *
   * @param piecesMm lengths, each at most that of the bar
   * @param barMm length of a bar
   * @param kerfMm what the cut between two pieces takes
   */
  public static BarPacking of(List<Double> piecesMm, double barMm, double kerfMm) {
    piecesMm.forEach(piece -> Require.within("piece", piece, 1e-9, barMm, "mm"));
    Require.notNegative("saw cut", kerfMm, "mm");
    // A cut after each piece but the last of a bar: every piece with its cut, the bar one longer.
    double room = barMm + kerfMm;
    List<Integer> longestFirst = new ArrayList<>();
    for (int i = 0; i < piecesMm.size(); i++) {
      longestFirst.add(i);
    }
    longestFirst.sort(
        Comparator.<Integer>comparingDouble(i -> -piecesMm.get(i)).thenComparing(i -> i));
    double[] sizes = longestFirst.stream().mapToDouble(i -> piecesMm.get(i) + kerfMm).toArray();
    double sum = 0;
    for (double size : sizes) {
      sum += size;
    }
    int least = (int) Math.ceil(sum / room - 1e-9);
    int[] best = firstFit(sizes, room);
    boolean proved = true;
    while (count(best) > least) {
      Search search = new Search(sizes, room, count(best) - 1);
      if (!search.fill(0)) {
        proved = search.steps <= MOST_STEPS;
        break;
      }
      best = search.barOf.clone();
    }
    return new BarPacking(bars(best, longestFirst), proved);
  }

  private static int[] firstFit(double[] sizes, double room) {
    int[] barOf = new int[sizes.length];
    double[] filled = new double[sizes.length];
    for (int i = 0; i < sizes.length; i++) {
      int bar = 0;
      while (filled[bar] + sizes[i] > room + SLACK_MM) {
        bar++;
      }
      barOf[i] = bar;
      filled[bar] += sizes[i];
    }
    return barOf;
  }

  private static int count(int[] barOf) {
    int most = 0;
    for (int bar : barOf) {
      most = Math.max(most, bar + 1);
    }
    return most;
  }

  private static List<List<Integer>> bars(int[] barOf, List<Integer> longestFirst) {
    List<List<Integer>> bars = new ArrayList<>();
    for (int i = 0; i < count(barOf); i++) {
      bars.add(new ArrayList<>());
    }
    for (int i = 0; i < barOf.length; i++) {
      bars.get(barOf[i]).add(longestFirst.get(i));
    }
    return bars;
  }

  /** Tries every way to fill a number of bars. */
  private static final class Search {
    private final double[] sizes;
    private final double room;
    private final double[] filled;
    private final int[] barOf;
    private long steps;

    private Search(double[] sizes, double room, int bars) {
      this.sizes = sizes;
      this.room = room;
      this.filled = new double[bars];
      this.barOf = new int[sizes.length];
    }

    private boolean fill(int piece) {
      if (piece == sizes.length) {
        return true;
      }
      for (int bar = 0; bar < filled.length && ++steps <= MOST_STEPS; bar++) {
        if (filled[bar] + sizes[piece] > room + SLACK_MM || likeEarlier(bar)) {
          continue;
        }
        filled[bar] += sizes[piece];
        barOf[piece] = bar;
        if (fill(piece + 1)) {
          return true;
        }
        filled[bar] -= sizes[piece];
      }
      return false;
    }

    private boolean likeEarlier(int bar) {
      for (int other = 0; other < bar; other++) {
        if (Math.abs(filled[other] - filled[bar]) < SLACK_MM) {
          return true;
        }
      }
      return false;
    }
  }
}
