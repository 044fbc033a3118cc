package org.counterpull.jointplan;

import org.counterpull.arc.WeldingProcess;
import org.counterpull.position.WeldingPosition;

/**
 * What beads of a run are laid with.
 *
 * @param fill settings of all beads but an open root
 * @param root settings of an open root; the same where there is none
 * @param position ISO 6947
 */
record BeadSettings(PassSettings fill, PassSettings root, WeldingPosition position) {
  WeldingProcess process() {
    return fill.point().process();
  }

  BeadLimits limits() {
    return fill.limits(position);
  }

  BeadLimits rootLimits() {
    return root.limits(position);
  }
}
