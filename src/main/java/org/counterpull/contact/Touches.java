package org.counterpull.contact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.solid.Cylinder;
import org.counterpull.solid.FlatFace;
import org.counterpull.solid.Solid;
import org.counterpull.weldment.Joint;

/** Every pair of surfaces of two solids that are fitted to each other. */
final class Touches {
  private final FitUp fitUp;
  private final double limitMm;

  /** A clearance has to stay open: faces that far apart are not fitted. */
  Touches(Joint joint, FitUp fitUp) {
    this.fitUp = fitUp;
    double close =
        joint.clearanceMm() > 0
            ? Math.min(fitUp.closeMm(), joint.clearanceMm() / 2)
            : fitUp.closeMm();
    limitMm = joint.gapMm() + close;
  }

  List<Touch> between(Solid first, boolean firstShaped, Solid second, boolean secondShaped) {
    if (!first.box().grown(limitMm + 1).meets(second.box())) {
      return List.of();
    }
    List<Touch> touches = new ArrayList<>();
    for (FlatFace a : first.faces()) {
      for (FlatFace b : second.faces()) {
        PlaneTouch.of(a, b, limitMm, fitUp).ifPresent(touches::add);
      }
    }
    second.cylinder().ifPresent(round -> touches.addAll(facesOn(first, firstShaped, round, true)));
    first
        .cylinder()
        .ifPresent(round -> touches.addAll(facesOn(second, secondShaped, round, false)));
    if (first.cylinder().isPresent() && second.cylinder().isPresent()) {
      RoundPairTouch.of(first.cylinder().get(), second.cylinder().get(), limitMm, fitUp)
          .ifPresent(touches::add);
    }
    return touches;
  }

  private List<Touch> facesOn(Solid flat, boolean shaped, Cylinder round, boolean flatIsFirst) {
    List<Touch> touches = new ArrayList<>();
    for (FlatFace face : flat.faces()) {
      Optional<Touch> touch = Optional.empty();
      if (shaped && face.kind() != FlatFace.Kind.BROAD) {
        Vector3D sweep = flat.sweep().z();
        double sense = Math.signum(face.normal().dotProduct(sweep));
        Vector3D along =
            face.kind() == FlatFace.Kind.END ? sweep.scalarMultiply(sense) : face.normal();
        touch = SaddleTouch.of(round, face, along, flatIsFirst, limitMm);
      }
      touch
          .or(() -> TangentTouch.of(round, face, !flatIsFirst, limitMm, fitUp))
          .ifPresent(touches::add);
    }
    return touches;
  }
}
