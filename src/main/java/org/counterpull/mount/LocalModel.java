package org.counterpull.mount;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.CartesianGrid;
import org.counterpull.heat.block.Frame;
import org.counterpull.heat.block.Grading;
import org.counterpull.heat.block.Patch;
import org.counterpull.heat.block.Side;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heat.face.HeldBody;
import org.counterpull.heat.face.Insulated;
import org.counterpull.heat.face.StillAir;
import org.counterpull.heat.link.LinkLaw;
import org.counterpull.heat.link.Links;
import org.counterpull.heat.material.HeatMaterials;
import org.counterpull.heat.material.ThermalMaterial;
import org.counterpull.heat.solve.HeatModel;
import org.counterpull.mount.Partner.Kind;

/**
 * The tube, the sleeve and the lug as blocks of metal. The tube's axis is z, the lug stands along
 * x, which is up.
 */
final class LocalModel {
  private static final double FINE_MM = 3;
  private static final double LUG_FINE_MM = 2.5;
  private static final double LUG_COARSE_MM = 12;
  private static final double SAG_MM = 1.5;
  private static final double CHILL_BEYOND_MM = 20;
  private static final double RAG_FROM_MM = 12;

  private final MountCase mount;
  private final HeatSetup setup;
  private final ThermalMaterial steel = HeatMaterials.carbonSteel();
  private final double[] angles;
  private final Block tube;
  private final Optional<Block> sleeve;
  private final Optional<Block> lug;
  private final HeatModel model;

  LocalModel(MountCase mount, HeatSetup setup) {
    this.mount = mount;
    this.setup = setup;
    BoredTube t = mount.tube();
    this.angles = TubeGrid.angles(setup.seams(), t.outerRadiusMm(), FINE_MM);
    this.tube =
        block("tube", t.innerRadiusMm(), t.outerRadiusMm(), t.lowZMm(), t.highZMm(), setup.seams());
    this.sleeve =
        setup
            .sleeve()
            .map(
                s ->
                    block(
                        "sleeve",
                        t.outerRadiusMm() + s.gapMm(),
                        s.outerRadiusMm(t),
                        s.fromZMm(),
                        s.toZMm(),
                        setup.seams()));
    this.lug =
        setup.lugIsThere() && mount.partner().kind() == Kind.LUG
            ? Optional.of(lugBlock())
            : Optional.empty();
    this.model = model();
  }

  HeatModel heat() {
    return model;
  }

  Block tube() {
    return tube;
  }

  /** What welds are laid on: the sleeve where there is one. */
  Block base() {
    return sleeve.orElse(tube);
  }

  /** What a seam joins to its base; empty where that isn't laid out. */
  Optional<Block> partner(Seam seam) {
    boolean ring = setup.sleeve().isPresent() && seam.round();
    return ring ? Optional.of(tube) : lug;
  }

  /** Radius that a seam lies on. */
  double radiusMm(Seam seam) {
    if (seam.round() && setup.sleeve().isPresent()) {
      return mount.tube().outerRadiusMm();
    }
    return setup
        .sleeve()
        .map(s -> s.outerRadiusMm(mount.tube()))
        .orElse(mount.tube().outerRadiusMm());
  }

  private Block block(
      String name, double inner, double outer, double low, double high, List<Seam> seams) {
    return new Block(
        name, steel, Frame.WORLD, TubeGrid.of(inner, outer, low, high, seams, angles, FINE_MM));
  }

  private Block lugBlock() {
    Partner p = mount.partner();
    double foot =
        setup.sleeve().map(s -> s.outerRadiusMm(mount.tube())).orElse(mount.tube().outerRadiusMm());
    double half = p.alongMm() / 2;
    double[] x =
        Grading.graded(
            foot,
            foot + p.heightMm(),
            List.of(new Grading.Zone(foot, foot + mount.legMm() + 3)),
            LUG_FINE_MM,
            1.4,
            LUG_COARSE_MM);
    double[] y = Grading.uniform(-p.thicknessMm() / 2, p.thicknessMm() / 2, LUG_FINE_MM);
    double[] z = Grading.uniform(-half, half, FINE_MM);
    return new Block("lug", steel, Frame.WORLD, new CartesianGrid(x, y, z));
  }

  private HeatModel model() {
    double emissivity = ShopValue.of("emissivity");
    HeatModel.Builder builder = HeatModel.builder().ambientC(mount.ambientC()).up(Vec3.X);
    builder.block(tube);
    round(builder, tube, mount.tube().outsideMm());
    sleeve.ifPresent(
        s -> {
          builder.block(s);
          round(builder, s, 2 * setup.sleeve().orElseThrow().outerRadiusMm(mount.tube()));
          builder.link(
              Links.gap(
                  tube,
                  Side.OUTER,
                  s,
                  Side.INNER,
                  new LinkLaw.AirGap(emissivity, emissivity),
                  setup.sleeve().orElseThrow().gapMm() + SAG_MM));
        });
    lug.ifPresent(
        block -> {
          builder.block(block);
          builder.face(block, p -> true, StillAir.onFlats(mount.partner().alongMm(), emissivity));
          LinkLaw fitted = new LinkLaw.Contact(ShopValue.of("fitted faces"));
          Links.facing(sleeve.orElse(tube), block, fitted, -SAG_MM, SAG_MM)
              .ifPresent(builder::link);
        });
    inside(builder);
    return builder.build();
  }

  private static void round(HeatModel.Builder builder, Block block, double diameterMm) {
    double emissivity = ShopValue.of("emissivity");
    builder.face(block, p -> true, StillAir.onFlats(diameterMm, emissivity));
    builder.face(
        block,
        p -> p.side() == Side.OUTER,
        new StillAir(diameterMm, emissivity, Optional.of(Vec3.Z)));
    builder.face(block, p -> p.side() == Side.INNER, new Insulated());
  }

  private void inside(HeatModel.Builder builder) {
    if (setup.inside() == Inside.OIL) {
      builder.face(
          tube,
          p -> p.side() == Side.INNER,
          new HeldBody(ShopValue.of("oil film"), mount.ambientC()));
    }
    if (!setup.chilled()) {
      return;
    }
    double reach = mount.halfLengthMm() + CHILL_BEYOND_MM;
    double cold = ShopValue.of("chill temperature");
    Predicate<Patch> under = p -> p.side() == Side.INNER && Math.abs(p.centre().z()) <= reach;
    builder.face(tube, under, new HeldBody(ShopValue.of("plug contact"), cold));
    double rag = mount.halfLengthMm() + mount.legMm() + RAG_FROM_MM;
    Predicate<Patch> beside =
        p -> p.side() == Side.OUTER && Math.abs(p.centre().z()) >= rag && near(p.centre().z());
    builder.face(tube, beside, new HeldBody(ShopValue.of("rag contact"), cold));
  }

  /** Between the welds and what is near, where a rag can lie. */
  private boolean near(double zMm) {
    return mount.near().stream()
        .filter(s -> !s.sized())
        .anyMatch(
            s -> {
              double at = s.nearestMm(0);
              return zMm * at > 0 && Math.abs(zMm) <= Math.abs(at) + RAG_FROM_MM;
            });
  }
}
