package org.counterpull.order;

import java.util.ArrayList;
import java.util.List;

/** One stretch of a run without a wait in it; a run with waits between its passes has several. */
final class Piece {
  private final Operation whole;
  private final List<String> cautions = new ArrayList<>();
  private double startS;
  private int fromPass;

  Piece(Operation whole) {
    this.whole = whole;
  }

  /** What is put behind the names of steps at later passes. */
  static String suffix(int pass) {
    return pass > 1 ? ":pass-" + pass : "";
  }

  void begin(double timeS, int pass) {
    startS = timeS;
    fromPass = pass;
    cautions.clear();
  }

  void caution(String sentence) {
    cautions.add(sentence);
  }

  /** Notes the stretch up to now. */
  void end(WorkLog log) {
    List<String> all = new ArrayList<>(whole.cautions());
    all.addAll(cautions);
    log.put(
        new Operation(
            whole.id() + suffix(fromPass),
            whole.kind(),
            fromPass > 1 ? "Go on with " + whole.where() + ", pass " + fromPass : whole.what(),
            whole.where(),
            whole.place(),
            whole.why(),
            all,
            log.nowS() - startS,
            whole.run()),
        startS,
        log.nowS());
  }
}
