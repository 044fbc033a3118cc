package org.counterpull.pulljob;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.pull.SpringStiffness;
import org.counterpull.solid.Solid;
import org.counterpull.space.Frame;
import org.counterpull.weldment.Fixture;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;

/**
 * A place where a fixture holds a part.
 *
 * @param fixture name of the fixture
 * @param kind what it is
 * @param part the part
 * @param at where
 * @param axes x along the rod; for everything else those of the weldment
 * @param stiffness how firmly
 */
record Holding(
    String fixture,
    Fixture.Kind kind,
    String part,
    Vector3D at,
    Frame axes,
    SpringStiffness stiffness) {

  /** Stiffness of a screw clamp, a strongback with its wedges, a rod in its bore, N/mm. */
  private static final double CLAMP_N_PER_MM = 20_000;

  private static final double STRONGBACK_N_PER_MM = 100_000;
  private static final double ROD_N_PER_MM = 100_000;

  /** Lever over which a clamp's foot or a strongback's wedges hold a part against turning, mm. */
  private static final double FOOT_MM = 20;

  /** The same with no direction left free. */
  SpringStiffness fast() {
    double shift = Math.max(stiffness.across(), stiffness.normal());
    double turn = Math.max(stiffness.aboutAcross(), shift * FOOT_MM * FOOT_MM);
    return new SpringStiffness(
        Math.max(stiffness.along(), shift),
        stiffness.across(),
        stiffness.normal(),
        Math.max(stiffness.aboutAlong(), turn),
        Math.max(stiffness.aboutAcross(), turn),
        Math.max(stiffness.aboutNormal(), turn));
  }

  /** All places of a fixture; none for those on which the work only lies. */
  static List<Holding> of(Weldment weldment, Fixture fixture) {
    List<Holding> holdings = new ArrayList<>();
    for (String name : fixture.parts()) {
      Part part = weldment.part(name);
      switch (fixture.kind()) {
        case THROUGH_ROD -> {
          double k = ROD_N_PER_MM;
          double turn = k * part.lengthMm() * part.lengthMm() / 12;
          Frame axes = part.frame();
          Vector3D middle = Bodies.middle(part);
          holdings.add(
              new Holding(
                  fixture.name(),
                  fixture.kind(),
                  name,
                  middle,
                  new Frame(middle, axes.x(), axes.y(), axes.z()),
                  new SpringStiffness(0, k, k, 0, turn, turn)));
        }
        case CLAMP, STRONGBACK, SPACER -> {
          double k = fixture.kind() == Fixture.Kind.CLAMP ? CLAMP_N_PER_MM : STRONGBACK_N_PER_MM;
          double turn = k * FOOT_MM * FOOT_MM;
          for (Vector3D at : places(weldment, fixture, part)) {
            holdings.add(
                new Holding(
                    fixture.name(),
                    fixture.kind(),
                    name,
                    at,
                    Frame.WELDMENT,
                    fixture.kind() == Fixture.Kind.SPACER
                        ? new SpringStiffness(k, k, k, 0, 0, 0)
                        : new SpringStiffness(k, k, k, turn, turn, turn)));
          }
        }
        case SUPPORT, TABLE -> {
          // Work that only lies on something is free to move: contact is left out.
        }
      }
    }
    return holdings;
  }

  /** The given places nearest to this part; its middle where none is given. */
  private static List<Vector3D> places(Weldment weldment, Fixture fixture, Part part) {
    if (fixture.at().isEmpty()) {
      return List.of(Bodies.middle(part));
    }
    List<Vector3D> own = new ArrayList<>();
    for (Vector3D at : fixture.at()) {
      double here = Solid.of(part).distance(at);
      boolean nearest =
          fixture.parts().stream()
              .allMatch(other -> Solid.of(weldment.part(other)).distance(at) >= here - NEAR_MM);
      if (nearest) {
        own.add(at);
      }
    }
    return own;
  }

  private static final double NEAR_MM = 5;
}
