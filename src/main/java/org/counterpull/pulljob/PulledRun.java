package org.counterpull.pulljob;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.contact.Lay;
import org.counterpull.contact.LinePath;
import org.counterpull.order.TackLayout;
import org.counterpull.weldment.RunGiven;

/**
 * A run as the shape engine sees it.
 *
 * @param name as on the plan
 * @param joint name of its joint; empty for a bead that joins nothing
 * @param kind what sort of weld it is
 * @param path where its root runs, as it is drawn
 * @param opening out of the metal at mid-length, a unit vector
 * @param arm from the root to the middle of the weld's section, at mid-length
 * @param walls the wall of the joint's first part, then that of its second; one wall for a bead
 * @param stretches what of the line is welded
 * @param passesJPerMm net heat of each pass, J/mm, in the order of welding
 * @param depthsMm depth of a butt that is filled after each pass, mm; empty for anything else
 * @param weldAreaMm2 weld metal in the joint, mm2
 * @param gapMm opening that it bridges
 * @param process welding process
 * @param given shrinkage that the file fixes
 * @param tacks tacks on its line; empty for a bead
 * @param bench where and how the work lies for it; empty when it isn't planned
 */
record PulledRun(
    String name,
    Optional<String> joint,
    Kind kind,
    LinePath path,
    Vector3D opening,
    Vector3D arm,
    List<Wall> walls,
    List<Stretch> stretches,
    List<Double> passesJPerMm,
    List<Double> depthsMm,
    double weldAreaMm2,
    double gapMm,
    WeldingProcess process,
    Optional<RunGiven.Shrinkage> given,
    Optional<TackLayout> tacks,
    Optional<Bench> bench) {

  PulledRun {
    walls = List.copyOf(walls);
    stretches = List.copyOf(stretches);
    passesJPerMm = List.copyOf(passesJPerMm);
    depthsMm = List.copyOf(depthsMm);
  }

  /** Sorts of weld, by where their shrinkage acts. */
  enum Kind {
    BUTT,
    CORNER,
    /** Tee or lap: a wall goes on under the weld. */
    FILLET,
    FLARE,
    BEAD
  }

  /** A welded piece of a line, mm along it. */
  record Stretch(double fromMm, double toMm) {
    double lengthMm() {
      return toMm - fromMm;
    }
  }

  /** Where and how the work lies. */
  record Bench(String place, Lay lay) {}

  double netJPerMm() {
    return passesJPerMm.stream().mapToDouble(Double::doubleValue).sum();
  }

  double weldedMm() {
    return stretches.stream().mapToDouble(Stretch::lengthMm).sum();
  }

  /** Leg of the fillet of its section. */
  double legMm() {
    return Math.sqrt(2 * weldAreaMm2);
  }

  /** Height of that fillet over its root. */
  double throatMm() {
    return Math.sqrt(weldAreaMm2);
  }

  double thinnestMm() {
    return walls.stream().mapToDouble(Wall::thicknessMm).min().orElse(1);
  }

  /** Where the path's middle is. */
  Vector3D middle() {
    Vector3D sum = Vector3D.ZERO;
    int samples = 8;
    for (int i = 0; i < samples; i++) {
      sum = sum.add(path.at(path.lengthMm() * (i + 0.5) / samples));
    }
    return sum.scalarMultiply(1.0 / samples);
  }
}
