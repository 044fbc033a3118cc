package org.counterpull.drawing;

import java.util.List;

/** Which small squares of a sheet have strokes in them, counted over any rectangle at once. */
final class Inked {
  private static final double CELL = 4;

  private final int columns;
  private final int rows;

  /** Counts over all squares to the left and above, the square itself left out. */
  private final int[] sums;

  Inked(double width, double height, List<LabelPlacement.Stroke> strokes) {
    columns = (int) Math.ceil(width / CELL) + 1;
    rows = (int) Math.ceil(height / CELL) + 1;
    boolean[] inked = new boolean[columns * rows];
    for (LabelPlacement.Stroke stroke : strokes) {
      int steps = 1 + (int) Math.ceil(stroke.from().distance(stroke.to()) / (CELL / 2));
      for (int k = 0; k <= steps; k++) {
        double share = (double) k / steps;
        Point p = stroke.from().times(1 - share).plus(stroke.to().times(share));
        inked[row(p.y()) * columns + column(p.x())] = true;
      }
    }
    sums = new int[(columns + 1) * (rows + 1)];
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        sums[at(r + 1, c + 1)] =
            sums[at(r, c + 1)]
                + sums[at(r + 1, c)]
                - sums[at(r, c)]
                + (inked[r * columns + c] ? 1 : 0);
      }
    }
  }

  /** Squares with ink in a rectangle about a point. */
  int count(Point middle, double halfWidth, double halfHeight) {
    int left = column(middle.x() - halfWidth);
    int right = column(middle.x() + halfWidth) + 1;
    int top = row(middle.y() - halfHeight);
    int bottom = row(middle.y() + halfHeight) + 1;
    return sums[at(bottom, right)]
        - sums[at(top, right)]
        - sums[at(bottom, left)]
        + sums[at(top, left)];
  }

  private int at(int row, int column) {
    return row * (columns + 1) + column;
  }

  private int column(double x) {
    return Math.max(0, Math.min(columns - 1, (int) (x / CELL)));
  }

  private int row(double y) {
    return Math.max(0, Math.min(rows - 1, (int) (y / CELL)));
  }
}
