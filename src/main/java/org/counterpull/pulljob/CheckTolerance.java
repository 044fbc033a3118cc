package org.counterpull.pulljob;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.shrinkage.GeneralTolerance;
import org.counterpull.weldment.Check;
import org.counterpull.weldment.Check.Tolerance;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;

/** The tolerance of a check in mm. */
public final class CheckTolerance {
  private static final Formula GIVEN =
      new Formula("given-tolerance", "tolerance from the file", "mm", "the weldment file");

  private CheckTolerance() {}

  /** As the file gives it, or by ISO 13920. */
  public static Computed mm(Weldment weldment, Check check) {
    if (check.tolerance() instanceof Tolerance.Millimetres given) {
      return GIVEN.result(given.mm());
    }
    String letter = String.valueOf(((Tolerance.Iso13920) check.tolerance()).letter());
    double lengthMm = lengthMm(weldment, check);
    return switch (check.kind()) {
      case DISTANCE -> GeneralTolerance.of(letter, lengthMm, GeneralTolerance.Kind.LINEAR);
      case STRAIGHT, FLAT, PARALLEL, COAXIAL ->
          GeneralTolerance.of(letter, lengthMm, GeneralTolerance.Kind.STRAIGHT);
      case SQUARE -> square(letter, lengthMm);
    };
  }

  /** An angle of the class over the shorter leg, as mm at its end. */
  private static Computed square(String letter, double lengthMm) {
    Computed minutes = GeneralTolerance.of(letter, lengthMm, GeneralTolerance.Kind.ANGULAR);
    double mm = lengthMm * Math.tan(Math.toRadians(minutes.value() / 60));
    return minutes.formula().in("mm").result(mm, minutes.warnings());
  }

  /** The length that the class is looked up by: the distance, the shorter leg, the longest side. */
  private static double lengthMm(Weldment weldment, Check check) {
    if (check.kind() == Check.Kind.DISTANCE && check.targetMm().isPresent()) {
      return check.targetMm().get();
    }
    var lengths =
        check.subjects().stream().map(s -> weldment.part(s.part())).mapToDouble(Part::lengthMm);
    return check.kind() == Check.Kind.SQUARE
        ? lengths.min().orElseThrow()
        : lengths.max().orElseThrow();
  }
}
