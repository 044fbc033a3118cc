package org.counterpull.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.fit.ToleranceClass;
import org.counterpull.machine.ProcessLimits;
import org.counterpull.weldment.Feature;

/**
 * A lug on a cylinder's barrel in a few figures: the seal lies to one side, the piston sweeps all
 * of the other.
 *
 * @param outsideMm outside diameter of the tube
 * @param wallMm its wall
 * @param tolerance of its bore
 * @param lugAlongMm size of the lug along the tube
 * @param lugThicknessMm its thickness
 * @param lugHeightMm how far it stands off
 * @param legMm leg of the fillets all round
 * @param fromSealMm from the lug's nearer end to the seal
 * @param seal material of the seal
 * @param process welding process
 * @param currentA welding current
 * @param forceN working load; empty for none
 * @param armMm from the tube to where the load acts; empty for three quarters of the lug's height
 * @param inside what is in the tube
 */
public record ShortMount(
    double outsideMm,
    double wallMm,
    ToleranceClass tolerance,
    double lugAlongMm,
    double lugThicknessMm,
    double lugHeightMm,
    double legMm,
    double fromSealMm,
    String seal,
    WeldingProcess process,
    double currentA,
    Optional<Double> forceN,
    Optional<Double> armMm,
    Inside inside) {
  private static final double ARM_SHARE = 0.75;
  private static final double STROKE_MM = 200;
  private static final double BEYOND_SEAL_MM = 30;
  private static final double COLD_DRAWN_MPA = 450;
  private static final double LUG_TENSILE_MPA = 470;
  private static final double LUG_BETA_W = 0.9;

  /** The case that these figures describe. */
  public MountCase mount() {
    double seal = lugAlongMm / 2 + fromSealMm;
    double low = -STROKE_MM - lugAlongMm / 2;
    double yield = COLD_DRAWN_MPA * ShopValue.of("cold drawn factor");
    BoredTube tube = new BoredTube(outsideMm, wallMm, low, seal + BEYOND_SEAL_MM, yield);
    Partner lug =
        new Partner(
            "lug",
            Partner.Kind.LUG,
            lugAlongMm,
            lugThicknessMm,
            lugHeightMm,
            LUG_TENSILE_MPA,
            LUG_BETA_W);
    LegHeat heat = LegHeat.of(process, legMm, currentA);
    return new MountCase(
        "lug on tube",
        tube,
        lug,
        Seams.aroundLug(tube, lug, heat.passes()),
        legMm,
        List.of(bore(low, seal), sealAt(seal)),
        20,
        process.efficiencyHigh() / process.efficiency(),
        ProcessLimits.fastestMmPerS(process),
        forceN,
        armMm.orElse(ARM_SHARE * lugHeightMm),
        inside,
        assumptions(heat));
  }

  private Sensitive bore(double low, double seal) {
    return new Sensitive(
        "swept bore",
        Feature.Kind.BORE,
        low,
        seal,
        true,
        Optional.empty(),
        Optional.of(tolerance),
        Optional.empty(),
        false);
  }

  private Sensitive sealAt(double atMm) {
    return new Sensitive(
        "seal",
        Feature.Kind.SEAL,
        atMm,
        atMm,
        true,
        HeatLimit.of(Feature.Kind.SEAL, Optional.of(seal), Optional.empty()),
        Optional.empty(),
        Optional.empty(),
        true);
  }

  private List<String> assumptions(LegHeat heat) {
    List<String> all = new ArrayList<>(heat.notes());
    all.add("fillets all round the lug, flanks first");
    all.add(
        String.format(
            Locale.ROOT,
            "the piston sweeps %.0f mm of bore beyond the lug and up to the seal; the tube ends %.0f mm"
                + " beyond the seal",
            STROKE_MM,
            BEYOND_SEAL_MM));
    all.add("tube E355 cold drawn (450 MPa, 355 MPa beside a weld), lug S355 (470 MPa)");
    forceN.ifPresent(
        f ->
            all.add(
                String.format(
                    Locale.ROOT,
                    "the load acts %.0f mm off the tube, along it or straight off it",
                    armMm.orElse(ARM_SHARE * lugHeightMm))));
    all.add("20 C, " + inside.word());
    return all;
  }
}
