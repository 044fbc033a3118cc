package org.counterpull.plan;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.weldment.Check;
import org.counterpull.weldment.Weldment;

/**
 * What one order of welding does to a weldment, and what others would.
 *
 * @param weldment what is built
 * @param order the order that it is told for
 * @param sequence its runs in turn
 * @param search how the best order was found; empty for another one
 * @param checks file order
 * @param orders every order that was compared
 * @param parts what each part was taken as
 * @param runs what each run wants, in the order of {@code sequence}
 * @param slender thin walls and what they would bear before they buckle
 * @param held the shape with the fixtures still on
 * @param released the shape once they are off
 * @param notes what else must be known, in sentences
 */
public record PullAnswer(
    Weldment weldment,
    NamedOrder order,
    List<Turn> sequence,
    Optional<Search> search,
    List<CheckAnswer> checks,
    List<Compared> orders,
    List<Taken> parts,
    List<Wanted> runs,
    List<Slender> slender,
    List<MovedPart> held,
    List<MovedPart> released,
    List<String> notes) {

  public PullAnswer {
    sequence = List.copyOf(sequence);
    checks = List.copyOf(checks);
    orders = List.copyOf(orders);
    parts = List.copyOf(parts);
    runs = List.copyOf(runs);
    slender = List.copyOf(slender);
    held = List.copyOf(held);
    released = List.copyOf(released);
    notes = List.copyOf(notes);
  }

  /**
   * A run in the order.
   *
   * @param run its name
   * @param reversed welded from the end of its line as it is drawn
   */
  public record Turn(String run, boolean reversed) {}

  /**
   * How an order was found.
   *
   * @param proved true when every order that the rules allow was looked at
   * @param evaluations how many orders were looked at
   * @param seed of the search
   * @param interrupted true when it was stopped early
   */
  public record Search(boolean proved, long evaluations, long seed, boolean interrupted) {}

  /** Whether a check comes out true. */
  public enum Verdict {
    YES("in tolerance"),
    MARGINAL("may be in tolerance or not"),
    NO("out of tolerance"),
    UNTOLD("can't be told");

    private final String words;

    Verdict(String words) {
      this.words = words;
    }

    /** As on a plan. */
    public String words() {
      return words;
    }
  }

  /**
   * How far a check will be off, mm.
   *
   * @param expected as likely more as less
   * @param low one of twenty comes out below it
   * @param high one of twenty comes out above it
   */
  public record Band(double expected, double low, double high) {}

  /**
   * A check.
   *
   * @param check what must come out true
   * @param toleranceMm how far it may be off
   * @param held with the fixtures still on
   * @param released once they are off
   * @param verdict by the released shape
   * @param untold why it can't be told; empty when it can
   * @param shares how much each run moves it, the most first; together they make its central value
   * @param presets how to set parts off before tacking so that it comes out true
   * @param withPresets what is left to expect with them
   * @param remedies what else would help, the most first; empty where it is in tolerance
   */
  public record CheckAnswer(
      Check check,
      double toleranceMm,
      Band held,
      Band released,
      Verdict verdict,
      String untold,
      List<Share> shares,
      List<Preset> presets,
      Band withPresets,
      List<Remedy> remedies) {
    public CheckAnswer {
      shares = List.copyOf(shares);
      remedies = List.copyOf(remedies);
      presets = List.copyOf(presets);
    }
  }

  /**
   * Something that would bring a check nearer.
   *
   * @param what what is changed
   * @param leaves what is to be expected then
   */
  public record Remedy(String what, Band leaves) {}

  /** What one run moves a check by, mm. */
  public record Share(String run, double mm) {}

  /**
   * How far to set a point of a part off before tacking.
   *
   * @param part the part
   * @param where which point of it
   * @param offset in weldment axes, mm
   */
  public record Preset(String part, String where, Vector3D offset) {}

  /**
   * An order beside others.
   *
   * @param order which
   * @param expectedMm each check's expected value, file order
   * @param worst the worst check's expected value over its tolerance
   * @param handlingMin turning over and moving, min
   */
  public record Compared(
      NamedOrder order, List<Double> expectedMm, double worst, double handlingMin) {
    public Compared {
      expectedMm = List.copyOf(expectedMm);
    }
  }

  /** What a part was taken as, and why. */
  public record Taken(String part, String as) {}

  /**
   * What a run wants, free of restraint.
   *
   * @param run its name
   * @param netHeatJPerMm net heat of all passes
   * @param closingMm closing of the gap between its walls, and the lean that comes of it
   * @param acrossMm the greatest shrinkage across of its walls
   * @param angleRad the greatest angle of its walls
   * @param alongN force along of all walls together
   * @param basis where the figures come from
   * @param beyond limits of the closed forms that it leaves
   */
  public record Wanted(
      String run,
      double netHeatJPerMm,
      double closingMm,
      double acrossMm,
      double angleRad,
      double alongN,
      String basis,
      List<String> beyond) {
    public Wanted {
      beyond = List.copyOf(beyond);
    }
  }

  /**
   * A thin part and its buckling.
   *
   * @param part the part
   * @param forceN force along of its runs
   * @param limitN force at which it buckles
   * @param stressMPa stress at that force
   * @param buckles true when it does
   */
  public record Slender(
      String part, double forceN, double limitN, double stressMPa, boolean buckles) {}

  /**
   * How a part has moved and bent.
   *
   * @param part the part
   * @param stations along it, or all over it
   */
  public record MovedPart(String part, List<Station> stations) {
    public MovedPart {
      stations = List.copyOf(stations);
    }
  }

  /**
   * A place of a part.
   *
   * @param at where it was
   * @param shift how far it went, mm
   * @param turn how far it turned, rad
   */
  public record Station(Vector3D at, Vector3D shift, Vector3D turn) {}
}
