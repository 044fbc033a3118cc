package org.counterpull.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heat.link.Links;
import org.counterpull.heat.solve.Fineness;
import org.counterpull.heat.solve.Probe;
import org.counterpull.heat.solve.Simulation;
import org.counterpull.heat.source.DoubleEllipsoid;
import org.counterpull.heat.source.MovingSource;
import org.counterpull.heat.source.TravelPath;
import org.counterpull.shrinkage.HeatShare;

/** Strikes the arcs of a way of welding and notes how warm bore and features get. */
final class LocalHeat {
  private static final double WELD_PIECE_MM = 8;
  private static final double REAR = 2;
  private static final double LOOK_S = 20;
  private static final double HAND_WARM_K = 15;
  private static final int AROUND = 8;
  private static final double[] SHARES = {0, 0.25, 0.5, 0.75, 1};

  private final MountCase mount;
  private final HeatSetup setup;
  private final LocalModel model;
  private final Simulation simulation;
  private final List<Probe> bore = new ArrayList<>();
  private final List<List<Probe>> near = new ArrayList<>();
  private int passes;
  private double arcS;

  private LocalHeat(MountCase mount, HeatSetup setup) {
    this.mount = mount;
    this.setup = setup;
    this.model = new LocalModel(mount, setup);
    this.simulation = new Simulation(model.heat(), Fineness.COARSE, mount.ambientC());
    probes();
  }

  /** Works out one way of welding. */
  static HeatFigures of(MountCase mount, HeatSetup setup) {
    return new LocalHeat(mount, setup).run();
  }

  private void probes() {
    double inner = mount.tube().innerRadiusMm();
    for (Seam seam : setup.seams()) {
      for (double share : SHARES) {
        bore.add(simulation.probe(seam.name(), model.tube(), seam.at(share, inner)));
      }
    }
    for (Sensitive s : mount.near()) {
      double radius = s.inside() ? inner : mount.tube().outerRadiusMm();
      List<Probe> here = new ArrayList<>();
      for (double z : places(s)) {
        for (int k = 0; k < AROUND; k++) {
          double a = 2 * Math.PI * k / AROUND;
          Vec3 at = new Vec3(radius * Math.cos(a), radius * Math.sin(a), z);
          here.add(simulation.probe(s.name(), model.tube(), at));
        }
      }
      near.add(here);
    }
  }

  /** The places of a feature that are nearest to each weld's ends and middle. */
  private List<Double> places(Sensitive s) {
    return setup.seams().stream()
        .flatMap(seam -> java.util.stream.DoubleStream.of(SHARES).mapToObj(seam::zAt))
        .map(s::nearestMm)
        .distinct()
        .toList();
  }

  private HeatFigures run() {
    double nowS = 0;
    int most = setup.seams().stream().mapToInt(s -> s.passes().size()).max().orElseThrow();
    double lastS = 0;
    for (int n = 0; n < most; n++) {
      for (Seam seam : setup.seams()) {
        if (n < seam.passes().size()) {
          lastS = weld(seam, seam.passes().get(n).hotter(mount.hottestFactor()), nowS);
          nowS = nextS(lastS);
        }
      }
    }
    double cool = ShopValue.of("watched cooling");
    simulation.advanceUntil(
        s -> s.hottestC() < mount.ambientC() + HAND_WARM_K, lastS + cool, LOOK_S);
    return figures(lastS);
  }

  /** When the next pass starts. */
  private double nextS(double endS) {
    simulation.advanceTo(endS + ShopValue.of("between runs"));
    if (setup.waits()) {
      double warm = Math.max(ShopValue.of("wait until"), mount.ambientC() + 10);
      simulation.advanceUntil(
          s -> s.hottestC() <= warm, endS + ShopValue.of("longest wait"), LOOK_S);
    }
    return simulation.timeS();
  }

  /** Lays one pass; gives the time of its end. */
  private double weld(Seam seam, WeldPass pass, double startS) {
    double radius = model.radiusMm(seam);
    Optional<Block> partner = model.partner(seam);
    double r = pass.reachMm();
    List<Vec3> points = seam.points(radius);
    int last = points.size() - 1;
    List<Vec3> into = new ArrayList<>();
    for (int i = 0; i <= last; i++) {
      into.add(seam.into((double) i / last, partner.isPresent()));
    }
    MovingSource source =
        MovingSource.along(
            seam.name() + " " + (passes + 1),
            pass.powerW() * (partner.isPresent() ? 1 : tubeShare()),
            startS,
            new TravelPath(points, into),
            pass.travelMmPerS(),
            new DoubleEllipsoid(r, REAR * r, r, r));
    partner.ifPresent(p -> metal(seam, pass, p, startS));
    simulation.strike(source);
    passes++;
    arcS += source.endS() - startS;
    simulation.advanceTo(source.endS());
    return source.endS();
  }

  /** Share of the heat that stays in the tube where what is welded on is not laid out. */
  private double tubeShare() {
    int[] n = mount.partner().halfPlates();
    return HeatShare.share(n[0], mount.tube().wallMm(), n[1], mount.partner().thicknessMm());
  }

  /** The weld metal of a pass, which carries heat from the moment that the arc has passed. */
  private void metal(Seam seam, WeldPass pass, Block partner, double startS) {
    double radius = model.radiusMm(seam);
    double length = seam.lengthMm(radius);
    double side = Math.sqrt(pass.beadMm2());
    int pieces = (int) Math.max(1, Math.round(length / WELD_PIECE_MM));
    for (int i = 0; i < pieces; i++) {
      Vec3 from = seam.at((double) i / pieces, radius);
      Vec3 to = seam.at((i + 1.0) / pieces, radius);
      double laidS = startS + length * (i + 1) / pieces / pass.travelMmPerS();
      simulation.lay(Links.weld(model.base(), partner, from, to, side, side, laidS));
    }
  }

  private HeatFigures figures(double lastS) {
    Probe hottest = hottest(bore);
    List<Warmth> warm = new ArrayList<>();
    for (int i = 0; i < near.size(); i++) {
      Sensitive s = mount.near().get(i);
      Probe top = hottest(near.get(i));
      double over = s.limit().map(l -> top.timeAboveS(l.longC())).orElse(0.0);
      warm.add(new Warmth(s.name(), top.point().z(), top.peakC(), s.limit(), over));
    }
    return new HeatFigures(
        hottest.peakC(),
        hottest.point().z(),
        warm,
        passes,
        lastS,
        arcS,
        simulation.timeS(),
        model.heat().cells(),
        model.tube().grid().nx(),
        simulation.balance().imbalance());
  }

  private static Probe hottest(List<Probe> probes) {
    Probe best = probes.get(0);
    for (Probe probe : probes) {
      best = probe.peakC() > best.peakC() ? probe : best;
    }
    return best;
  }
}
