package org.counterpull.coupon;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.counterpull.calibration.Effect;
import org.counterpull.contact.JointForm;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.shrinkage.FreeShrinkage;
import org.counterpull.shrinkage.ShrinkageMaterial;
import org.counterpull.shrinkage.TendonCamber;
import org.counterpull.zone.LinePeaks;
import org.counterpull.zone.Reach;
import org.counterpull.zone.Wall;
import org.counterpull.zone.ZoneRule;
import org.counterpull.zone.ZoneShrinkage;

/**
 * A test piece that stands for the run that leaves most of a job's shape open.
 *
 * <p>A tee for anything with a fillet or a flare, two plates side by side for a butt: angle and
 * shrinkage. A bar with one bead along one edge, laid as the heaviest pass: camber, which tells the
 * force along.
 *
 * @param pull the run that it stands for
 * @param shares of what is left open in the whole job, by effect; they add to 1
 * @param butt two plates side by side instead of a tee
 * @param plateWidthMm width of the plate, or of both plates of a butt together
 * @param lengthMm length of plate and weld
 * @param uprightHeightMm height of the tee's upright
 * @param barWidthMm width of the bar; its thickness is that of the plate
 * @param barLengthMm its length
 * @param expected what the published forms expect, by measure: rad or mm
 */
public record Coupon(
    RunPull pull,
    Map<Effect, Double> shares,
    boolean butt,
    double plateWidthMm,
    double lengthMm,
    double uprightHeightMm,
    double barWidthMm,
    double barLengthMm,
    Map<Measure, Double> expected) {

  /** Marks across the weld lie so far apart, mm. */
  public static final double MARKS_MM = 100;

  private static final double LEAST_WIDTH_MM = 150;
  private static final double WIDTH_PER_THICKNESS = 16;
  private static final double LENGTH_MM = 300;
  private static final double UPRIGHT_MM = 60;
  private static final double BAR_LENGTH_MM = 1000;
  private static final double LEAST_BAR_MM = 60;

  /** A bar that gets warmer than this all over yields as a whole and tells nothing, K. */
  private static final double MEAN_RISE_K = 100;

  private static final double START_C = 20;
  private static final double YIELD_MPA = 275;

  public Coupon {
    shares = Collections.unmodifiableMap(new EnumMap<>(shares));
    expected = Collections.unmodifiableMap(new EnumMap<>(expected));
  }

  /**
   * The test piece for a job; empty when nothing is welded.
   *
   * @param pulls the runs, the least sure first
   */
  public static Optional<Coupon> of(List<RunPull> pulls) {
    return pulls.stream().findFirst().map(first -> of(first, shares(pulls)));
  }

  private static Coupon of(RunPull pull, Map<Effect, Double> shares) {
    double h = pull.plateMm();
    double q = pull.run().netHeatJPerMm();
    boolean butt = pull.form() == JointForm.BUTT;
    double width = tens(Math.max(LEAST_WIDTH_MM, WIDTH_PER_THICKNESS * h));
    ShrinkageMaterial steel = ShrinkageMaterial.CARBON_STEEL;
    double heaviest =
        pull.run().passes().stream().mapToDouble(p -> p.netHeat().value()).max().orElse(q);
    double bar =
        tens(Math.max(LEAST_BAR_MM, heaviest / (steel.heatCapacityJPerMm3K() * h * MEAN_RISE_K)));
    JointForm form = butt ? JointForm.BUTT : JointForm.TEE;
    double heat = RunPulls.plateHeat(form, q, h, pull.otherMm());
    Map<Measure, Double> expected = new EnumMap<>(Measure.class);
    expected.put(Measure.ANGLE, RunPulls.angleRad(form, pull.run(), h, pull.otherMm()));
    expected.put(Measure.SHRINKAGE, FreeShrinkage.of(heat, h).value());
    expected.put(Measure.CAMBER, camberMm(heaviest, h, bar, steel));
    return new Coupon(
        pull, shares, butt, width, LENGTH_MM, UPRIGHT_MM, bar, BAR_LENGTH_MM, expected);
  }

  private static Map<Effect, Double> shares(List<RunPull> pulls) {
    Map<Effect, Double> open = new EnumMap<>(Effect.class);
    for (Effect effect : Effect.values()) {
      open.put(effect, pulls.stream().mapToDouble(p -> p.unsureMm().get(effect)).sum());
    }
    double all = open.values().stream().mapToDouble(Double::doubleValue).sum();
    open.replaceAll((effect, mm) -> mm / all);
    return open;
  }

  /** Bow of a bar with a bead along one edge, by the zone rule. */
  private static double camberMm(
      double netHeatJPerMm, double thickness, double width, ShrinkageMaterial steel) {
    LinePeaks peaks =
        new LinePeaks(
            netHeatJPerMm,
            steel.heatCapacityJPerMm3K(),
            START_C,
            new Reach.Between(-width, 0),
            new Reach.Between(-thickness / 2, thickness / 2),
            Optional.empty());
    double yieldRise = YIELD_MPA / (steel.elasticModulusMPa() * steel.expansionPerK());
    ZoneShrinkage zone =
        ZoneRule.of(
            peaks.cells(yieldRise),
            1,
            new Wall(thickness, 0, width * thickness),
            START_C,
            YIELD_MPA,
            steel);
    double lever = width / 2 + zone.tendonNMm();
    double inertia = thickness * width * width * width / 12;
    return TendonCamber.of(
            zone.tendon().value(), lever, BAR_LENGTH_MM, inertia, steel.elasticModulusMPa())
        .value();
  }

  private static double tens(double mm) {
    return 10 * Math.ceil(mm / 10);
  }

  /** The run that it stands for. */
  public RunPlan run() {
    return pull.run();
  }

  /** What leaves most open in the whole job. */
  public Effect matters() {
    return shares.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey)
        .orElseThrow();
  }
}
