package org.counterpull.naming;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Known names that differ from a typed one by few keystrokes, the nearest first. */
public final class NearestNames {
  private static final int MOST = 3;

  private NearestNames() {}

  /**
   * Up to three known names within a third of the typed name's length, or that begin with it; ties
   * in alphabetical order.
   */
  public static List<String> of(String typed, Collection<String> known) {
    String wanted = typed.strip().toLowerCase(Locale.ROOT);
    if (wanted.isEmpty()) {
      return List.of();
    }
    int far = Math.max(1, wanted.length() / 3);
    return known.stream()
        .distinct()
        .filter(name -> distance(wanted, name) <= far)
        .sorted(
            Comparator.comparingInt((String name) -> distance(wanted, name))
                .thenComparing(Comparator.naturalOrder()))
        .limit(MOST)
        .toList();
  }

  private static int distance(String wanted, String name) {
    String other = name.toLowerCase(Locale.ROOT);
    return other.startsWith(wanted) ? 0 : keystrokes(wanted, other);
  }

  /** Least number of letters to insert, drop, replace or swap with the next (optimal alignment). */
  static int keystrokes(String a, String b) {
    int[][] cost = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        cost[i][j] = i == 0 ? j : j == 0 ? i : cheapest(a, b, cost, i, j);
      }
    }
    return cost[a.length()][b.length()];
  }

  private static int cheapest(String a, String b, int[][] cost, int i, int j) {
    int replaced = cost[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
    int best = Math.min(replaced, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, cost[i - 2][j - 2] + 1) : best;
  }
}
