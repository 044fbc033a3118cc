package org.counterpull.jointplan;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.counterpull.contact.Contact;
import org.counterpull.contact.ContactFinder;
import org.counterpull.groove.Groove;
import org.counterpull.groove.Preparation;
import org.counterpull.procedure.ProcedureBook;
import org.counterpull.procedure.ProcedureLibrary;
import org.counterpull.weldment.ShopMachine;
import org.counterpull.weldment.Weldment;

/** Plans one joint over thickness, form, process and position, as files would ask for it. */
final class SweepBench {
  static final int[] THICKNESSES_MM = {2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30};

  private static final ProcedureBook PROCEDURES = ProcedureLibrary.bundled();

  /** Joints that a small shop meets. */
  enum Form {
    TEE_FILLET("tee, fillets on both sides"),
    TEE_FULL("tee, full penetration from both sides"),
    LAP("lap, fillet"),
    CORNER("corner, full penetration from outside"),
    BUTT("butt, both sides"),
    BUTT_ONE_SIDE("butt, one side");

    final String words;

    Form(String words) {
      this.words = words;
    }
  }

  /** How the joint stands. */
  enum Stand {
    FLAT("flat or horizontal, turned over"),
    UPRIGHT("vertical, welded upwards"),
    OVERHEAD("overhead");

    final String words;

    Stand(String words) {
      this.words = words;
    }
  }

  /** One planned joint. */
  record Row(Form form, Stand stand, String machine, int thicknessMm, JointPlan plan) {
    @Override
    public String toString() {
      return form + " " + stand + " " + machine + " " + thicknessMm + " mm";
    }
  }

  private static final String MACHINES =
      """
      machines:
        mag: {process: mag, current: 30..300 A, duty: 60% at 300 A, supply: 400 V 32 A three-phase, wire: [0.8 mm G3Si1, 1.0 mm G3Si1, 1.2 mm G3Si1], gas: Ar + 18 CO2}
        cored: {process: fcaw, current: 60..300 A, duty: 60% at 300 A, supply: 400 V 32 A three-phase, wire: 1.2 mm T 42 2 P M 1, gas: Ar + 18 CO2}
        self-shielded: {process: fcaw-s, current: 40..180 A, duty: 30% at 180 A, supply: 230 V 16 A, wire: 0.9 mm E71T-11}
        stick: {process: mma, current: 20..180 A, duty: 40% at 180 A, supply: 230 V 25 A}
        tig: {process: tig, current: 5..220 A, duty: 40% at 220 A, supply: 230 V 25 A}
      """;

  private SweepBench() {}

  static List<Row> all(Path folder) {
    List<Row> rows = new ArrayList<>();
    for (Form form : Form.values()) {
      for (Stand stand : Stand.values()) {
        for (int thicknessMm : THICKNESSES_MM) {
          Weldment weldment = PlannedJoints.read(folder, file(form, stand, thicknessMm, "S355J2"));
          Contact contact = ContactFinder.usual().find(weldment).contacts().get(0);
          for (ShopMachine machine : weldment.machines()) {
            JointPlan plan =
                new JointPlanner(with(weldment, machine), PROCEDURES)
                    .plan(weldment.joints().get(0), contact);
            rows.add(new Row(form, stand, machine.machine().name(), thicknessMm, plan));
          }
        }
      }
    }
    return rows;
  }

  /** The groove of a row, from the measures on its plan. */
  static ChosenGroove groove(Row row) {
    EdgePreparation p = row.plan().preparation();
    Preparation form =
        switch (p.kind()) {
          case V, Y, STEEP_V -> Preparation.V;
          case DOUBLE_V -> Preparation.DOUBLE_V;
          case BEVEL, STEEP_BEVEL -> Preparation.BEVEL;
          case DOUBLE_BEVEL -> Preparation.DOUBLE_BEVEL;
          case U -> Preparation.U;
          case J -> Preparation.J;
          case DOUBLE_U -> Preparation.DOUBLE_U;
          case DOUBLE_J -> Preparation.DOUBLE_J;
          case SQUARE, FILLET, FLARE_BEVEL, FLARE_V, PLUG, SLOT -> Preparation.SQUARE;
        };
    Groove groove =
        new Groove(
            form,
            row.thicknessMm(),
            p.rootGapMm(),
            p.rootFaceMm(),
            p.angleDeg(),
            p.rootRadiusMm(),
            p.secondDepthMm());
    boolean both = row.plan().runs().size() > 1;
    return new ChosenGroove(
        p.kind(), groove, both, !p.backing().isEmpty(), p.gouged(), "", "", List.of());
  }

  private static Weldment with(Weldment w, ShopMachine machine) {
    return new Weldment(
        w.name(),
        w.parts(),
        w.joints(),
        w.features(),
        w.checks(),
        List.of(machine),
        w.fixtures(),
        w.surroundings(),
        w.prices(),
        w.before(),
        w.order(),
        w.runs(),
        w.probes(),
        w.assumptions());
  }

  static String file(Form form, Stand stand, int t, String steel) {
    boolean turned = stand == Stand.FLAT;
    return "weldment: sweep\nunits: mm\nsteel: "
        + steel
        + "\nparts:\n"
        + parts(form, stand, t)
        + "joints:\n  seam: {between: [one, two], "
        + weld(form, stand)
        + "}\nsurroundings: {turning over: "
        + turned
        + "}\n"
        + MACHINES;
  }

  private static String weld(Form form, Stand stand) {
    String side =
        switch (stand) {
          case FLAT -> "top";
          case UPRIGHT -> "top";
          case OVERHEAD -> "bottom";
        };
    return switch (form) {
      case TEE_FILLET -> "weld: fillet, sides: [front, back]";
      case TEE_FULL -> "penetration: full, sides: [front, back]";
      case LAP -> "weld: fillet, sides: [front, back]";
      case CORNER -> "penetration: full, sides: [front]";
      case BUTT -> "penetration: full, sides: [top, bottom]";
      case BUTT_ONE_SIDE -> "penetration: full, sides: [" + side + "]";
    };
  }

  private static String parts(Form form, Stand stand, int t) {
    String lying =
        switch (stand) {
          case FLAT, OVERHEAD -> "along: x, up: z";
          case UPRIGHT -> "along: z, up: y";
        };
    String face = stand == Stand.OVERHEAD ? "bottom" : "top";
    return switch (form) {
      case TEE_FILLET, TEE_FULL ->
          String.format(
              Locale.ROOT,
              "  two: {stock: flat 200 x %1$d, length: 300, start: [0, 0, 0], %2$s}%n"
                  + "  one: {stock: flat 200 x %1$d, length: 100, onto: two, face: %3$s,"
                  + " set: standing along, at: middle}%n",
              t,
              lying,
              face);
      case LAP ->
          String.format(
              Locale.ROOT,
              "  two: {stock: flat 200 x %1$d, length: 300, start: [0, 0, 0], %2$s}%n"
                  + "  one: {stock: flat 100 x %1$d, length: 200, onto: two, face: %3$s,"
                  + " at: middle}%n",
              t,
              lying,
              face);
      case CORNER ->
          String.format(
              Locale.ROOT,
              "  two: {stock: flat 200 x %1$d, length: 300, start: [0, 0, 0], %2$s}%n"
                  + "  one: {stock: flat 300 x %1$d, length: 100, onto: two, face: %3$s,"
                  + " set: standing along, at: middle, across: flush front}%n",
              t,
              lying,
              face);
      case BUTT, BUTT_ONE_SIDE -> butt(stand, t);
    };
  }

  private static String butt(Stand stand, int t) {
    String lying = stand == Stand.UPRIGHT ? "along: x, up: y" : "along: x, up: z";
    return String.format(
        Locale.ROOT,
        "  two: {stock: flat 200 x %1$d, length: 200, start: [0, 0, 0], %2$s}%n"
            + "  one: {stock: flat 200 x %1$d, length: 200, start: [200, 0, 0], %2$s}%n",
        t,
        lying);
  }
}
