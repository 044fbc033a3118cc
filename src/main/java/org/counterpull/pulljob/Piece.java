package org.counterpull.pulljob;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.LinePath;
import org.counterpull.pulljob.PulledRun.Kind;
import org.counterpull.pulljob.PulledRun.Stretch;

/**
 * A piece of a run that is born at once: at most 100 mm of it, or, where there are many runs, an
 * eighth of a long one.
 *
 * <p>What is laid within the time in which it cools (about 20 s, at 5 mm/s 100 mm) is hot together
 * and pulls together; cut finer, each bit would pull against a neighbour that in truth is not stiff
 * yet, and a short run would hardly lean (derived).
 *
 * @param atMm where its middle is along the line
 * @param lengthMm its length
 * @param middle middle of the weld's section there
 * @param from the same at its beginning
 * @param to the same at its end
 * @param root the root at mid-length
 * @param along unit vector along it
 * @param walls the run's walls as they stand here
 */
record Piece(
    double atMm,
    double lengthMm,
    Vector3D middle,
    Vector3D from,
    Vector3D to,
    Vector3D root,
    Vector3D along,
    List<Wall> walls) {
  private static final double LONGEST_MM = 100;
  private static final int EIGHTHS = 8;
  private static final int MOST_IN_ALL = 240;

  /** The pieces of all runs: the longest run may have more of them where there are few runs. */
  static List<List<Piece>> of(List<PulledRun> runs) {
    int most = Math.max(EIGHTHS, MOST_IN_ALL / runs.size());
    return runs.stream().map(run -> of(run, most)).toList();
  }

  /** The pieces of a run, from its start to its end. */
  private static List<Piece> of(PulledRun run, int most) {
    List<Piece> pieces = new ArrayList<>();
    for (Stretch stretch : run.stretches()) {
      boolean ring = run.path() instanceof LinePath.Arc arc && arc.sweepRad() > Math.PI;
      int wanted = (int) Math.ceil(stretch.lengthMm() / LONGEST_MM - 1e-6);
      int count = ring ? EIGHTHS : Math.max(1, Math.min(most, wanted));
      for (int i = 0; i < count; i++) {
        double from = stretch.fromMm() + stretch.lengthMm() * i / count;
        double to = stretch.fromMm() + stretch.lengthMm() * (i + 1) / count;
        pieces.add(piece(run, from, to));
      }
    }
    return pieces;
  }

  private static Piece piece(PulledRun run, double from, double to) {
    LinePath path = run.path();
    double middle = (from + to) / 2;
    Vector3D root = path.at(middle);
    return new Piece(
        middle,
        to - from,
        root.add(at(run, run.arm(), middle)),
        path.at(from).add(at(run, run.arm(), from)),
        path.at(to).add(at(run, run.arm(), to)),
        root,
        path.tangent(middle),
        run.walls().stream().map(wall -> at(run, wall, middle)).toList());
  }

  private static Wall at(PulledRun run, Wall wall, double place) {
    return new Wall(
        wall.part(),
        wall.thicknessMm(),
        wall.goesOn(),
        at(run, wall.outward(), place),
        at(run, wall.along(), place),
        wall.middleMm(),
        wall.aheadMm(),
        wall.behindMm(),
        wall.aroundMm());
  }

  /** A direction known at mid-length, turned with the line. */
  private static Vector3D at(PulledRun run, Vector3D known, double place) {
    if (!(run.path() instanceof LinePath.Arc arc)) {
      return known;
    }
    double angle = (place - arc.lengthMm() / 2) / arc.radiusMm();
    Vector3D axial = arc.axis().scalarMultiply(known.dotProduct(arc.axis()));
    Vector3D radial = known.subtract(axial);
    return axial.add(
        new Vector3D(Math.cos(angle), radial, Math.sin(angle), arc.axis().crossProduct(radial)));
  }

  /** From the weld line to where the force along acts in a wall. */
  Vector3D intoWall(int i, Amounts.OfWall amount) {
    if (amount.alongDepthMm() < 0) {
      return Vector3D.ZERO;
    }
    Wall wall = walls.get(i);
    Vector3D toFoot = root.subtract(middle);
    return wall.goesOn()
        ? toFoot.add(-amount.alongDepthMm(), wall.outward())
        : toFoot.add(amount.alongDepthMm(), wall.along()).add(wall.middleMm(), wall.outward());
  }

  /** The change of place of the second wall against the first that the weld wants, mm. */
  Vector3D wantedShift(PulledRun run, Amounts amounts) {
    if (walls.size() < 2) {
      return Vector3D.ZERO;
    }
    if (run.kind() == Kind.BUTT || run.kind() == Kind.CORNER) {
      Vector3D first = walls.get(0).along().scalarMultiply(amounts.walls().get(0).acrossMm());
      Vector3D second = walls.get(1).along().scalarMultiply(amounts.walls().get(1).acrossMm());
      return first.subtract(second);
    }
    // The second closes against the first along the normal of the wall that goes on.
    boolean secondGoesOn = walls.get(1).goesOn();
    Vector3D normal = walls.get(secondGoesOn ? 1 : 0).outward();
    return normal.scalarMultiply(secondGoesOn ? amounts.closingMm() : -amounts.closingMm());
  }

  /** The turn of the second wall against the first that the weld wants, rad. */
  Vector3D wantedTurn(PulledRun run, Amounts amounts) {
    if (walls.size() < 2 || (run.kind() != Kind.BUTT && run.kind() != Kind.CORNER)) {
      return Vector3D.ZERO;
    }
    double angle = amounts.walls().stream().mapToDouble(Amounts.OfWall::angleRad).sum();
    Vector3D towards = run.kind() == Kind.BUTT ? walls.get(1).outward() : walls.get(0).along();
    Vector3D axis = walls.get(1).along().crossProduct(towards);
    return axis.getNorm() < 1e-9 ? Vector3D.ZERO : axis.normalize().scalarMultiply(angle);
  }

  /** Direction in which the weld draws its two walls together. */
  Vector3D across(PulledRun run) {
    if (walls.size() < 2) {
      return walls.get(0).outward();
    }
    if (run.kind() == Kind.BUTT) {
      return walls.get(1).along();
    }
    if (run.kind() == Kind.CORNER) {
      return Axes.square(walls.get(1).along().subtract(walls.get(0).along()), along);
    }
    return walls.get(walls.get(1).goesOn() ? 1 : 0).outward();
  }
}
