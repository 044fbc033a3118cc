package org.counterpull.contact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.counterpull.position.WeldingPosition;
import org.counterpull.solid.Separation;
import org.counterpull.solid.Solid;
import org.counterpull.space.Frame;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;

/**
 * Finds where parts touch and what can be welded there.
 *
 * <p>Each joint is looked at in the axes of its second part, so that turning the weldment changes
 * nothing but places and positions. Pairs of surfaces that are fitted to each other are found
 * (plane on plane, round on plane, round beside round, a shaped end on something round); the
 * boundary of each contact gives the lines; lines that run on are joined; short ones are left out
 * and said; sides and names follow; then positions and reach, in weldment axes.
 *
 * <p>Limits: parts have no holes, so a tube through a plate or a pin in a bore is not a contact. An
 * edge that lies on a face, or a corner on an edge, is none either. Two round parts that cross
 * touch at a point unless one is shaped. A shaped end fits round parts only; for a flat one a mitre
 * says the same. Tubes have sharp corners here, so a flare groove at a tube's rounded corner is not
 * seen.
 */
public final class ContactFinder {
  private final FitUp fitUp;
  private final Torch torch;

  public ContactFinder(FitUp fitUp, Torch torch) {
    this.fitUp = fitUp;
    this.torch = torch;
  }

  /** With the usual fit-up and torch. */
  public static ContactFinder usual() {
    return new ContactFinder(FitUp.USUAL, Torch.USUAL);
  }

  /** All joints of a weldment, and the parts that are in the same place. */
  public Fitting find(Weldment weldment) {
    List<Solid> solids = weldment.parts().stream().map(Solid::of).toList();
    List<Contact> contacts = new ArrayList<>();
    List<NoContact> apart = new ArrayList<>();
    for (Joint joint : weldment.joints()) {
      Part first = weldment.part(joint.first());
      Part second = weldment.part(joint.second());
      Optional<Contact> contact = contact(joint, first, second, solids);
      contact.ifPresent(contacts::add);
      if (contact.isEmpty()) {
        apart.add(apart(joint, solid(solids, first), solid(solids, second)));
      }
    }
    return new Fitting(contacts, apart, Overlaps.of(weldment, solids, fitUp));
  }

  /** One joint, with nothing in the way but its own two parts; empty when they do not touch. */
  public Optional<Contact> find(Joint joint, Part first, Part second) {
    return contact(joint, first, second, List.of(Solid.of(first), Solid.of(second)));
  }

  private static Solid solid(List<Solid> solids, Part part) {
    return solids.stream().filter(s -> s.name().equals(part.name())).findFirst().orElseThrow();
  }

  private static NoContact apart(Joint joint, Solid first, Solid second) {
    Separation.Move move = Separation.apart(first, second);
    return new NoContact(joint.name(), first.name(), second.name(), move.mm(), move.direction());
  }

  private Optional<Contact> contact(Joint joint, Part first, Part second, List<Solid> solids) {
    Frame axes = second.frame();
    Solid a = solid(solids, first);
    Solid b = solid(solids, second);
    List<Touch> touches =
        new Touches(joint, fitUp).between(a.in(axes), first.shaped(), b.in(axes), second.shaped());
    if (touches.isEmpty()) {
      return turning(joint, a, b);
    }
    List<RawLine> all =
        LineJoiner.joined(touches.stream().flatMap(t -> t.lines().stream()).toList());
    List<RawLine> kept = new ArrayList<>(all);
    kept.removeIf(line -> line.path().lengthMm() < fitUp.shortestMm());
    Touch main = touches.stream().max(Comparator.comparingDouble(Touch::areaMm2)).orElseThrow();
    double gap = touches.stream().mapToDouble(Touch::gapMm).min().orElse(0);
    double area = touches.stream().mapToDouble(Touch::areaMm2).sum();
    JointForm form = JointForms.of(main, kept);
    kept.addAll(PlugLines.of(joint, form, kept));
    ReachTest reach = new ReachTest(torch, solids);
    List<WeldLine> lines = new ArrayList<>();
    for (LineNames.Named named : LineNames.named(joint.name(), kept)) {
      lines.add(line(named, joint, axes, reach));
    }
    return Optional.of(
        new Contact(joint.name(), form, area, Math.max(0, gap), lines, leftOut(all)));
  }

  /** A joint of two parts that only turn against each other has nothing to weld. */
  private Optional<Contact> turning(Joint joint, Solid first, Solid second) {
    if (joint.clearanceMm() == 0) {
      return Optional.empty();
    }
    double gap = Separation.apart(first, second).mm();
    return gap <= joint.clearanceMm() + fitUp.closeMm()
        ? Optional.of(new Contact(joint.name(), JointForm.LAP, 0, gap, List.of()))
        : Optional.empty();
  }

  private List<String> leftOut(List<RawLine> lines) {
    return lines.stream()
        .mapToDouble(line -> line.path().lengthMm())
        .filter(length -> length < fitUp.shortestMm())
        .sorted()
        .mapToObj(
            length ->
                String.format(
                    Locale.ROOT,
                    "a line of %.1f mm, shorter than %.1f mm",
                    length,
                    fitUp.shortestMm()))
        .toList();
  }

  private static WeldLine line(LineNames.Named named, Joint joint, Frame axes, ReachTest reach) {
    RawLine here = named.line();
    LinePath path = placed(here.path(), axes);
    RawLine placed = here.along(path, s -> here.corners().apply(s).outOf(axes));
    return new WeldLine(
        named.run(),
        joint.name(),
        named.side(),
        path,
        placed.middle().opening(),
        here.dihedralDeg(),
        here.shape(),
        here.firstWallMm(),
        here.secondWallMm(),
        here.flareRadiusMm(),
        here.gapMm(),
        positions(placed, here.shape()),
        reach.of(placed, joint.first(), joint.second()));
  }

  private static Map<Lay, WeldingPosition> positions(RawLine line, WeldLine.Shape shape) {
    Map<Lay, WeldingPosition> positions = new EnumMap<>(Lay.class);
    for (Lay lay : Lay.values()) {
      positions.put(lay, Iso6947.of(line.path(), line.corners(), shape, lay.up()));
    }
    return positions;
  }

  private static LinePath placed(LinePath path, Frame axes) {
    if (path instanceof LinePath.Straight straight) {
      return new LinePath.Straight(axes.outOf(straight.start()), axes.outOf(straight.end()));
    } else if (path instanceof LinePath.Arc arc) {
      return new LinePath.Arc(
          axes.outOf(arc.centre()),
          axes.directionOutOf(arc.axis()),
          axes.directionOutOf(arc.startArm()),
          arc.sweepRad());
    } else if (path instanceof LinePath.Curve curve) {
      return new LinePath.Curve(curve.points().stream().map(axes::outOf).toList());
    }
    throw new IllegalStateException("a path of an unknown kind: " + path);
  }
}
