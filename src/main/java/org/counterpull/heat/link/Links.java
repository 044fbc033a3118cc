package org.counterpull.heat.link;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.Patch;
import org.counterpull.heat.block.Side;
import org.counterpull.heat.block.Vec3;

/** Makes the links between two blocks from where they lie. */
public final class Links {
  private static final double SAMPLE_MM = 1;

  private Links() {}

  /**
   * Two blocks of one part: the faces that touch are one metal.
   *
   * @param toleranceMm how far apart the faces may be drawn, e.g. 0.1
   */
  public static Link joined(Block a, Side sideA, Block b, Side sideB, double toleranceMm) {
    return new Link(
        a.name() + " = " + b.name(),
        a,
        b,
        new LinkLaw.Joined(),
        required(a, sideA, b, sideB, -toleranceMm, toleranceMm),
        0);
  }

  /**
   * Faces that are fitted to each other.
   *
   * @param conductanceWPerM2K of the contact
   * @param toleranceMm how far apart the faces may be drawn
   */
  public static Link fitted(
      Block a, Side sideA, Block b, Side sideB, double conductanceWPerM2K, double toleranceMm) {
    return new Link(
        a.name() + " on " + b.name(),
        a,
        b,
        new LinkLaw.Contact(conductanceWPerM2K),
        required(a, sideA, b, sideB, -toleranceMm, toleranceMm),
        0);
  }

  /** Faces with air between them, up to a width at which they no longer see only each other. */
  public static Link gap(
      Block a, Side sideA, Block b, Side sideB, LinkLaw.AirGap air, double widestMm) {
    return new Link(
        a.name() + " over " + b.name(), a, b, air, required(a, sideA, b, sideB, 0, widestMm), 0);
  }

  /**
   * Whatever surfaces of two blocks face each other; empty where none do.
   *
   * @param law what lies between
   * @param nearestMm least distance of the surfaces; negative where one is drawn into the other
   * @param farthestMm greatest distance
   */
  public static Optional<Link> facing(
      Block a, Block b, LinkLaw law, double nearestMm, double farthestMm) {
    List<Pair> pairs = FacingPatches.of(a.patches(), b.patches(), nearestMm, farthestMm);
    return pairs.isEmpty()
        ? Optional.empty()
        : Optional.of(new Link(a.name() + " beside " + b.name(), a, b, law, pairs, 0));
  }

  /**
   * A segment of weld metal between the nearest surfaces of two blocks.
   *
   * @param startMm one end of the segment's line
   * @param endMm the other end
   * @param throatMm thickness of the weld metal across the flow
   * @param pathMm length of the way through it, from one part to the other
   * @param fromS when it is laid
   */
  public static Link weld(
      Block a, Block b, Vec3 startMm, Vec3 endMm, double throatMm, double pathMm, double fromS) {
    if (!(throatMm > 0 && pathMm > 0)) {
      throw new IllegalArgumentException(
          "weld metal needs a throat and a path above 0: " + throatMm + " and " + pathMm + " mm");
    }
    Vec3 run = endMm.minus(startMm);
    double length = run.norm();
    int samples = (int) Math.max(1, Math.ceil(length / SAMPLE_MM));
    List<Patch> nearA = near(a, startMm.plus(run.times(0.5)), length / 2);
    List<Patch> nearB = near(b, startMm.plus(run.times(0.5)), length / 2);
    Map<List<Integer>, Pair> pairs = new LinkedHashMap<>();
    double area = throatMm * length / samples;
    for (int s = 0; s < samples; s++) {
      Vec3 at = startMm.plus(run.times((s + 0.5) / samples));
      Patch patchA = nearest(nearA, at);
      Patch patchB = nearest(nearB, at);
      pairs.merge(
          List.of(patchA.cell(), patchB.cell()),
          new Pair(patchA, patchB, area, pathMm),
          (x, y) -> new Pair(x.a(), x.b(), x.areaMm2() + y.areaMm2(), pathMm));
    }
    return new Link(
        a.name() + " welded to " + b.name(),
        a,
        b,
        new LinkLaw.WeldMetal(),
        new ArrayList<>(pairs.values()),
        fromS);
  }

  private static List<Pair> required(
      Block a, Side sideA, Block b, Side sideB, double nearestMm, double farthestMm) {
    List<Pair> pairs = FacingPatches.of(a.patches(sideA), b.patches(sideB), nearestMm, farthestMm);
    if (pairs.isEmpty()) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "%s of %s and %s of %s do not face each other within %.4g mm",
              sideA,
              a.name(),
              sideB,
              b.name(),
              farthestMm));
    }
    return pairs;
  }

  private static List<Patch> near(Block block, Vec3 middle, double halfLength) {
    Patch closest = nearest(block.patches(), middle);
    // Wide enough that the nearest patch to every sample is among those kept.
    double radius = closest.centre().minus(middle).norm() + 2 * halfLength;
    return block.patches().stream().filter(p -> p.centre().minus(middle).norm() <= radius).toList();
  }

  private static Patch nearest(List<Patch> patches, Vec3 at) {
    return patches.stream()
        .min(Comparator.comparingDouble(p -> p.centre().minus(at).dot(p.centre().minus(at))))
        .orElseThrow();
  }
}
