package org.counterpull.heatjob;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heat.face.FixedFilm;
import org.counterpull.heat.link.Link;
import org.counterpull.heat.link.LinkLaw;
import org.counterpull.heat.link.Links;
import org.counterpull.heat.solve.HeatModel;
import org.counterpull.solid.Box;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;

/** A weldment as blocks of metal, with what lies between its parts and around them. */
final class Layout {
  /** How far two faces that touch may be drawn into each other. */
  private static final double DRAWN_INTO_MM = 0.3;

  private final Weldment weldment;
  private final List<PartBlock> blocks = new ArrayList<>();
  private final Map<String, List<Block>> byPart = new HashMap<>();
  private final HeatModel model;

  private Layout(Weldment weldment, List<WeldedRun> runs, Resolution resolution) {
    this.weldment = weldment;
    HeatModel.Builder builder =
        HeatModel.builder().ambientC(weldment.surroundings().ambientC()).up(Vec3.Z);
    Spots spots = Spots.along(runs);
    for (Part part : weldment.parts()) {
      PartBlocks made = PartBlocks.of(part, spots, resolution);
      blocks.addAll(made.blocks());
      byPart.put(part.name(), made.blocks().stream().map(PartBlock::block).toList());
      made.blocks().forEach(b -> builder.block(b.block()));
      made.joined().forEach(builder::link);
    }
    weldment
        .surroundings()
        .filmWPerM2K()
        .ifPresentOrElse(
            film -> builder.faces(new FixedFilm(film, 0)),
            () -> blocks.forEach(b -> b.inStillAir(builder)));
    between().forEach(builder::link);
    this.model = builder.build();
  }

  static Layout of(Weldment weldment, List<WeldedRun> runs, Resolution resolution) {
    return new Layout(weldment, runs, resolution);
  }

  HeatModel model() {
    return model;
  }

  /** All blocks with their parts. */
  List<PartBlock> blocks() {
    return List.copyOf(blocks);
  }

  /** Fitted faces and air gaps between different parts. */
  private List<Link> between() {
    double gapMm = Bench.value("gap up to");
    List<Box> boxes = blocks.stream().map(b -> b.box(gapMm / 2)).toList();
    List<Link> links = new ArrayList<>();
    for (int i = 0; i < blocks.size(); i++) {
      for (int j = i + 1; j < blocks.size(); j++) {
        PartBlock a = blocks.get(i);
        PartBlock b = blocks.get(j);
        if (a.part() != b.part() && boxes.get(i).meets(boxes.get(j))) {
          between(a, b, links);
        }
      }
    }
    return links;
  }

  private void between(PartBlock a, PartBlock b, List<Link> links) {
    double fittedMm = Bench.value("fitted up to");
    double nearestMm = -DRAWN_INTO_MM;
    // A coped end is laid out square and so reaches into what it is ground to fit.
    if (a.part().shaped() || b.part().shaped()) {
      nearestMm = -Math.max(reachMm(a), reachMm(b));
    }
    if (joined(a.part(), b.part())) {
      LinkLaw fitted = new LinkLaw.Contact(Bench.value("fitted faces"));
      Links.facing(a.block(), b.block(), fitted, nearestMm, fittedMm).ifPresent(links::add);
      nearestMm = Math.nextUp(fittedMm);
    }
    LinkLaw air = new LinkLaw.AirGap(a.emissivity(), b.emissivity());
    Links.facing(a.block(), b.block(), air, nearestMm, Bench.value("gap up to"))
        .ifPresent(links::add);
  }

  private static double reachMm(PartBlock block) {
    return block.round() ? block.widthMm() / 4 : DRAWN_INTO_MM;
  }

  private boolean joined(Part a, Part b) {
    for (Joint joint : weldment.joints()) {
      List<String> parts = List.of(joint.first(), joint.second());
      if (parts.contains(a.name()) && parts.contains(b.name())) {
        return true;
      }
    }
    return false;
  }

  /** Whether the arc of a run reaches metal all along its line. */
  boolean meets(WeldedRun run) {
    double reachMm = run.passes().stream().mapToDouble(WeldedRun.Pass::radiusMm).min().orElse(0);
    double lengthMm = run.path().lengthMm();
    int looks = (int) Math.ceil(lengthMm / Math.max(1, reachMm));
    for (int i = 0; i <= looks; i++) {
      Vec3 at = Axes.point(run.path().at(lengthMm * i / looks));
      boolean near = blocks.stream().anyMatch(b -> b.block().distanceMm(at) < reachMm);
      if (!near) {
        return false;
      }
    }
    return true;
  }

  /** The block of a part that is nearest to a point. */
  Block nearest(String part, Vec3 point) {
    return byPart.get(part).stream()
        .min(Comparator.comparingDouble(b -> b.distanceMm(point)))
        .orElseThrow();
  }
}
