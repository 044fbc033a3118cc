package org.counterpull.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.shrinkage.FreeAngle;
import org.counterpull.shrinkage.FreeShrinkage;
import org.counterpull.shrinkage.HeatShare;
import org.counterpull.shrinkage.LugOnTube;
import org.counterpull.weldment.Weldment;

/**
 * Whether a weld comes near something that it may spoil, by closed forms and distances alone: quick
 * enough to ask for every plan. Says where the mount sheet has to be read.
 *
 * @param mount the weld and what is near it
 * @param because what is near, and what the closed forms say
 */
public record MountScreen(MountCase mount, String because) {
  private static final double NEAR_MM = 150;

  /** Name of the joint. */
  public String joint() {
    return mount.name();
  }

  /** Joints for which the question must be asked, file order. */
  public static List<MountScreen> of(Weldment weldment, List<JointPlan> joints) {
    List<MountScreen> all = new ArrayList<>();
    for (MountCases.NearJoint near : MountCases.near(weldment, Optional.empty())) {
      joints.stream()
          .filter(j -> j.joint().name().equals(near.joint().name()) && !j.runs().isEmpty())
          .findFirst()
          .map(plan -> new CaseOfJoint(weldment, near, plan, Inside.DRAINED).mount())
          .flatMap(MountScreen::of)
          .ifPresent(all::add);
    }
    return List.copyOf(all);
  }

  private static Optional<MountScreen> of(MountCase mount) {
    List<String> reasons = new ArrayList<>();
    for (Sensitive s : mount.near()) {
      double distance = distanceMm(mount, s);
      if (s.sized()) {
        bore(mount, s, distance).ifPresent(reasons::add);
      } else if (s.limit().isPresent() && distance <= NEAR_MM) {
        reasons.add(String.format(Locale.ROOT, "%s is %.0f mm away", s.name(), distance));
      }
    }
    return reasons.isEmpty()
        ? Optional.empty()
        : Optional.of(new MountScreen(mount, mount.name() + ": " + String.join("; ", reasons)));
  }

  private static double distanceMm(MountCase mount, Sensitive s) {
    return mount.seams().stream()
        .mapToDouble(w -> Math.min(s.distanceMm(w.fromZMm()), s.distanceMm(w.toZMm())))
        .min()
        .orElse(Double.MAX_VALUE);
  }

  /**
   * What closed forms say of a bore: the kink of a ring, which a longer tube resists, and hoop
   * shrinkage.
   */
  private static Optional<String> bore(MountCase mount, Sensitive s, double distanceMm) {
    Optional<Double> band =
        s.tolerance().map(t -> t.widthMm(mount.tube().insideMm())).or(s::clearanceMm);
    double moved = movedMm(mount, s, distanceMm);
    boolean matters =
        band.filter(b -> moved > b * ShopValue.of("accept up to band share")).isPresent();
    return matters
        ? Optional.of(
            String.format(
                Locale.ROOT,
                "%s may move by about %.2f mm on diameter, its band is %.3f mm%s",
                s.name(),
                moved,
                band.orElseThrow(),
                moved > band.orElseThrow() ? ": not straight on the tube" : ""))
        : Optional.empty();
  }

  private static double movedMm(MountCase mount, Sensitive s, double distanceMm) {
    BoredTube tube = mount.tube();
    WeldPull pull = new WeldPull(tube, mount.partner());
    double ring =
        mount.seams().stream()
            .filter(Seam::round)
            .mapToDouble(w -> pull.ring(w, s.fromZMm(), s.toZMm()).changeMm().value())
            .max()
            .orElse(0);
    if (distanceMm > tube.fadingMm()) {
      return ring;
    }
    int[] n = mount.partner().halfPlates();
    double share = HeatShare.share(n[0], tube.wallMm(), n[1], mount.partner().thicknessMm());
    double hoop = 0;
    double angle = 0;
    for (Seam seam : mount.seams()) {
      if (seam.along()) {
        for (WeldPass pass : seam.passes()) {
          hoop += FreeShrinkage.of(share * pass.netJPerMm(), tube.wallMm()).value();
          angle += FreeAngle.of(share * pass.netJPerMm(), tube.wallMm()).value();
        }
      }
    }
    double mean =
        LugOnTube.boreShrinkage(
                hoop, tube.meanRadiusMm(), tube.wallMm(), Math.max(1, mount.partner().alongMm()))
            .value();
    double axis = LugOnTube.outOfRound(0) + LugOnTube.outOfRound(Math.PI);
    return Math.max(ring, 2 * mean + axis * tube.meanRadiusMm() * angle);
  }
}
