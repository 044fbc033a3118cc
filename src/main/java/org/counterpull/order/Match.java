package org.counterpull.order;

import java.util.Locale;

/** Which later steps a rule ties to an earlier one. */
enum Match {
  /** All of them. */
  ALL {
    @Override
    boolean ties(Step earlier, Step later) {
      return true;
    }
  },
  /** Those that touch one of the same parts. */
  SAME_PART {
    @Override
    boolean ties(Step earlier, Step later) {
      return earlier.sharesPart(later);
    }
  },
  /** Those at the same joint. */
  SAME_JOINT {
    @Override
    boolean ties(Step earlier, Step later) {
      return earlier.joint().isPresent() && earlier.joint().equals(later.joint());
    }
  },
  /** Those at the same feature, fixture or run. */
  SAME_SUBJECT {
    @Override
    boolean ties(Step earlier, Step later) {
      return earlier.subject().isPresent() && earlier.subject().equals(later.subject());
    }
  },
  /** The other side of a groove whose root the earlier run closes. */
  BEHIND_THE_ROOT {
    @Override
    boolean ties(Step earlier, Step later) {
      return SAME_JOINT.ties(earlier, later) && closesRoot(earlier) && lies(later);
    }

    private static boolean closesRoot(Step step) {
      return step.run().stream().flatMap(r -> r.passes().stream()).anyMatch(RootKind::isRoot);
    }

    private static boolean lies(Step step) {
      return step.run().isPresent()
          && step.run().get().passes().stream().allMatch(RootKind::liesOverARoot);
    }
  },
  /** Those that bring a part which hides the earlier step's run or closes over its piece. */
  CLOSED_BY_PART {
    @Override
    boolean ties(Step earlier, Step later) {
      return later.parts().stream().map(Step::partLink).anyMatch(earlier.links()::contains);
    }
  },
  /** Those at a joint that closes over the earlier step's piece. */
  CLOSED_BY_JOINT {
    @Override
    boolean ties(Step earlier, Step later) {
      return later.joint().map(Step::jointLink).filter(earlier.links()::contains).isPresent();
    }
  },
  /** Those at a run that closes the earlier step's cavity. */
  CLOSED_BY_RUN {
    @Override
    boolean ties(Step earlier, Step later) {
      return later.subject().map(Step::runLink).filter(earlier.links()::contains).isPresent();
    }
  },
  /** The tacks of inner hinges of the row whose end hinge the earlier step tacks. */
  INNER_OF_ROW {
    @Override
    boolean ties(Step earlier, Step later) {
      return earlier.links().stream()
          .filter(link -> link.startsWith(HingeRows.END))
          .map(link -> HingeRows.INNER + link.substring(HingeRows.END.length()))
          .anyMatch(later.links()::contains);
    }
  };

  abstract boolean ties(Step earlier, Step later);

  static Match of(String words) {
    return valueOf(words.toUpperCase(Locale.ROOT).replace(' ', '_'));
  }
}
