package org.counterpull.verification;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.counterpull.shrinkage.BucklingStress;
import org.counterpull.shrinkage.ButtPass;
import org.counterpull.shrinkage.ButtShrinkage;
import org.counterpull.shrinkage.ClampedAngle;
import org.counterpull.shrinkage.FilletShrinkage;
import org.counterpull.shrinkage.FlangeDeflection;
import org.counterpull.shrinkage.FreeAngle;
import org.counterpull.shrinkage.FreeShrinkage;
import org.counterpull.shrinkage.GirthShrinkage;
import org.counterpull.shrinkage.HeatShare;
import org.counterpull.shrinkage.LayeredShrinkage;
import org.counterpull.shrinkage.LugOnTube;
import org.counterpull.shrinkage.MalisiusButtShrinkage;
import org.counterpull.shrinkage.MultiPassAngle;
import org.counterpull.shrinkage.PlateWaviness;
import org.counterpull.shrinkage.Preset;
import org.counterpull.shrinkage.RestrainedAngle;
import org.counterpull.shrinkage.RestrainedShrinkage;
import org.counterpull.shrinkage.RingLoad;
import org.counterpull.shrinkage.ShrinkageMaterial;
import org.counterpull.shrinkage.TendonCamber;
import org.counterpull.shrinkage.TendonForce;
import org.counterpull.shrinkage.WeldCamber;

/** Closed forms of shrinkage that the registry of formulas doesn't hold. */
final class ShrinkageCases {
  private static final double E = 206_000;
  private static final ShrinkageMaterial STEEL = ShrinkageMaterial.CARBON_STEEL;

  /** The printed tables of camber use 0.844e-3 rounded, with the heat capacity of that row. */
  private static final double ROUNDED_TENDON_N_PER_J_PER_MM = 0.844e-3 * E;

  private ShrinkageCases() {}

  static Map<String, ToDoubleFunction<Map<String, String>>> all() {
    return Map.ofEntries(
        Map.entry("tendon factor", a -> TendonForce.FACTOR),
        Map.entry("tendon per heat", a -> TendonForce.forceN(1, material(a))),
        Map.entry("heat share", ShrinkageCases::heatShare),
        Map.entry("V butt", ShrinkageCases::butt),
        Map.entry("fillet allowance", ShrinkageCases::filletAllowance),
        Map.entry("layers", a -> LayeredShrinkage.equalLayers((int) of(a, "layers"))),
        Map.entry("layered V", a -> LayeredShrinkage.of(twelve(), STEEL).value()),
        Map.entry("restraint as a spring", a -> RestrainedShrinkage.bySpring(of(a, "k"), 15)),
        Map.entry("bead angle", ShrinkageCases::beadAngle),
        Map.entry("fillet angle", ShrinkageCases::filletAngle),
        Map.entry("flange deflection", ShrinkageCases::flangeDeflection),
        Map.entry("V by passes", a -> MultiPassAngle.of(twelve()).value()),
        Map.entry("double V by passes", ShrinkageCases::doubleV),
        Map.entry("stiffened plate", ShrinkageCases::stiffenedPlate),
        Map.entry("plate shortening", ShrinkageCases::plateShortening),
        Map.entry("tee camber", ShrinkageCases::teeCamber),
        Map.entry("beam camber", ShrinkageCases::beamCamber),
        Map.entry("panel", ShrinkageCases::panel),
        Map.entry("free plate", ShrinkageCases::freePlate),
        Map.entry("waviness", ShrinkageCases::waviness),
        Map.entry("ring load", ShrinkageCases::ringLoad),
        Map.entry("ring load near an end", ShrinkageCases::nearEnd),
        Map.entry("shrunk band", ShrinkageCases::shrunkBand),
        Map.entry("girth", ShrinkageCases::girth),
        Map.entry("lug on tube", ShrinkageCases::lug),
        Map.entry("out of round", ShrinkageCases::outOfRound),
        Map.entry("preset", ShrinkageCases::preset));
  }

  private static double of(Map<String, String> arguments, String name) {
    return Double.parseDouble(arguments.get(name));
  }

  private static ShrinkageMaterial material(Map<String, String> arguments) {
    return ShrinkageMaterial.named(arguments.get("material"));
  }

  private static double heatShare(Map<String, String> a) {
    return HeatShare.share((int) of(a, "n"), of(a, "h"), (int) of(a, "n2"), of(a, "h2"));
  }

  /** 60 degree V, gap 2, face 2, parabolic cap of 1.5. */
  private static double butt(Map<String, String> a) {
    double h = of(a, "h");
    double width = 2 + 2 * (h - 2) * Math.tan(Math.toRadians(30));
    double weld = 2 * h + (h - 2) * (h - 2) * Math.tan(Math.toRadians(30)) + width;
    return switch (a.get("form")) {
      case "area" -> weld;
      case "Spraragen" -> ButtShrinkage.high(weld, h, 2).value();
      case "Blodgett" -> ButtShrinkage.low(weld, h, 2).value();
      case "middle" -> ButtShrinkage.middle(weld, h, 2).value();
      case "Malisius" -> MalisiusButtShrinkage.of(45, weld, h).value();
      case "heat" -> FreeShrinkage.shrinkageMm(1, 60 * weld, h, STEEL);
      case "ratio" ->
          ButtShrinkage.high(weld, h, 2).value() / ButtShrinkage.low(weld, h, 2).value();
      default -> throw new IllegalArgumentException(a.get("form"));
    };
  }

  private static double filletAllowance(Map<String, String> a) {
    return a.get("joint").equals("tee")
        ? FilletShrinkage.tee(of(a, "leg"), of(a, "h"), 1).value()
        : FilletShrinkage.lap(of(a, "leg"), of(a, "h"), 1).value();
  }

  private static List<ButtPass> passes(double heat, String sides, double... depths) {
    return IntStream.range(0, depths.length)
        .mapToObj(i -> new ButtPass(heat, depths[i], sides.charAt(i) - '0'))
        .toList();
  }

  private static List<ButtPass> twelve() {
    return passes(1000, "11111", 3, 5.5, 8.2, 10.6, 12);
  }

  private static double doubleV(Map<String, String> a) {
    List<ButtPass> passes = passes(1200, a.get("sides"), 4, 7, 10, 13, 16.5, 20);
    return Math.toDegrees(MultiPassAngle.of(passes).value());
  }

  private static double beadAngle(Map<String, String> a) {
    double x = of(a, "x");
    return a.get("form").equals("sharp")
        ? FreeAngle.sharpRad(x, STEEL)
        : FreeAngle.of(100 * x, 10).value();
  }

  private static double filletAngle(Map<String, String> a) {
    double flange = of(a, "flange");
    double q = 60 * of(a, "leg") * of(a, "leg") / 2 * HeatShare.share(2, flange, 1, of(a, "web"));
    return FreeAngle.of(q, flange).value();
  }

  private static double flangeDeflection(Map<String, String> a) {
    return FlangeDeflection.of(of(a, "width"), of(a, "leg"), of(a, "h")).value();
  }

  private static double stiffenedPlate(Map<String, String> a) {
    return RestrainedAngle.of(of(a, "h"), of(a, "spacing"), of(a, "C"), E).value();
  }

  private static double plateShortening(Map<String, String> a) {
    double force = TendonForce.forceN(1000, material(a));
    return TendonCamber.shortening(force, 3000, E).value() * 1000;
  }

  /** Flange 150 x 10, web 200 x 8, length 6000, two fillets of leg 6. */
  private static double teeCamber(Map<String, String> a) {
    double centroid = (150 * 10 * 5 + 200 * 8 * 110) / 3100.0;
    double inertia =
        150 * 1000 / 12.0
            + 1500 * Math.pow(centroid - 5, 2)
            + 8 * 8e6 / 12
            + 1600 * Math.pow(110 - centroid, 2);
    double lever = centroid - 12;
    double one = 1080 * ROUNDED_TENDON_N_PER_J_PER_MM;
    return switch (a.get("form")) {
      case "inertia" -> inertia;
      case "lever" -> lever;
      case "weld area" -> WeldCamber.of(36, lever, 6000, inertia).value();
      case "tendon, both" -> tendon(2 * one, lever, 6000, inertia);
      case "0.2, both" -> tendon(2160 * 200.0, lever, 6000, inertia);
      case "tendon, one" -> tendon(one, lever, 6000, inertia);
      case "overlap 1.2" ->
          tendon(TendonForce.overlappingN(one, one, 10, 17, 0.2), lever, 6000, inertia);
      case "shortening" -> TendonCamber.shortening(2 * one, 3100, E).value() * 6000;
      default -> throw new IllegalArgumentException(a.get("form"));
    };
  }

  private static double tendon(double force, double lever, double length, double inertia) {
    return TendonCamber.of(force, lever, length, inertia, E).value();
  }

  private static double beamCamber(Map<String, String> a) {
    return switch (a.get("form")) {
      case "tendon" -> tendon(40 * 60.7 * ROUNDED_TENDON_N_PER_J_PER_MM, 100, 8000, 5e7);
      case "weld area" -> WeldCamber.of(40, 100, 8000, 5e7).value();
      case "strain" ->
          TendonCamber.shortening(40 * 60.7 * ROUNDED_TENDON_N_PER_J_PER_MM, 6000, E).value();
      default -> throw new IllegalArgumentException(a.get("form"));
    };
  }

  private static double critical(String asked, double stressMPa, double areaMm2) {
    double load = BucklingStress.loadN(stressMPa, areaMm2);
    return switch (asked) {
      case "stress" -> stressMPa;
      case "load" -> load / 1000;
      case "Q at 200" -> load / 200;
      case "Q at 170" -> load / 170;
      default -> throw new IllegalArgumentException(asked);
    };
  }

  private static double panel(Map<String, String> a) {
    double b = of(a, "b");
    double h = of(a, "h");
    double stress = BucklingStress.of(BucklingStress.PANEL_COEFFICIENT, h, b).value();
    return critical(a.get("asked"), stress, b * h + of(a, "stiffener"));
  }

  private static double freePlate(Map<String, String> a) {
    double half = of(a, "B") / 2;
    double h = of(a, "h");
    double k = BucklingStress.freeEdgeCoefficient(half, of(a, "L"));
    return critical(a.get("asked"), BucklingStress.of(k, h, half).value(), 2 * half * h);
  }

  private static double waviness(Map<String, String> a) {
    return a.get("level").equals("beta")
        ? PlateWaviness.slenderness(600, of(a, "h"), 235, E)
        : PlateWaviness.of(
                PlateWaviness.Level.valueOf(a.get("level").toUpperCase(Locale.ROOT)),
                600,
                of(a, "h"),
                235,
                E)
            .value();
  }

  private static double ringLoad(Map<String, String> a) {
    double x = a.get("bz").equals("pi") ? Math.PI : of(a, "bz");
    return switch (a.get("shape")) {
      case "deflection" -> RingLoad.deflectionShape(x);
      case "moment" -> RingLoad.momentShape(x);
      case "shear" -> RingLoad.shearShape(x);
      case "slope" -> RingLoad.slopeShape(x);
      default -> throw new IllegalArgumentException(a.get("shape"));
    };
  }

  private static double nearEnd(Map<String, String> a) {
    double load = of(a, "ba");
    return RingLoad.nearFreeEnd(load, a.get("place").equals("load") ? load : 0);
  }

  private static double shrunkBand(Map<String, String> a) {
    double beta = 1.285 / Math.sqrt(80.6 * 7.11);
    return RingLoad.shrunkBandMm(0.01, 80.6, beta * of(a, "c")) / (0.01 * 80.6);
  }

  private static double girth(Map<String, String> a) {
    double radius = of(a, "radius");
    double wall = of(a, "wall");
    double w = GirthShrinkage.of(of(a, "Q"), radius, wall, material(a)).value();
    return switch (a.get("asked")) {
      case "hoop load" -> GirthShrinkage.hoopLoadNPerMm(of(a, "Q"), radius, material(a));
      case "inside" -> w;
      case "at an end" -> RingLoad.nearFreeEnd(0, 0) * w;
      case "first zero" -> GirthShrinkage.firstZeroMm(radius, wall);
      default -> throw new IllegalArgumentException(a.get("asked"));
    };
  }

  private static double lug(Map<String, String> a) {
    double inertia = Math.PI / 64 * (1e8 - Math.pow(90, 4));
    double force = TendonForce.forceN(800, STEEL);
    return switch (a.get("asked")) {
      case "bore" -> LugOnTube.boreShrinkage(0.5, 47.5, 5, 60).value();
      case "kink" -> LugOnTube.axisKinkRad(force, 50, 60, inertia, E);
      case "camber" -> tendon(force, 50, 1000, inertia);
      default -> throw new IllegalArgumentException(a.get("asked"));
    };
  }

  private static double outOfRound(Map<String, String> a) {
    return LugOnTube.outOfRound(Math.toRadians(of(a, "degrees")));
  }

  private static double preset(Map<String, String> a) {
    return switch (a.get("asked")) {
      case "butt lift" -> Preset.buttLift(0.06022, 300).value();
      case "fillet tip" -> Preset.filletTip(0.0233, 150).value();
      case "skin stress" -> Preset.filletStress(0.0233, 150, 10, E).value();
      case "elastic angle" -> ClampedAngle.elasticRad(355, 20, 10, E);
      default -> throw new IllegalArgumentException(a.get("asked"));
    };
  }
}
