package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.counterpull.contact.JointForm;
import org.counterpull.filler.Joined;
import org.counterpull.machine.MachineVerdict;
import org.counterpull.machine.Verdict;
import org.counterpull.quantity.Printed;

/**
 * Proposes a test piece where the machine's verdict asks for one, or where the settings stand on
 * nothing that was proved.
 */
record Coupons(JointNeeds needs, EdgePreparation edges, JointForm form, SteelAtJoint steel) {
  private static final String PIECE = "150 x 75 x ";

  /** Large enough to cool like the joint, mm; common practice, no source. */
  private static final double SMALLEST_MM = 75;

  /**
   * The test piece.
   *
   * @param runs planned runs
   * @param verdict of the chosen machine
   * @param unproven why the settings are not sure; empty where they are
   */
  Optional<Coupon> of(List<RunPlan> runs, MachineVerdict verdict, Optional<String> unproven) {
    boolean test = verdict.verdict() == Verdict.TEST_FIRST;
    if (runs.isEmpty() || !test && unproven.isEmpty()) {
      return Optional.empty();
    }
    RunPlan run = runs.get(0);
    String why =
        test
            ? "the machine may not fuse this: "
                + verdict.gates().stream()
                    .filter(g -> !g.passed())
                    .map(g -> g.why())
                    .collect(Collectors.joining("; "))
            : unproven.orElseThrow();
    double arcEnergy =
        run.passes().stream().mapToDouble(p -> p.arcEnergy().value()).min().orElse(1);
    return Optional.of(
        new Coupon(
            likeness(run),
            (needs.thinnerMm() + needs.thickerMm()) / arcEnergy,
            why,
            pieces(),
            welded(run),
            run.place(),
            cut(),
            see(run)));
  }

  private String likeness(RunPlan run) {
    return String.join(
        "; ",
        run.machine(),
        run.process().word(),
        run.filler().designation(),
        run.position().name(),
        run.transfer().map(Object::toString).orElse(""),
        edges.kind().words(),
        steel.joined().words());
  }

  /** Joints whose test pieces are alike share the one that is hardest to fuse. */
  static List<JointPlan> shared(List<JointPlan> joints) {
    Map<String, Coupon> hardest = new TreeMap<>();
    for (JointPlan joint : joints) {
      joint
          .coupon()
          .ifPresent(
              c ->
                  hardest.merge(
                      c.likeness(), c, (a, b) -> b.chillMmPerKJ() > a.chillMmPerKJ() ? b : a));
    }
    return joints.stream()
        .map(j -> j.withCoupon(j.coupon().map(c -> hardest.get(c.likeness()))))
        .toList();
  }

  private String pieces() {
    String thin = Printed.quantity(needs.thinnerMm(), "mm");
    String thick = Printed.quantity(needs.thickerMm(), "mm");
    String two =
        thin.equals(thick)
            ? "two pieces of " + PIECE + thin
            : "one piece of " + PIECE + thin + ", one of " + PIECE + thick;
    return two
        + " of the job's steel, set up as a "
        + form.word()
        + " with edges as for the job ("
        + edges.kind().words()
        + "), tacked at both ends";
  }

  private static String welded(RunPlan run) {
    String passes =
        run.passes().stream().map(Coupons::pass).distinct().collect(Collectors.joining("; "));
    return run.machine()
        + ", "
        + run.process().word()
        + ", "
        + run.filler().designation()
        + " "
        + Printed.quantity(run.filler().diameterMm(), "mm")
        + ", position "
        + run.position()
        + ", metal at "
        + Math.round(run.preheatC().value())
        + " C, "
        + run.passes().size()
        + (run.passes().size() == 1 ? " pass: " : " passes: ")
        + passes;
  }

  private static String pass(PassPlan pass) {
    return Printed.number(pass.currentA(), 3)
        + " A, "
        + Printed.number(pass.voltageV(), 3)
        + " V, travel "
        + Printed.number(pass.travelMmPerS(), 2)
        + " mm/s";
  }

  private List<String> cut() {
    List<String> cut = new ArrayList<>();
    cut.add(
        "let it cool in air, saw it across at a third and at two thirds of its length ("
            + Math.round(SMALLEST_MM)
            + " mm wide legs: smaller ones get hotter than the job)");
    cut.add("file the cuts flat, then abrasive paper 120, 240, 400, scratches square to the last");
    cut.add(
        switch (steel.joined()) {
          case ALUMINIUM ->
              "etch with drain cleaner (10 % sodium hydroxide) for a minute, rinse; gloves and goggles";
          case STAINLESS, STAINLESS_TO_CARBON ->
              "stainless steel hardly etches in a shop: bend or break the pieces instead";
          case CARBON, QUENCHED_AND_TEMPERED, CAST_IRON, NOTHING_TOGETHER ->
              "etch with nital bought ready mixed (5 % nitric acid in alcohol) for 10 to 30 s, rinse;"
                  + " gloves and goggles, no flame";
        });
    if (!needs.groove() && !needs.flare()) {
      cut.add("weld one side only of a second piece and break it open over its root");
    }
    return cut;
  }

  private List<String> see(RunPlan run) {
    List<String> see = new ArrayList<>();
    if (needs.groove()) {
      see.add("no line left of the root faces, and no line along the side walls");
    } else if (needs.flare()) {
      see.add(
          "weld metal down to a throat of at least "
              + Printed.number(needs.size().throat().value(), 2)
              + " mm, fused to both sides of it");
    } else if (needs.holes().isPresent()) {
      see.add("the lower part is melted all round the root of the hole, without a dark line");
    } else {
      see.add("the dark zone goes past the corner into both parts: the root is melted");
      see.add(
          "a leg of at least "
              + Printed.number(needs.size().leg().orElseThrow().value(), 2)
              + " mm on both sides, and a throat of "
              + Printed.number(needs.size().throat().value(), 2)
              + " mm");
    }
    if (run.passes().size() > 1) {
      see.add("no line and no slag between the passes");
    }
    see.add("no crack, also after 24 h; pores smaller than 2 mm; undercut below 0.5 mm");
    if (steel.joined() != Joined.ALUMINIUM && !needs.groove() && !needs.flare()) {
      see.add("the broken piece shows torn metal all along, not the smooth edge of the plate");
    }
    see.add(
        "if not: more current or slower travel within the row, more preheat, or another machine");
    return see;
  }
}
