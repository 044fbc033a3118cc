package org.counterpull.order;

import org.counterpull.jointplan.PassPlan;

/** What a bead is to the root of a groove. */
final class RootKind {
  private RootKind() {}

  /** It closes the root. */
  static boolean isRoot(PassPlan pass) {
    return pass.kind() == PassPlan.Kind.ROOT;
  }

  /** It lies over a root that another run has closed. */
  static boolean liesOverARoot(PassPlan pass) {
    return switch (pass.kind()) {
      case FILL, CAP, SEALING -> true;
      case SINGLE, ROOT -> false;
    };
  }
}
