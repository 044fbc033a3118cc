package org.counterpull.registry;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.quantity.Require;
import org.counterpull.strength.AwsFilletStress;
import org.counterpull.strength.BaseMetalShear;
import org.counterpull.strength.EffectiveLength;
import org.counterpull.strength.EnDirectional;
import org.counterpull.strength.EnShearStrength;
import org.counterpull.strength.GroupShape;
import org.counterpull.strength.LongLap;
import org.counterpull.strength.ThroatStress;

/** Published formulas of the package {@code strength}. */
final class StrengthFormulas {
  private static final Argument TENSILE =
      Argument.quantity("tensile", "MPa", "tensile strength of the weaker part");
  private static final Argument BETA =
      Argument.quantity("beta", "1", "correlation factor: S235 0.80, S275 0.85, S355 0.90, else 1");
  private static final Argument LENGTH = Argument.quantity("length", "mm", "length of the weld");
  private static final Argument THROAT = Argument.quantity("throat", "mm", "throat of the fillet");

  private StrengthFormulas() {}

  static List<PublishedFormula> all() {
    return List.of(
        PublishedFormula.of(
            GroupShape.MODULUS,
            group(),
            a -> shape(a).modulus(a.value("level"), a.value("upright"))),
        PublishedFormula.of(
            GroupShape.POLAR,
            group(),
            a -> shape(a).polarMoment(a.value("level"), a.value("upright"))),
        PublishedFormula.of(
            EnShearStrength.FORMULA,
            List.of(TENSILE, BETA),
            a -> EnShearStrength.of(a.value("tensile"), a.value("beta"))),
        directional(),
        PublishedFormula.of(
            AwsFilletStress.FORMULA,
            List.of(
                Argument.quantity("filler-strength", "MPa", "tensile strength of the filler metal"),
                Argument.quantity("angle", "deg", "between force and weld; 0 for no gain")
                    .orElse("0")),
            a -> AwsFilletStress.of(a.value("filler-strength"), a.value("angle"))),
        PublishedFormula.of(
            BaseMetalShear.FORMULA,
            List.of(
                Argument.quantity("yield", "MPa", "yield strength"),
                TENSILE,
                Argument.quantity("thickness", "mm", "thickness beside the weld")),
            a -> BaseMetalShear.of(a.value("yield"), a.value("tensile"), a.value("thickness"))),
        PublishedFormula.of(
            EffectiveLength.EN,
            List.of(
                LENGTH,
                THROAT,
                Argument.quantity("open-ends", "1", "ends not of full size, 0 to 2").orElse("2")),
            a ->
                EffectiveLength.en(
                    a.value("length"), a.value("throat"), (int) a.value("open-ends"))),
        PublishedFormula.of(
            LongLap.EN,
            List.of(LENGTH, THROAT),
            a -> LongLap.en(a.value("length"), a.value("throat"))));
  }

  private static List<Argument> group() {
    return List.of(
        Argument.choice("group", "form of the group", GroupShape.words()),
        Argument.quantity("level", "mm", "level size b").orElse("0"),
        Argument.quantity("upright", "mm", "upright size d, or the diameter of a circle"));
  }

  private static GroupShape shape(Arguments arguments) {
    return GroupShape.of(arguments.text("group"));
  }

  /** A square fillet under a force along it and one along its leg. */
  private static PublishedFormula directional() {
    return PublishedFormula.of(
        EnDirectional.FORMULA,
        List.of(
            Argument.quantity("along", "N", "design force along the weld").orElse("0"),
            Argument.quantity("across", "N", "design force across, along one leg").orElse("0"),
            Argument.quantity("length", "mm", "length that counts"),
            THROAT,
            TENSILE,
            BETA),
        a -> {
          double length = Require.positive("length that counts", a.value("length"), "mm");
          Vector3D force = new Vector3D(a.value("along") / length, 0, a.value("across") / length);
          Vector3D opening = new Vector3D(0, 1, 1);
          ThroatStress stress = ThroatStress.of(force, Vector3D.PLUS_I, opening, a.value("throat"));
          return EnDirectional.of(stress, a.value("tensile"), a.value("beta"));
        });
  }
}
