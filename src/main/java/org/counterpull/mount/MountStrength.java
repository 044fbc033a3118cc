package org.counterpull.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.fillet.FilletThroat;
import org.counterpull.strength.EnDirectional;
import org.counterpull.strength.EnShearStrength;
import org.counterpull.strength.LineWeld;
import org.counterpull.strength.PinnedJoint;
import org.counterpull.strength.PlateOnTube;
import org.counterpull.strength.StationForce;
import org.counterpull.strength.ThroatStress;
import org.counterpull.strength.WeldGroup;

/**
 * Whether lug, welds and wall carry the load: along the tube at the lug's arm, and straight off the
 * tube. Loads across the lug are not looked at: a lug is no bracket.
 */
final class MountStrength {
  private static final Vector3D OFF = Vector3D.PLUS_I;
  private static final Vector3D ALONG = Vector3D.PLUS_K;

  private final MountCase mount;
  private final double designN;

  MountStrength(MountCase mount) {
    this.mount = mount;
    this.designN = mount.forceN().orElse(0.0) * ShopValue.of("load factor");
  }

  double designN() {
    return designN;
  }

  /** Welds and wall of a lug on a tube of that shape; nothing without a load or without a lug. */
  List<StrengthUse> lugOn(BoredTube tube) {
    if (designN == 0 || mount.partner().kind() != Partner.Kind.LUG) {
      return List.of();
    }
    List<StrengthUse> uses = new ArrayList<>();
    uses.add(welds(tube));
    double yield = tube.yieldMPa();
    double length = mount.partner().alongMm();
    double moment = designN * mount.armMm();
    double momentRd = PlateOnTube.moment(tube.outsideMm(), tube.wallMm(), length, yield).value();
    uses.add(
        new StrengthUse(
            "wall under the lug, load along the tube",
            kNm(moment),
            kNm(momentRd),
            moment / momentRd,
            PlateOnTube.MOMENT.source()));
    double pullRd = PlateOnTube.pull(tube.outsideMm(), tube.wallMm(), length, yield).value();
    uses.add(
        new StrengthUse(
            "wall under the lug, load off the tube",
            kN(designN),
            kN(pullRd),
            designN / pullRd,
            PlateOnTube.PULL.source()));
    return uses;
  }

  private StrengthUse welds(BoredTube tube) {
    double r = tube.outerRadiusMm();
    double y = mount.partner().thicknessMm() / 2;
    double z = mount.partner().alongMm() / 2;
    Vector3D a = new Vector3D(r, -y, -z);
    Vector3D b = new Vector3D(r, -y, z);
    Vector3D c = new Vector3D(r, y, z);
    Vector3D d = new Vector3D(r, y, -z);
    List<LineWeld> lines =
        List.of(
            new LineWeld.Straight(a, b),
            new LineWeld.Straight(b, c),
            new LineWeld.Straight(c, d),
            new LineWeld.Straight(d, a));
    WeldGroup group = new WeldGroup(lines);
    Vector3D at = new Vector3D(r + mount.armMm(), 0, 0);
    double throat = mount.legMm() * FilletThroat.perLeg(90);
    double use = 0;
    for (Vector3D direction : List.of(ALONG, OFF)) {
      for (StationForce force : group.forces(direction.scalarMultiply(designN), at)) {
        Vector3D out =
            force.station().at().subtract(group.centroid()).crossProduct(force.station().along());
        Vector3D away = force.station().along().crossProduct(OFF);
        Vector3D opening = OFF.add(away.scalarMultiply(out.getX() > 0 ? -1 : 1));
        ThroatStress stress =
            ThroatStress.of(force.nPerMm(), force.station().along(), opening, throat);
        use =
            Math.max(
                use,
                EnDirectional.utilisation(
                    stress, mount.partner().tensileMPa(), mount.partner().betaW()));
      }
    }
    return new StrengthUse(
        "fillets of the lug, leg " + trim(mount.legMm()) + " mm",
        kN(designN),
        kN(designN / use),
        use,
        EnDirectional.FORMULA.source());
  }

  /** A fillet round the tube that takes the load along it. */
  StrengthUse ring(double legMm) {
    double throat = legMm * FilletThroat.perLeg(90);
    double strength = EnShearStrength.mPa(mount.partner().tensileMPa(), mount.partner().betaW());
    double allowed = Math.PI * mount.tube().outsideMm() * throat * strength;
    return new StrengthUse(
        "fillet round the tube, leg " + trim(legMm) + " mm",
        kN(designN),
        kN(allowed),
        designN / allowed,
        EnShearStrength.FORMULA.source());
  }

  /** A pin through the lug between two ears. */
  StrengthUse pin(PinnedJoint pin) {
    double use = pin.use(designN);
    return new StrengthUse(
        "pin " + trim(pin.pinMm()) + " mm in double shear",
        kN(designN),
        kN(designN / use),
        use,
        PinnedJoint.COMBINED.source());
  }

  static String kN(double newton) {
    return String.format(Locale.ROOT, "%.1f kN", newton / 1000);
  }

  private static String kNm(double nmm) {
    return String.format(Locale.ROOT, "%.2f kNm", nmm / 1e6);
  }

  static String trim(double mm) {
    return org.counterpull.quantity.Printed.number(mm, 3);
  }
}
