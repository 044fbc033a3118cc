package org.counterpull.contact;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.counterpull.space.Frame;
import org.counterpull.stock.Plate;
import org.counterpull.stock.Stock;
import org.counterpull.weldment.EndCut;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMaterial;
import org.counterpull.weldment.Surroundings;
import org.counterpull.weldment.Weldment;

/** Lays parts and joints on the bench for tests. */
final class Bench {
  static final Vector3D X = Vector3D.PLUS_I;
  static final Vector3D Y = Vector3D.PLUS_J;
  static final Vector3D Z = Vector3D.PLUS_K;
  private static final PartMaterial STEEL =
      new PartMaterial(
          "unknown", PartMaterial.Certainty.UNKNOWN, Optional.empty(), Optional.empty());

  private Bench() {}

  /** A part whose section's middle at the left end is at a point. */
  static Part part(
      String name, Stock stock, double length, Vector3D at, Vector3D along, Vector3D up) {
    Frame frame = Frame.of(at, along, up);
    return part(name, stock, length, frame, EndCut.SQUARE, EndCut.SQUARE, List.of(), false);
  }

  static Part part(
      String name,
      Stock stock,
      double length,
      Frame frame,
      EndCut left,
      EndCut right,
      List<Vector2D> outline,
      boolean shaped) {
    return new Part(
        name, stock, length, frame, left, right, outline, STEEL, shaped, Optional.empty());
  }

  static Part plate(String name, double thickness, Frame frame, List<Vector2D> outline) {
    double from = outline.stream().mapToDouble(Vector2D::getX).min().orElseThrow();
    double to = outline.stream().mapToDouble(Vector2D::getX).max().orElseThrow();
    return part(
        name,
        new Plate(OptionalDouble.empty(), thickness),
        to - from,
        frame,
        EndCut.SQUARE,
        EndCut.SQUARE,
        outline,
        false);
  }

  static Part shaped(Part part) {
    return part(
        part.name(),
        part.stock(),
        part.lengthMm(),
        part.frame(),
        part.left(),
        part.right(),
        part.outline(),
        true);
  }

  static Part mitred(Part part, EndCut left, EndCut right) {
    return part(
        part.name(),
        part.stock(),
        part.lengthMm(),
        part.frame(),
        left,
        right,
        part.outline(),
        false);
  }

  /** The part turned about the weldment's origin, then moved. */
  static Part moved(Part part, Rotation turn, Vector3D by) {
    Frame f = part.frame();
    Frame frame =
        new Frame(
            turn.applyTo(f.origin()).add(by),
            turn.applyTo(f.x()),
            turn.applyTo(f.y()),
            turn.applyTo(f.z()));
    return part(
        part.name(),
        part.stock(),
        part.lengthMm(),
        frame,
        part.left(),
        part.right(),
        part.outline(),
        part.shaped());
  }

  static Joint joint(String name, String first, String second, double gap, double clearance) {
    return new Joint(
        name,
        first,
        second,
        Joint.WeldKind.AUTO,
        Optional.empty(),
        List.of(),
        gap,
        clearance,
        false,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  static Weldment weldment(List<Part> parts, List<Joint> joints) {
    return new Weldment(
        "test",
        parts,
        joints,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        new Surroundings(20, Optional.empty(), false, true),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        List.of(),
        List.of(),
        List.of());
  }

  /** The contact of two parts, the first fitted onto the second. */
  static Contact contact(Part first, Part second, double gap) {
    return ContactFinder.usual()
        .find(joint("j", first.name(), second.name(), gap, 0), first, second)
        .orElseThrow();
  }

  static double length(Contact contact) {
    return contact.lines().stream().mapToDouble(l -> l.path().lengthMm()).sum();
  }

  static WeldLine line(Contact contact, String run) {
    return contact.lines().stream().filter(l -> l.run().equals(run)).findFirst().orElseThrow();
  }

  static Vector3D at(double x, double y, double z) {
    return new Vector3D(x, y, z);
  }
}
