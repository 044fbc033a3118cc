package org.counterpull.jointplan;

import org.counterpull.contact.JointForm;
import org.counterpull.jointplan.EdgePreparation.Kind;

/**
 * Which form of groove: what the file asks for where that can be made here, else by thickness,
 * access, position and tools.
 *
 * @param kind the form
 * @param reason why this one
 */
record GrooveForm(Kind kind, String reason) {
  private static final double SQUARE_TEE_UP_TO_MM = 3;
  private static final double DOUBLE_ABOVE_MM = 10;
  private static final double BACKED_ABOVE_MM = 16;
  private static final double DOUBLE_U_FROM_MM = 30;
  private static final double U_ABOVE_MM = 12;
  private static final double J_ABOVE_MM = 16;
  private static final double Y_FROM_MM = 5;

  static GrooveForm of(GrooveQuestion q) {
    return switch (q.asked()) {
      case AUTO, FILLET, FLARE_BEVEL, FLARE_V, PLUG, SLOT -> chosen(q);
      case SQUARE -> asked(Kind.SQUARE);
      case V -> sided(q, Kind.V, Kind.DOUBLE_V);
      case DOUBLE_V -> twoSided(q, Kind.DOUBLE_V, Kind.V);
      case BEVEL -> sided(q, Kind.BEVEL, Kind.DOUBLE_BEVEL);
      case DOUBLE_BEVEL -> twoSided(q, Kind.DOUBLE_BEVEL, Kind.BEVEL);
      case Y ->
          q.thicknessMm() >= Y_FROM_MM
              ? sided(q, Kind.Y, Kind.DOUBLE_V)
              : tooThin(q, "Y", Kind.V, Y_FROM_MM);
      case U ->
          q.thicknessMm() > U_ABOVE_MM
              ? sided(q, Kind.U, Kind.DOUBLE_U)
              : tooThin(q, "U", Kind.V, U_ABOVE_MM);
      case J ->
          q.thicknessMm() > J_ABOVE_MM
              ? sided(q, Kind.J, Kind.DOUBLE_J)
              : tooThin(q, "J", Kind.BEVEL, J_ABOVE_MM);
      case DOUBLE_U ->
          q.thicknessMm() >= DOUBLE_U_FROM_MM
              ? twoSided(q, Kind.DOUBLE_U, Kind.U)
              : tooThin(q, "double U", Kind.DOUBLE_V, DOUBLE_U_FROM_MM);
      case DOUBLE_J ->
          q.thicknessMm() >= DOUBLE_U_FROM_MM
              ? twoSided(q, Kind.DOUBLE_J, Kind.J)
              : tooThin(q, "double J", Kind.DOUBLE_BEVEL, DOUBLE_U_FROM_MM);
      case STEEP_V -> asked(Kind.STEEP_V);
      case STEEP_BEVEL -> asked(Kind.STEEP_BEVEL);
    };
  }

  private static GrooveForm asked(Kind kind) {
    return new GrooveForm(kind, "asked for in the file");
  }

  /** A one-sided form; partial penetration on both faces needs a groove on both. */
  private static GrooveForm sided(GrooveQuestion q, Kind single, Kind both) {
    return q.partial() && q.bothSides()
        ? new GrooveForm(both, "asked for in the file on both sides, each with its own groove")
        : asked(single);
  }

  private static GrooveForm twoSided(GrooveQuestion q, Kind both, Kind single) {
    return q.bothSides()
        ? asked(both)
        : new GrooveForm(
            single, "one side only is welded: a " + both.words() + " would stay open behind");
  }

  private static GrooveForm tooThin(GrooveQuestion q, String word, Kind instead, double fromMm) {
    Kind kind = q.bothSides() ? instead : oneSided(instead);
    return new GrooveForm(
        kind,
        String.format(
            java.util.Locale.ROOT,
            "a %s is made from %.0f mm up: a %s instead",
            word,
            fromMm,
            kind.words()));
  }

  private static Kind oneSided(Kind kind) {
    return kind == Kind.DOUBLE_V ? Kind.V : kind == Kind.DOUBLE_BEVEL ? Kind.BEVEL : kind;
  }

  private static GrooveForm chosen(GrooveQuestion q) {
    boolean one = q.oneEdge();
    double t = q.thicknessMm();
    if (q.square().isPresent() && !q.partial()) {
      return new GrooveForm(Kind.SQUARE, "this machine fuses square edges of this thickness");
    }
    if (q.form() == JointForm.TEE && t <= SQUARE_TEE_UP_TO_MM && !q.partial()) {
      return new GrooveForm(Kind.SQUARE, "an edge as thin as this melts through as it stands");
    }
    if (!q.bothSides()) {
      return fromOneSide(q, one, t);
    }
    if (t <= DOUBLE_ABOVE_MM && !q.partial()) {
      return new GrooveForm(
          one ? Kind.BEVEL : Kind.V, "thin enough for one groove and a sealing run behind it");
    }
    if (t >= DOUBLE_U_FROM_MM && q.mills() && !q.partial()) {
      return new GrooveForm(
          one ? Kind.DOUBLE_J : Kind.DOUBLE_U, "thick, and a mill is at hand: least weld metal");
    }
    return new GrooveForm(
        one ? Kind.DOUBLE_BEVEL : Kind.DOUBLE_V,
        "both sides are open: two grooves take about half the metal of one and pull against each"
            + " other");
  }

  private static GrooveForm fromOneSide(GrooveQuestion q, boolean one, double t) {
    if (t <= BACKED_ABOVE_MM || q.partial()) {
      return new GrooveForm(
          one ? Kind.BEVEL : Kind.V, "one side is open: the root is closed from there");
    }
    return q.mills()
        ? new GrooveForm(
            one ? Kind.J : Kind.U, "one side is open and a mill is at hand: less metal than a V")
        : new GrooveForm(
            one ? Kind.STEEP_BEVEL : Kind.STEEP_V,
            "one side is open and it is thick: a strip behind carries the root");
  }
}
