package org.counterpull.verification;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.feeding.BeadArea;
import org.counterpull.feeding.BurnOff;
import org.counterpull.feeding.SprayCurrent;
import org.counterpull.feeding.StickElectrode;
import org.counterpull.feeding.StickRun;
import org.counterpull.fillet.EnThroatBounds;
import org.counterpull.fillet.FilletArea;
import org.counterpull.fillet.FilletThroat;
import org.counterpull.fillet.FitUpGap;
import org.counterpull.fillet.FlareThroat;
import org.counterpull.fillet.FlareThroat.Flare;
import org.counterpull.fillet.LegEnergy;
import org.counterpull.fillet.MaximumFillet;
import org.counterpull.fillet.PartialPenetrationThroat;
import org.counterpull.fillet.PartialPenetrationThroat.Manner;
import org.counterpull.fillet.SkewThroat;
import org.counterpull.groove.Groove;
import org.counterpull.groove.GrooveArea;
import org.counterpull.groove.Preparation;
import org.counterpull.groove.WeldMetalMass;
import org.counterpull.groove.WeldSections;
import org.counterpull.strength.AwsFilletStress;
import org.counterpull.strength.BaseMetalShear;
import org.counterpull.strength.EffectiveLength;
import org.counterpull.strength.EnShearStrength;
import org.counterpull.strength.LineWeld;
import org.counterpull.strength.LongLap;
import org.counterpull.strength.RequiredThroat;
import org.counterpull.strength.WeldGroup;
import org.counterpull.strength.WorstLineForce;

/** Sections, sizes, electrodes and strengths that the registry of formulas doesn't hold. */
final class WeldCases {
  private static final double KIP_PER_INCH_IN_N_PER_MM = 4448.222 / 25.4;

  private WeldCases() {}

  static Map<String, ToDoubleFunction<Map<String, String>>> all() {
    return Map.ofEntries(
        Map.entry("groove", WeldCases::groove),
        Map.entry("groove mass", a -> WeldMetalMass.steelKgPerM(groove(a))),
        Map.entry("groove face", a -> cut(a).faceWidthMm()),
        Map.entry("handbook triangle", a -> handbook(triangle(of(a, "angle"), of(a, "side")))),
        Map.entry("handbook rectangle", a -> handbook(of(a, "gap") * of(a, "thickness"))),
        Map.entry("handbook cap", a -> handbook(WeldSections.capMm2(of(a, "w"), of(a, "h")))),
        Map.entry("fillet mass", a -> WeldMetalMass.steelKgPerM(square(of(a, "leg")))),
        Map.entry(
            "convex fillet", a -> FilletArea.of(of(a, "leg"), 90, of(a, "convexity")).value()),
        Map.entry("unequal fillet", a -> FilletArea.unequalMm2(of(a, "z1"), of(a, "z2"))),
        Map.entry("unequal throat", a -> FilletThroat.unequalMm(of(a, "z1"), of(a, "z2"))),
        Map.entry("skew", a -> SkewThroat.of(of(a, "leg"), of(a, "faces")).value()),
        Map.entry("flare bevel", a -> WeldSections.flareBevelMm2(of(a, "radius"))),
        Map.entry("flare V", a -> WeldSections.flareVMm2(of(a, "radius"))),
        Map.entry("plug", a -> WeldSections.plugMm3(of(a, "hole"), of(a, "thickness"))),
        Map.entry(
            "slot", a -> WeldSections.slotMm3(of(a, "length"), of(a, "width"), of(a, "thickness"))),
        Map.entry("bar, planar", a -> WeldSections.barDoubleBevelMm3(of(a, "d"), of(a, "angle"))),
        Map.entry("bar, cones", a -> WeldSections.barConesMm3(of(a, "d"))),
        Map.entry(
            "leg from energy", a -> LegEnergy.legMm(of(a, "energy"), LegEnergy.WIRE_KJ_PER_MM3)),
        Map.entry("stick metal", a -> stick(a).metalMm3()),
        Map.entry("stick run", a -> StickRun.of(stick(a), of(a, "leg")).value()),
        Map.entry("bead of wire", WeldCases::bead),
        Map.entry("burn-off", WeldCases::burnOff),
        Map.entry("spray from", a -> SprayCurrent.inArgonA(of(a, "wire"))),
        Map.entry("least throat", a -> EnThroatBounds.least(of(a, "thickness")).value()),
        Map.entry("largest leg", a -> MaximumFillet.of(of(a, "thickness")).value()),
        Map.entry("leg over a gap", a -> FitUpGap.of(of(a, "leg"), of(a, "gap")).value()),
        Map.entry("bevel throat", WeldCases::bevelThroat),
        Map.entry(
            "least groove size", a -> PartialPenetrationThroat.leastSizeMm(of(a, "thickness"))),
        Map.entry("flare throat", WeldCases::flareThroat),
        Map.entry("EN strength", WeldCases::en),
        Map.entry("EN across", a -> en(a) * Math.sqrt(1.5)),
        Map.entry("EN per length", a -> en(a) * of(a, "throat")),
        Map.entry("EN fillets", WeldCases::enFillets),
        Map.entry("long lap, AISC", a -> LongLap.aisc(of(a, "length"), of(a, "leg")).value()),
        Map.entry("AWS stress", a -> AwsFilletStress.mPa(AwsFilletStress.E70_MPA, 0)),
        Map.entry("AWS gain", a -> AwsFilletStress.gain(of(a, "angle"))),
        Map.entry("AWS per leg", WeldCases::awsPerLeg),
        Map.entry("AWS fillets", WeldCases::awsFillets),
        Map.entry("plate to match", WeldCases::plateToMatch),
        Map.entry("bracket", WeldCases::bracket),
        Map.entry("bracket throat", a -> RequiredThroat.of(bracket(a), 207.8).value()),
        Map.entry(
            "bracket leg",
            a -> RequiredThroat.leg(bracket(a), AwsFilletStress.mPa(482.6, 0)).value()));
  }

  private static double of(Map<String, String> arguments, String name) {
    return Double.parseDouble(arguments.get(name));
  }

  private static double or(Map<String, String> arguments, String name, double usual) {
    return arguments.containsKey(name) ? of(arguments, name) : usual;
  }

  private static Groove cut(Map<String, String> a) {
    Preparation form = Preparation.of(a.get("form"));
    return new Groove(
        form, of(a, "t"), or(a, "b", 2), or(a, "c", 1.5), of(a, "angle"), or(a, "radius", 0));
  }

  private static double groove(Map<String, String> a) {
    Groove groove = cut(a);
    double width = groove.faceWidthMm();
    double cap = WeldSections.capMm2(width, or(a, "cap", 0));
    double root = WeldSections.capMm2(groove.gapMm(), or(a, "root", 0));
    double share = a.containsKey("side") ? 0.5 : 1;
    return share * GrooveArea.mm2(groove) + cap + root;
  }

  private static double triangle(double degrees, double sideMm) {
    return GrooveArea.mm2(Groove.straight(Preparation.BEVEL, sideMm, 0, 0, degrees));
  }

  private static double handbook(double mm2) {
    return WeldMetalMass.of(mm2, WeldMetalMass.HANDBOOK_STEEL_G_PER_CM3).value();
  }

  private static double square(double legMm) {
    return FilletArea.of(legMm, 90, 0).value();
  }

  private static StickElectrode stick(Map<String, String> a) {
    return new StickElectrode(of(a, "core"), of(a, "length"), 50, of(a, "recovery"));
  }

  private static double bead(Map<String, String> a) {
    return BeadArea.ofWire(of(a, "feed"), of(a, "wire"), 0.95, of(a, "travel")).value();
  }

  /** In m/min. */
  private static double burnOff(Map<String, String> a) {
    return BurnOff.mmPerS(of(a, "wire"), of(a, "current"), of(a, "extension")) * 0.06;
  }

  private static double bevelThroat(Map<String, String> a) {
    return PartialPenetrationThroat.bevel45(of(a, "depth"), Manner.valueOf(a.get("manner")))
        .value();
  }

  private static double flareThroat(Map<String, String> a) {
    boolean gas = Boolean.parseBoolean(a.get("gas"));
    return FlareThroat.of(Flare.valueOf(a.get("form")), gas, of(a, "radius")).value();
  }

  private static double en(Map<String, String> a) {
    return EnShearStrength.mPa(of(a, "tensile"), of(a, "beta"));
  }

  /** Two fillets with throat 4 and length 100, S235, kN. */
  private static double enFillets(Map<String, String> a) {
    double counted = EffectiveLength.en(100, 4, 2).value();
    double gain = Boolean.parseBoolean(a.get("across")) ? Math.sqrt(1.5) : 1;
    return 2 * counted * 4 * EnShearStrength.mPa(360, 0.8) * gain / 1000;
  }

  /** N/mm for each mm of leg, or kip/in for each sixteenth of an inch. */
  private static double awsPerLeg(Map<String, String> a) {
    double stress = AwsFilletStress.mPa(482.633, 0) * FilletThroat.perLeg(90);
    return "inch".equals(a.get("units")) ? stress * 25.4 / 16 / KIP_PER_INCH_IN_N_PER_MM : stress;
  }

  /** Two fillets with leg 6 and length 100, kN. */
  private static double awsFillets(Map<String, String> a) {
    double throat = FilletThroat.of(6, 90).value();
    return 2 * 100 * throat * AwsFilletStress.mPa(482.6, 0) / 1000;
  }

  private static double plateToMatch(Map<String, String> a) {
    double throat = FilletThroat.of(6, 90).value();
    double force = of(a, "fillets") * throat * AwsFilletStress.mPa(482.6, 0);
    return BaseMetalShear.matchingThicknessMm(400, force);
  }

  /** 20 kN down at 150 mm from the upright of a channel of welds 80 x 160: N/mm. */
  private static double bracket(Map<String, String> a) {
    WeldGroup group =
        new WeldGroup(List.of(line(0, 0, 80, 0), line(0, 0, 0, 160), line(0, 160, 80, 160)));
    Vector3D at = new Vector3D(150, 80, 0);
    return WorstLineForce.of(group.forces(new Vector3D(0, -20_000, 0), at)).value();
  }

  private static LineWeld line(double x1, double y1, double x2, double y2) {
    return new LineWeld.Straight(new Vector3D(x1, y1, 0), new Vector3D(x2, y2, 0));
  }
}
