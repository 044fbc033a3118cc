package org.counterpull.coupon;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.counterpull.calibration.Effect;
import org.counterpull.calibration.FactorBand;
import org.counterpull.calibration.Reading;
import org.counterpull.weldment.Calibration;
import org.counterpull.weldment.Weldment;

/**
 * What readings on a test piece made of the factors of its process.
 *
 * @param coupon the test piece
 * @param readings in the order in which they were given
 * @param before factors before the readings: as published, or of the file's own calibration
 * @param after factors after them
 */
public record Calibrated(
    Coupon coupon,
    List<Reading> readings,
    Map<Effect, FactorBand> before,
    Map<Effect, FactorBand> after) {

  public Calibrated {
    readings = List.copyOf(readings);
    before = Collections.unmodifiableMap(new EnumMap<>(before));
    after = Collections.unmodifiableMap(new EnumMap<>(after));
  }

  /** One value read off the test piece, rad or mm. */
  public record Measured(Measure measure, double value) {}

  /** Updates the factors of the test piece's process by every value. */
  public static Calibrated of(Weldment weldment, Coupon coupon, List<Measured> measured) {
    Map<Effect, FactorBand> before = new EnumMap<>(Effect.class);
    for (Effect effect : Effect.values()) {
      before.put(effect, weldment.factor(coupon.run().process(), effect));
    }
    List<Reading> readings =
        measured.stream()
            .map(
                m ->
                    new Reading(
                        m.measure().effect(),
                        m.value(),
                        coupon.expected().get(m.measure()),
                        m.measure().error()))
            .toList();
    Map<Effect, FactorBand> after = new EnumMap<>(before);
    readings.forEach(r -> after.computeIfPresent(r.effect(), (e, band) -> band.after(r)));
    return new Calibrated(coupon, readings, before, after);
  }

  /** True when a reading told something about that effect. */
  public boolean told(Effect effect) {
    return readings.stream().anyMatch(r -> r.effect() == effect);
  }

  /** For a shop's file: what was read, and what the file knew before of the other effects. */
  public Calibration calibration(Weldment weldment, String from) {
    Map<Effect, FactorBand> factors = new EnumMap<>(Effect.class);
    after.forEach(
        (effect, band) -> {
          if (told(effect) || known(weldment, effect)) {
            factors.put(effect, band);
          }
        });
    String process = coupon.run().process().word();
    return new Calibration(process, Optional.of(coupon.run().process()), factors, from);
  }

  private boolean known(Weldment weldment, Effect effect) {
    return weldment.calibrations().stream().anyMatch(c -> c.covers(coupon.run().process(), effect));
  }
}
