package org.counterpull.procedure;

import java.util.Optional;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.position.WeldingPosition;

/**
 * What a procedure is for.
 *
 * @param process welding process
 * @param material base material
 * @param joint what is filled
 * @param position ISO 6947
 * @param thicknessMm plate thickness, mm
 * @param legMm fillet leg, mm; fillets only
 * @param gapMm root gap, mm, where stated
 * @param rootFaceMm root face, mm, where stated
 */
public record Scope(
    WeldingProcess process,
    BaseMaterial material,
    JointForm joint,
    WeldingPosition position,
    Range thicknessMm,
    Optional<Range> legMm,
    Optional<Range> gapMm,
    Optional<Range> rootFaceMm) {
  public Scope {
    Checks.inside("thickness", thicknessMm, 0.5, 60, "mm");
    legMm.ifPresent(leg -> Checks.inside("fillet leg", leg, 1, 15, "mm"));
    gapMm.ifPresent(gap -> Checks.inside("root gap", gap, 0, 12, "mm"));
    rootFaceMm.ifPresent(face -> Checks.inside("root face", face, 0, 10, "mm"));
    if (legMm.isPresent() && !joint.isFillet()) {
      throw new IllegalArgumentException("a " + joint.word() + " has no fillet leg");
    }
  }

  /** Same process, material, joint and position. */
  boolean sameWork(Scope other) {
    return process == other.process
        && material == other.material
        && joint == other.joint
        && position == other.position;
  }

  Scope withThickness(double thicknessMm, Optional<Range> leg, Optional<Range> gap) {
    return new Scope(
        process,
        material,
        joint,
        position,
        new Range(thicknessMm, thicknessMm),
        leg,
        gap,
        rootFaceMm);
  }
}
