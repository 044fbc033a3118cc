package org.counterpull.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.counterpull.shrinkage.FilletLean;
import org.counterpull.strength.PinnedJoint;

/**
 * The hole of a lug after the pull, against its pin.
 *
 * @param pin pin, hole and plates
 * @param offsetMm how far the hole is off, across the lug, with its band
 * @param tiltMm by how much its ends are out of line over the lug's thickness
 * @param clearanceMm of pin in hole
 * @param pilotMm diameter to drill before welding; empty where the hole can be finished before
 * @param uses pin, bearing, metal round the hole under the load; empty without a load
 */
public record LugHole(
    PinnedJoint pin,
    Span offsetMm,
    Span tiltMm,
    double clearanceMm,
    Optional<Double> pilotMm,
    List<StrengthUse> uses) {
  public LugHole {
    uses = List.copyOf(uses);
  }

  /**
   * A lug's hole, at the height where the load acts.
   *
   * @param mount the lug on its tube
   * @param pin pin, hole and plates; the lug is the middle one
   * @param leanRad lean of the lug after welding where the shape engine gives it; empty for what
   *     its fillets leave
   */
  public static LugHole of(MountCase mount, PinnedJoint pin, Optional<Span> leanRad) {
    Span lean = leanRad.orElseGet(() -> lean(mount));
    double arm = mount.armMm();
    double clearance = pin.holeMm() - pin.pinMm();
    Span offset = times(lean, arm);
    Span tilt = times(lean, pin.middleMm());
    boolean finished = 2 * offset.high() <= clearance / 2 && tilt.high() <= clearance / 2;
    double stock = 2 * offset.high() + ShopValue.of("reaming stock");
    double pilot = Math.floor(2 * (pin.holeMm() - stock)) / 2;
    return new LugHole(
        pin,
        offset,
        tilt,
        clearance,
        finished ? Optional.empty() : Optional.of(pilot),
        uses(mount, pin));
  }

  /** The hole for a pin of C45 between two ears, with the usual clearance. */
  public static LugHole through(MountCase mount, double pinMm) {
    double middle = mount.partner().thicknessMm();
    PinnedJoint pin =
        new PinnedJoint(
            pinMm,
            pinMm + ShopValue.of("hole over pin"),
            middle,
            ColdWays.earMm(middle),
            1,
            ShopValue.of("pin tensile"),
            ShopValue.of("pin yield"),
            ShopValue.of("wall stress long"));
    return of(mount, pin, Optional.empty());
  }

  /** The first flank's fillet pulls the lug over, the second takes most of it back. */
  private static Span lean(MountCase mount) {
    double first = FilletLean.of(mount.legMm(), mount.partner().thicknessMm()).value();
    return new Span(
        0, ShopValue.of("lean left") * first, ShopValue.of("lean left at most") * first);
  }

  private static Span times(Span span, double factor) {
    return new Span(span.low() * factor, span.value() * factor, span.high() * factor);
  }

  private static List<StrengthUse> uses(MountCase mount, PinnedJoint pin) {
    double design = new MountStrength(mount).designN();
    List<StrengthUse> uses = new ArrayList<>();
    if (design == 0) {
      return uses;
    }
    uses.add(
        force(
            "shear of the pin, one plane",
            design / 2,
            pin.shear().value(),
            PinnedJoint.SHEAR.source()));
    uses.add(
        force(
            "bearing in the lug",
            design,
            pin.bearing(pin.middleMm()).value(),
            PinnedJoint.BEARING.source()));
    uses.add(
        force(
            "bearing in each ear",
            design / 2,
            pin.bearing(pin.outerMm()).value(),
            PinnedJoint.BEARING.source()));
    double moment = pin.momentNmm(design);
    uses.add(
        new StrengthUse(
            "bending of the pin",
            String.format(Locale.ROOT, "%.0f N m", moment / 1000),
            String.format(Locale.ROOT, "%.0f N m", pin.bending().value() / 1000),
            moment / pin.bending().value(),
            PinnedJoint.BENDING.source()));
    uses.add(
        new StrengthUse(
            "shear and bending of the pin together",
            String.format(Locale.ROOT, "%.2f", pin.combined(design).value()),
            "1.00",
            pin.combined(design).value(),
            PinnedJoint.COMBINED.source()));
    double beyond = mount.partner().heightMm() - mount.armMm() - pin.holeMm() / 2;
    uses.add(
        metal("metal beyond the hole", pin.beyondHole(design, pin.middleMm()).value(), beyond));
    double beside = mount.partner().alongMm() / 2 - pin.holeMm() / 2;
    uses.add(
        metal("metal beside the hole", pin.besideHole(design, pin.middleMm()).value(), beside));
    return uses;
  }

  private static StrengthUse force(String what, double load, double allowed, String source) {
    return new StrengthUse(
        what, MountStrength.kN(load), MountStrength.kN(allowed), load / allowed, source);
  }

  private static StrengthUse metal(String what, double wantedMm, double thereMm) {
    return new StrengthUse(
        what,
        String.format(Locale.ROOT, "%.1f mm wanted", wantedMm),
        String.format(Locale.ROOT, "%.1f mm there", thereMm),
        thereMm > 0 ? wantedMm / thereMm : 99,
        PinnedJoint.BEYOND.source());
  }

  /** Whether anything is overloaded. */
  public boolean tooWeak() {
    return uses.stream().anyMatch(u -> u.use() > 1);
  }

  /** What to do, in sentences. */
  public List<String> words() {
    List<String> words = new ArrayList<>();
    words.add(
        String.format(
            Locale.ROOT,
            "pin %s in a hole of %s mm: after welding the hole is %.2f mm off (up to %.2f) and %.3f mm out of"
                + " parallel over the lug's thickness, clearance %.2f mm",
            MountStrength.trim(pin.pinMm()),
            MountStrength.trim(pin.holeMm()),
            offsetMm.value(),
            offsetMm.high(),
            tiltMm.value(),
            clearanceMm));
    words.add(
        pilotMm
            .map(
                d ->
                    String.format(
                        Locale.ROOT,
                        "drill %s mm before welding, ream to %s mm when cold with the ears in place",
                        MountStrength.trim(d),
                        MountStrength.trim(pin.holeMm())))
            .orElse(
                "drill it to size before welding; weld with the pin and ears in place, flanks in turn"));
    for (StrengthUse use : uses) {
      words.add(
          String.format(
              Locale.ROOT,
              "%s: %s of %s, %.0f %%%s",
              use.what(),
              use.load(),
              use.allowable(),
              100 * use.use(),
              use.use() > 1 ? ": too weak" : ""));
    }
    words.add("anything lifted, ridden or stood under needs an engineer");
    return words;
  }
}
