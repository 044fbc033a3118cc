package org.counterpull.jointplan;

import java.util.Optional;
import org.counterpull.arc.ArcEnergy;
import org.counterpull.arc.HeatInput;
import org.counterpull.arc.NetHeat;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.cooling.CoolingTime85;
import org.counterpull.cooling.WeldShape;
import org.counterpull.feeding.ShieldingGas;
import org.counterpull.feeding.TransferMode;
import org.counterpull.feeding.WireFeed;
import org.counterpull.fillet.LegEnergy;
import org.counterpull.machine.Machine;
import org.counterpull.machine.ProcessLimits;
import org.counterpull.machine.WorkingPoint;
import org.counterpull.position.WeldingPosition;
import org.counterpull.power.LoadVoltage;
import org.counterpull.procedure.Procedure;
import org.counterpull.procedure.Range;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;

/**
 * Settings for beads of wanted size: current and voltage from the procedure within the machine's
 * reach, travel speed from the energy that the bead takes.
 *
 * @param machine the machine
 * @param point how it is set at its best for this joint
 * @param row the procedure row; empty where none covers the work
 */
record PassSettings(Machine machine, WorkingPoint point, Optional<Procedure> row) {
  private static final Formula BEAD =
      new Formula(
          "bead-area",
          "cross-section of one bead",
          "mm2",
          "weld metal of the joint shared among its beads, with 21 % overfill on fillets; derived"
              + " from published starting settings");

  private static final Formula ROW_FEED =
      new Formula("row-wire-feed", "wire feed of the procedure row", "m/min", "the procedure row");

  /** Share of a fillet's leg square that its metal takes, overfill included. */
  private static final double METAL_PER_LEG_SQUARED =
      LegEnergy.BEAD_MM2_PER_KJ_PER_MM * LegEnergy.WIRE_KJ_PER_MM3;

  /** Above this thickness short-circuit transfer is not trusted, mm. */
  private static final double SPRAY_FROM_MM = 5;

  private static final double[] STICK_OUT_MM = {10, 12, 15};

  private WeldingProcess process() {
    return point.process();
  }

  /** Transfer mode at the current that is used; empty for processes without one. */
  Optional<TransferMode> transfer(double thickerMm) {
    return switch (process()) {
      case MAG, MIG ->
          Optional.of(TransferMode.of(point.diameterMm(), gas(), startCurrentA(thickerMm)));
      case FCAW, FCAW_S, MMA, TIG -> Optional.empty();
    };
  }

  private ShieldingGas gas() {
    return machine.gas();
  }

  /** Greatest current: the machine's for this work, no more than the row's. */
  private double mostA() {
    double rows = row.map(r -> r.settings().currentA().high()).orElse(point.currentA());
    return Math.max(machine.smallestCurrentA(), Math.min(rows, point.currentA()));
  }

  /** Least current: the machine's, and the row's where the machine reaches it. */
  private double leastA() {
    double rows = row.map(r -> r.settings().currentA().low()).orElse(0.0);
    return Math.min(mostA(), Math.max(machine.smallestCurrentA(), rows));
  }

  /** The procedure's middle current within the machine's reach; spray where the part needs it. */
  private double startCurrentA(double thickerMm) {
    double usual = row.map(r -> r.settings().currentA().middle()).orElse(point.currentA());
    double current = Math.max(leastA(), Math.min(usual, mostA()));
    boolean sprayNeeded =
        point.transfer() == TransferMode.SPRAY
            && thickerMm > SPRAY_FROM_MM
            && TransferMode.of(point.diameterMm(), gas(), current) != TransferMode.SPRAY;
    return sprayNeeded ? mostA() : current;
  }

  /** What one bead may be with these settings in a position. */
  BeadLimits limits(WeldingPosition position) {
    return BeadLimits.of(RootPoint.limited(point, mostA(), gas()), position);
  }

  /**
   * One pass.
   *
   * @param bead what is laid
   * @param thinnerMm thickness for thin flow
   * @param thickerMm thickness that the transfer mode is chosen for
   * @param shape of the weld, for the cooling time
   * @param preheatC temperature that it is welded on
   * @param weldedMm length
   */
  PassPlan pass(
      Bead bead,
      double thinnerMm,
      double thickerMm,
      WeldShape shape,
      double preheatC,
      double weldedMm) {
    double wanted = bead.areaMm2() * ProcessLimits.energyPerLeg(process()) / METAL_PER_LEG_SQUARED;
    double current = startCurrentA(thickerMm);
    double travel = voltage(current) * current / 1000 / wanted;
    if (travel < point.slowestMmPerS()) {
      current = currentFor(wanted * point.slowestMmPerS(), current, mostA());
      travel = Math.max(point.slowestMmPerS(), voltage(current) * current / 1000 / wanted);
    } else if (travel > ProcessLimits.fastestMmPerS(process())) {
      double fastest = ProcessLimits.fastestMmPerS(process());
      current = currentFor(wanted * fastest, leastA(), current);
      travel = fastest;
    }
    return planned(bead, current, travel, thinnerMm, shape, preheatC, weldedMm);
  }

  private PassPlan planned(
      Bead bead,
      double currentA,
      double travelMmPerS,
      double thinnerMm,
      WeldShape shape,
      double preheatC,
      double weldedMm) {
    double volts = voltage(currentA);
    Computed arcEnergy = ArcEnergy.of(volts, currentA, travelMmPerS);
    Computed heatInput = HeatInput.of(process().k(), volts, currentA, travelMmPerS);
    Computed cooling =
        CoolingTime85.of(heatInput.value(), thinnerMm, preheatC, shape.f2ForHardness(), shape.f3());
    return new PassPlan(
        bead.number(),
        bead.layer(),
        bead.place(),
        bead.kind(),
        BEAD.result(bead.areaMm2()),
        currentA,
        volts,
        travelMmPerS,
        wireFeed(currentA),
        arcEnergy,
        heatInput,
        NetHeat.of(process(), arcEnergy.value()),
        cooling,
        weldedMm / travelMmPerS);
  }

  /** Current between two that gives a power in kJ/s; the nearer end where neither reaches it. */
  private double currentFor(double powerKW, double lowA, double highA) {
    double low = lowA;
    double high = Math.max(lowA, highA);
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (voltage(middle) * middle / 1000 < powerKW) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /** The row's voltage at that share of its current range, the load line outside it. */
  private double voltage(double currentA) {
    if (row.isPresent()) {
      Range currents = row.get().settings().currentA();
      Range volts = row.get().settings().voltageV();
      if (currents.contains(currentA)) {
        return volts.low() + share(currents, currentA) * (volts.high() - volts.low());
      }
    }
    return LoadVoltage.volts(Machine.loadLine(process()), currentA);
  }

  private Optional<Computed> wireFeed(double currentA) {
    return switch (process()) {
      case MAG ->
          rowFeed(currentA)
              .or(() -> Optional.of(WireFeed.of(point.diameterMm(), currentA, stickOutMm())));
      case MIG, FCAW, FCAW_S -> rowFeed(currentA);
      case MMA, TIG -> Optional.empty();
    };
  }

  /** The row's wire feed at that share of its current range; none outside it. */
  private Optional<Computed> rowFeed(double currentA) {
    Optional<Range> feeds = row.flatMap(r -> r.settings().wireFeedMPerMin());
    if (feeds.isEmpty() || !row.get().settings().currentA().contains(currentA)) {
      return Optional.empty();
    }
    double share = share(row.get().settings().currentA(), currentA);
    return Optional.of(
        ROW_FEED.result(feeds.get().low() + share * (feeds.get().high() - feeds.get().low())));
  }

  private static double share(Range range, double value) {
    return range.high() > range.low() ? (value - range.low()) / (range.high() - range.low()) : 0.5;
  }

  private double stickOutMm() {
    return point.diameterMm() < 0.85
        ? STICK_OUT_MM[0]
        : point.diameterMm() < 1.1 ? STICK_OUT_MM[1] : STICK_OUT_MM[2];
  }
}
