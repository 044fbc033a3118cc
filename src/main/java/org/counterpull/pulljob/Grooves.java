package org.counterpull.pulljob;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.space.Frame;

/**
 * Butt runs that fill one groove, from one side or both. What a later one wants is published for
 * the joint as it stands, so the whole section follows it: the run that was laid before takes part
 * and isn't a cold bar in its way.
 */
final class Grooves {
  private static final double PARALLEL = 0.9;

  private final List<PulledRun> runs;
  private final List<Amounts> amounts;

  Grooves(List<PulledRun> runs, List<Amounts> amounts) {
    this.runs = runs;
    this.amounts = amounts;
  }

  /** Numbers of the other runs in a run's groove. */
  List<Integer> beside(int run) {
    List<Integer> others = new ArrayList<>();
    for (int other = 0; other < runs.size(); other++) {
      if (other != run && share(runs.get(run), runs.get(other))) {
        others.add(other);
      }
    }
    return others;
  }

  private static Vector3D way(PulledRun run) {
    return run.path().tangent(run.path().lengthMm() / 2);
  }

  static boolean share(PulledRun one, PulledRun other) {
    return one.kind() == PulledRun.Kind.BUTT
        && other.kind() == PulledRun.Kind.BUTT
        && one.joint().isPresent()
        && one.joint().equals(other.joint())
        && Math.abs(way(one).dotProduct(way(other))) > PARALLEL;
  }

  /**
   * What a run wants, seen from the middle of another run's piece.
   *
   * @param there the other's piece, with its axes
   * @param here the run's own piece beside it
   */
  double[] wantedAt(Piece there, Frame axes, int run, Piece here, List<Effect> effects) {
    Vector3D shift = Vector3D.ZERO;
    Vector3D turn = Vector3D.ZERO;
    if (effects.contains(Effect.ACROSS)) {
      shift = here.wantedShift(runs.get(run), amounts.get(run));
    }
    if (effects.contains(Effect.ANGLE)) {
      turn = here.wantedTurn(runs.get(run), amounts.get(run));
      Vector3D arm = there.middle().subtract(here.middle());
      Vector3D square = arm.subtract(here.along().scalarMultiply(arm.dotProduct(here.along())));
      shift = shift.add(turn.crossProduct(square));
    }
    Vector3D across = axes.directionInto(shift);
    Vector3D about = axes.directionInto(turn);
    return new double[] {
      across.getX(), across.getY(), across.getZ(), about.getX(), about.getY(), about.getZ()
    };
  }
}
