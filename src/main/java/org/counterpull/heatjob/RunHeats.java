package org.counterpull.heatjob;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.contact.Contact;
import org.counterpull.contact.LinePath;
import org.counterpull.contact.WeldLine;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.order.Middle;
import org.counterpull.order.RunStart;
import org.counterpull.space.Face;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.RunGiven;
import org.counterpull.weldment.RunGiven.Heat;
import org.counterpull.weldment.RunGiven.OnPart;
import org.counterpull.weldment.Weldment;

/** Finds what each run puts into the metal: as the file gives it, else as its joint was planned. */
final class RunHeats {
  private static final WeldingProcess USUAL = WeldingProcess.MAG;

  private final Weldment weldment;
  private final List<Contact> contacts;
  private final List<JointPlan> joints;
  private final Vector3D middle;

  RunHeats(Weldment weldment, List<Contact> contacts, List<JointPlan> joints) {
    this.weldment = weldment;
    this.contacts = contacts;
    this.joints = joints;
    this.middle = Middle.of(weldment);
  }

  /** A planned run. */
  WeldedRun of(RunPlan plan) {
    Joint joint = weldment.joint(plan.line().joint());
    Optional<Heat> given = given(plan.name()).flatMap(RunGiven::heat);
    List<WeldedRun.Pass> passes =
        given
            .map(heat -> List.of(pass(heat, plan.process(), Optional.of(plan))))
            .orElseGet(
                () ->
                    plan.passes().stream()
                        .map(
                            p ->
                                new WeldedRun.Pass(
                                    p.netHeat().value(),
                                    p.travelMmPerS(),
                                    p.area().value(),
                                    Optional.empty()))
                        .toList());
    Optional<Face> start = RunStart.of(weldment, joint.second(), plan, middle);
    LinePath path = from(start, plan.line().path(), weldment.part(joint.second()));
    return new WeldedRun(
        plan.name(),
        path,
        plan.line().opening(),
        List.of(joint.first(), joint.second()),
        stretches(joint, path.lengthMm()),
        passes,
        Optional.of(plan.preheatC().value())
            .filter(c -> c > weldment.surroundings().ambientC() + 1),
        Optional.of(plan.interpassMaxC()));
  }

  /** A run by its name; empty when nothing says how hot it is or where it runs. */
  Optional<WeldedRun> named(String run) {
    Optional<RunPlan> plan =
        joints.stream()
            .flatMap(j -> j.runs().stream())
            .filter(r -> r.name().equals(run))
            .findFirst();
    if (plan.isPresent()) {
      return plan.map(this::of);
    }
    Optional<Heat> heat = given(run).flatMap(RunGiven::heat);
    if (heat.isEmpty()) {
      return Optional.empty();
    }
    Optional<OnPart> bead = given(run).flatMap(RunGiven::on);
    return bead.isPresent()
        ? bead.map(b -> bead(run, b, heat.get()))
        : line(run).map(l -> onLine(l, heat.get()));
  }

  private WeldedRun onLine(WeldLine line, Heat heat) {
    Joint joint = weldment.joint(line.joint());
    Optional<Face> start =
        weldment.order().stream()
            .flatMap(o -> o.steps().stream())
            .filter(s -> s.run().equals(line.run()))
            .flatMap(s -> s.from().stream())
            .findFirst();
    return new WeldedRun(
        line.run(),
        from(start, line.path(), weldment.part(joint.second())),
        line.opening(),
        List.of(joint.first(), joint.second()),
        stretches(joint, line.path().lengthMm()),
        List.of(pass(heat, USUAL, Optional.empty())),
        Optional.empty(),
        Optional.empty());
  }

  private WeldedRun bead(String run, OnPart bead, Heat heat) {
    Part part = weldment.part(bead.part());
    LinePath path =
        new LinePath.Straight(part.frame().outOf(bead.from()), part.frame().outOf(bead.to()));
    Vector3D middleOfBead = bead.from().add(bead.to()).scalarMultiply(0.5);
    return new WeldedRun(
        run,
        path,
        part.frame().directionOutOf(SurfaceOf.outward(part, middleOfBead)),
        List.of(part.name()),
        List.of(new WeldedRun.Stretch(0, path.lengthMm())),
        List.of(pass(heat, USUAL, Optional.empty())),
        Optional.empty(),
        Optional.empty());
  }

  private Optional<RunGiven> given(String run) {
    return weldment.runs().stream().filter(g -> g.run().equals(run)).findFirst();
  }

  private Optional<WeldLine> line(String run) {
    return contacts.stream()
        .flatMap(c -> c.lines().stream())
        .filter(l -> l.run().equals(run))
        .findFirst();
  }

  /** Arc energy goes in by the efficiency that calorimeters measured, never by the factor k. */
  private static WeldedRun.Pass pass(Heat heat, WeldingProcess process, Optional<RunPlan> plan) {
    double net =
        switch (heat.kind()) {
          case NET -> heat.jPerMm();
          case ARC -> heat.jPerMm() * process.efficiency();
        };
    double bead =
        plan.map(p -> p.passes().stream().mapToDouble(s -> s.area().value()).sum())
            .filter(area -> area > 0)
            .orElse(net / Bench.value("heat per weld metal"));
    return new WeldedRun.Pass(net, heat.travelMmPerS(), bead, heat.source());
  }

  /** The path from the end that lies in a direction of a part. */
  private static LinePath from(Optional<Face> start, LinePath path, Part part) {
    if (start.isEmpty()) {
      return path;
    }
    Vector3D towards = part.frame().normal(start.get());
    double gain = path.end().subtract(path.start()).dotProduct(towards);
    return gain > 1e-6 ? path.reversed() : path;
  }

  private static List<WeldedRun.Stretch> stretches(Joint joint, double lengthMm) {
    if (joint.intermittent().isEmpty()) {
      return List.of(new WeldedRun.Stretch(0, lengthMm));
    }
    double stitch = Math.min(lengthMm, joint.intermittent().get().lengthMm());
    double pitch = joint.intermittent().get().clearMm() + stitch;
    List<WeldedRun.Stretch> stretches = new ArrayList<>();
    for (double at = 0; at + stitch <= lengthMm + 1e-9; at += pitch) {
      stretches.add(new WeldedRun.Stretch(at, Math.min(lengthMm, at + stitch)));
    }
    return stretches;
  }
}
