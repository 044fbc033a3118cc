package org.counterpull.pulljob;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.contact.Contact;
import org.counterpull.contact.LinePath;
import org.counterpull.contact.WeldLine;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.PassPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.order.TackLayout;
import org.counterpull.pulljob.PulledRun.Kind;
import org.counterpull.pulljob.PulledRun.Stretch;
import org.counterpull.solid.Solid;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.RunGiven;
import org.counterpull.weldment.RunGiven.Heat;
import org.counterpull.weldment.RunGiven.OnPart;
import org.counterpull.weldment.Weldment;

/** Finds every run that pulls: as its joint was planned, and as the file fixes it. */
final class PulledRuns {
  /** Net heat that lays a cubic millimetre of weld metal, J/mm3 (common practice, no source). */
  private static final double HEAT_PER_WELD_METAL = 50;

  /** Shares of a planned square or fillet weld that its depth is taken from. */
  private static final WeldingProcess USUAL = WeldingProcess.MAG;

  private final Weldment weldment;
  private final Map<String, Solid> solids = new TreeMap<>();
  private final Map<String, RunGiven> given = new LinkedHashMap<>();
  private final List<PulledRun> runs = new ArrayList<>();

  private PulledRuns(Weldment weldment) {
    this.weldment = weldment;
    weldment.parts().forEach(part -> solids.put(part.name(), Solid.of(part)));
    weldment.runs().forEach(run -> given.put(run.run(), run));
  }

  /** Planned runs in the order of the joint plans, then those that only the file gives. */
  static List<PulledRun> of(Weldment weldment, List<Contact> contacts, List<JointPlan> joints) {
    PulledRuns all = new PulledRuns(weldment);
    for (JointPlan joint : joints) {
      joint.runs().forEach(run -> all.addPlanned(joint, run));
    }
    for (RunGiven run : weldment.runs()) {
      boolean known = all.runs.stream().anyMatch(r -> r.name().equals(run.run()));
      if (!known && (run.heat().isPresent() || run.shrinkage().isPresent())) {
        all.addGiven(run, contacts);
      }
    }
    return List.copyOf(all.runs);
  }

  private void addPlanned(JointPlan plan, RunPlan run) {
    Optional<RunGiven> fixed = Optional.ofNullable(given.get(run.name()));
    Optional<Heat> heat = fixed.flatMap(RunGiven::heat);
    List<Double> passes =
        heat.map(h -> List.of(net(h, run.process())))
            .orElseGet(() -> run.passes().stream().map(p -> p.netHeat().value()).toList());
    double area = areaMm2(run);
    Kind kind = kind(run.line());
    List<Wall> walls = walls(run.line());
    runs.add(
        new PulledRun(
            run.name(),
            Optional.of(plan.joint().name()),
            kind,
            run.line().path(),
            run.line().opening(),
            WeldMiddle.arm(run.line(), kind, walls, area),
            walls,
            stretches(plan.joint(), run.line().path().lengthMm()),
            passes,
            kind == Kind.BUTT ? depths(plan, run, passes.size()) : List.of(),
            area,
            Math.max(plan.preparation().rootGapMm(), run.line().gapMm()),
            run.process(),
            fixed.flatMap(RunGiven::shrinkage),
            Optional.of(TackLayout.of(run.line(), preheated(plan))),
            Optional.of(new PulledRun.Bench(run.place(), run.lay()))));
  }

  private boolean preheated(JointPlan plan) {
    return plan.preheat().value() > weldment.surroundings().ambientC();
  }

  private void addGiven(RunGiven run, List<Contact> contacts) {
    double net = run.heat().map(heat -> net(heat, USUAL)).orElse(0.0);
    if (run.on().isPresent()) {
      runs.add(bead(run, run.on().get(), net));
      return;
    }
    contacts.stream()
        .flatMap(contact -> contact.lines().stream())
        .filter(line -> line.run().equals(run.run()))
        .findFirst()
        .ifPresent(line -> runs.add(onLine(run, line, net)));
  }

  private PulledRun onLine(RunGiven run, WeldLine line, double net) {
    Joint joint = weldment.joint(line.joint());
    Kind kind = kind(line);
    List<Wall> walls = walls(line);
    double area = area(joint, line, net);
    return new PulledRun(
        run.run(),
        Optional.of(line.joint()),
        kind,
        line.path(),
        line.opening(),
        WeldMiddle.arm(line, kind, walls, area),
        walls,
        stretches(joint, line.path().lengthMm()),
        List.of(net),
        kind == Kind.BUTT ? List.of(Math.min(line.firstWallMm(), line.secondWallMm())) : List.of(),
        area,
        line.gapMm(),
        USUAL,
        run.shrinkage(),
        Optional.of(TackLayout.of(line, false)),
        Optional.empty());
  }

  private static double area(Joint joint, WeldLine line, double net) {
    return joint
        .size()
        .map(size -> Math.pow(size.legMm(line.dihedralDeg()), 2) / 2)
        .filter(area -> !Double.isNaN(area) && area > 0)
        .orElse(Math.max(12.5, net / HEAT_PER_WELD_METAL));
  }

  private PulledRun bead(RunGiven run, OnPart bead, double net) {
    Part part = weldment.part(bead.part());
    LinePath path =
        new LinePath.Straight(part.frame().outOf(bead.from()), part.frame().outOf(bead.to()));
    Wall wall = BeadOnPart.wall(part, solids.get(part.name()), path);
    return new PulledRun(
        run.run(),
        Optional.empty(),
        Kind.BEAD,
        path,
        wall.outward(),
        Vector3D.ZERO,
        List.of(wall),
        List.of(new Stretch(0, path.lengthMm())),
        List.of(net),
        List.of(),
        Math.max(1, net / HEAT_PER_WELD_METAL),
        0,
        USUAL,
        run.shrinkage(),
        Optional.empty(),
        Optional.empty());
  }

  private List<Wall> walls(WeldLine line) {
    Joint joint = weldment.joint(line.joint());
    return WallsAtLine.of(line, solids.get(joint.first()), solids.get(joint.second()));
  }

  private Kind kind(WeldLine line) {
    return switch (line.shape()) {
      case BUTT -> Kind.BUTT;
      case OUTSIDE_CORNER -> Kind.CORNER;
      case FLARE_BEVEL, FLARE_V -> Kind.FLARE;
      // Both parts go on beside a hole: it pulls at them as a fillet does.
      case PLUG -> Kind.FILLET;
      case FILLET -> walls(line).stream().anyMatch(Wall::goesOn) ? Kind.FILLET : Kind.CORNER;
    };
  }

  /**
   * Depth filled after each pass: a groove's area grows with the square of its depth. Runs of one
   * groove share its depth by their weld metal, in the order in which they are planned.
   */
  private List<Double> depths(JointPlan plan, RunPlan run, int passes) {
    double h = Math.min(run.line().firstWallMm(), run.line().secondWallMm());
    double before = 0;
    double all = 0;
    boolean earlier = true;
    for (RunPlan one : plan.runs()) {
      earlier &= one != run;
      if (kind(one.line()) == Kind.BUTT) {
        before += earlier ? areaMm2(one) : 0;
        all += areaMm2(one);
      }
    }
    double from = h * before / all;
    double share = h * areaMm2(run) / all;
    List<Double> depths = new ArrayList<>();
    double sum = 0;
    for (PassPlan pass : run.passes()) {
      sum += pass.area().value();
      depths.add(from + share * Math.sqrt(Math.min(1, sum / areaMm2(run))));
    }
    return passes == depths.size() ? depths : List.of(from + share);
  }

  private static double areaMm2(RunPlan run) {
    return run.passes().stream().mapToDouble(p -> p.area().value()).sum();
  }

  /** Arc energy goes in by the efficiency that calorimeters measured, never by the factor k. */
  private static double net(Heat heat, WeldingProcess process) {
    return switch (heat.kind()) {
      case NET -> heat.jPerMm();
      case ARC -> heat.jPerMm() * process.efficiency();
    };
  }

  private static List<Stretch> stretches(Joint joint, double lengthMm) {
    if (joint.intermittent().isEmpty()) {
      return List.of(new Stretch(0, lengthMm));
    }
    double stitch = Math.min(lengthMm, joint.intermittent().get().lengthMm());
    double pitch = joint.intermittent().get().clearMm() + stitch;
    List<Stretch> stretches = new ArrayList<>();
    for (double at = 0; at + stitch <= lengthMm + 1e-9; at += pitch) {
      stretches.add(new Stretch(at, Math.min(lengthMm, at + stitch)));
    }
    return stretches;
  }
}
