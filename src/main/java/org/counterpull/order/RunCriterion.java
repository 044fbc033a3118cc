package org.counterpull.order;

/**
 * What decides between two runs that could both be next; the first that tells them apart counts.
 */
enum RunCriterion {
  WRITTEN("written order", "in the file's written order"),
  PLACE("R31", "welded while the work stands where it stands, because moving it costs more"),
  TURN("R31", "welded as the weldment lies, because turning it over costs more"),
  BUTT("R24", "butts before fillets: what shrinks most goes first, while it is free"),
  RING("R23", "nearest to the stiff middle, so that shrinkage runs out to the free ends"),
  SIDES("R19", "on the joint that has fewer runs, so that the sides of a joint take turns"),
  BALANCE(
      "R25",
      "balances the heat about the neutral axes with what went before, so that the bows cancel"),
  NAME("by name", "equal by every rule, so taken by name"),
  ONLY("R18", "the only one that no rule holds back");

  private final String rule;
  private final String words;

  RunCriterion(String rule, String words) {
    this.rule = rule;
    this.words = words;
  }

  /** True for a rule of practice, false for what only tells equals apart. */
  boolean isRule() {
    return rule.startsWith("R") && this != ONLY;
  }

  /** The rule as the plan lists it. */
  AppliedRule applied() {
    return new AppliedRule(
        rule,
        "several runs could be next",
        "this run next",
        Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".",
        AppliedRule.Hardness.CHOICE,
        1,
        "from memory: Blodgett, Design of Welded Structures; common practice");
  }

  /** What it says of some runs, a sentence. */
  String sentence(String runs) {
    return runs + ": " + words + " (" + rule + ").";
  }
}
