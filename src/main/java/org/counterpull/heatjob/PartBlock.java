package org.counterpull.heatjob;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.Patch;
import org.counterpull.heat.block.Side;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heat.face.Insulated;
import org.counterpull.heat.face.StillAir;
import org.counterpull.heat.solve.HeatModel;
import org.counterpull.material.Metal;
import org.counterpull.solid.Box;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMetal;

/**
 * A block with the part that it is of.
 *
 * @param part the part
 * @param block the metal
 * @param widthMm what counts as length for still air on it: the width of a wall, the diameter
 * @param inside the side that looks into the hollow of a tube
 * @param round true for tubes and bars that are round
 */
record PartBlock(Part part, Block block, double widthMm, Optional<Side> inside, boolean round) {

  static PartBlock flat(Part part, Block block, Wall wall) {
    double width = Math.max(wall.highYMm() - wall.lowYMm(), wall.highZMm() - wall.lowZMm());
    return new PartBlock(part, block, width, wall.inside(), false);
  }

  static PartBlock round(Part part, Block block, double radiusMm) {
    return new PartBlock(part, block, 2 * radiusMm, Optional.of(Side.INNER), true);
  }

  /** Still air and radiation on the outside, nothing on the inside. */
  void inStillAir(HeatModel.Builder model) {
    double emissivity = emissivity();
    model.face(block, patch -> true, StillAir.onFlats(widthMm, emissivity));
    if (round) {
      Vec3 axis = block.frame().ez();
      model.face(
          block,
          patch -> patch.side() == Side.OUTER,
          new StillAir(widthMm, emissivity, Optional.of(axis)));
    }
    inside.ifPresent(side -> model.face(block, p -> p.side() == side, new Insulated()));
  }

  /** Emissivity of its metal. */
  double emissivity() {
    Metal metal = PartMetal.of(part);
    return Bench.value(
        switch (metal) {
          case CARBON_STEEL -> "emissivity carbon";
          case STAINLESS_STEEL -> "emissivity stainless";
          case ALUMINIUM_5XXX, ALUMINIUM_6XXX -> "emissivity aluminium";
        });
  }

  /** The box around its surface, grown by a margin. */
  Box box(double marginMm) {
    double[] low = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
    double[] high = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
    for (Patch patch : block.patches()) {
      for (Vec3 corner : patch.corners()) {
        double[] at = {corner.x(), corner.y(), corner.z()};
        for (int d = 0; d < 3; d++) {
          low[d] = Math.min(low[d], at[d]);
          high[d] = Math.max(high[d], at[d]);
        }
      }
    }
    return new Box(new Vector3D(low), new Vector3D(high)).grown(marginMm);
  }
}
