package org.counterpull.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.counterpull.strength.PinnedJoint;

/** The ways that bring no arc near the tube. */
final class ColdWays {
  private static final double[] PINS_MM = {8, 10, 12, 16, 20, 25, 30, 35, 40, 50};
  private static final double EAR_SHARE = 0.8;

  private final MountBench bench;
  private final MountCase mount;

  ColdWays(MountBench bench) {
    this.bench = bench;
    this.mount = bench.mount();
  }

  private double allowedMm() {
    return bench
        .leastBandMm()
        .map(b -> b * ShopValue.of("accept up to band share"))
        .orElse(ShopValue.of("reject above"));
  }

  WayAnswer saddle() {
    double width = Math.max(40, 10 * Math.ceil(mount.tube().outsideMm() / 20));
    double clear = ShopValue.of("saddle clearance");
    double liner = ShopValue.of("liner");
    List<String> deciding =
        new ArrayList<>(List.of("no arc near the tube, nothing moves its bore"));
    mount
        .forceN()
        .ifPresent(
            f ->
                deciding.add(
                    String.format(
                        Locale.ROOT,
                        "it steadies only: the %s must go through the pins at both ends",
                        MountStrength.kN(f))));
    return cold(
        Way.SADDLE,
        Outcome.FITS_IF,
        List.of(),
        List.of(
            String.format(
                Locale.ROOT,
                "saddle 8 mm thick, %.0f mm wide, bent or bored to %.1f mm, lined with %.1f mm of"
                    + " rubber",
                width,
                mount.tube().outsideMm() + 2 * liner + clear,
                liner),
            String.format(
                Locale.ROOT,
                "loose cap or band %.0f x 5 mm with two bolts M8, %.1f mm clear on diameter",
                width,
                clear)),
        "minutes saddle",
        List.of("weld the lug to the saddle off the tube; keep ports clear of the cap"),
        deciding);
  }

  WayAnswer clamp() {
    double design = bench.strength().designN();
    Optional<ClampSizing.Sized> sized = ClampSizing.of(mount.tube(), design, allowedMm());
    if (sized.isEmpty()) {
      return cold(
          Way.CLAMP,
          Outcome.DONT,
          List.of(),
          List.of(),
          "minutes clamp",
          List.of(),
          List.of(
              String.format(
                  Locale.ROOT,
                  "no clamp up to four diameters long holds %s by friction without squeezing the bore by"
                      + " more than %.3f mm",
                  MountStrength.kN(design),
                  allowedMm())));
    }
    ClampSizing.Sized c = sized.get();
    List<String> deciding = new ArrayList<>();
    List<StrengthUse> uses = new ArrayList<>();
    if (design > 0) {
      deciding.add(
          String.format(
              Locale.ROOT,
              "it presses with %.1f MPa and squeezes the bore by %.3f mm of %.3f mm allowed",
              c.pressureMPa(),
              c.squeezeMm(),
              allowedMm()));
      double holds =
          2 * ShopValue.of("slip factor") * c.preloadN() * c.bolts() / ShopValue.of("slip safety");
      uses.add(
          new StrengthUse(
              "friction of the clamp",
              MountStrength.kN(design),
              MountStrength.kN(holds),
              design / holds,
              "EN 1993-1-8:2005, 3.9, slip factor common practice"));
      deciding.add("where people depend on it friction alone will not do: add a shoulder ring");
    } else {
      deciding.add("no load is given: bolts and length are the least that hold by rule of thumb");
    }
    return cold(
        Way.CLAMP,
        Outcome.FITS_IF,
        uses,
        List.of(
            String.format(
                Locale.ROOT,
                "split clamp bored %.0f mm with the halves shimmed %.1f mm apart, %.0f mm long",
                mount.tube().outsideMm(),
                ShopValue.of("split left open"),
                c.lengthMm()),
            String.format(
                Locale.ROOT,
                "%d bolts M%d 8.8, half on either side, each pulled to %.1f kN",
                c.bolts(),
                c.size(),
                c.preloadN() / 1000)),
        "minutes clamp",
        List.of("weld the lug to one half off the tube, then bore both halves together"),
        deciding);
  }

  WayAnswer pinned() {
    double design = bench.strength().designN();
    double middle = mount.partner().thicknessMm();
    double ear = earMm(middle);
    List<String> deciding =
        new ArrayList<>(List.of("no arc near the tube, nothing moves its bore"));
    List<String> parts = new ArrayList<>();
    List<StrengthUse> uses = new ArrayList<>();
    Outcome outcome = Outcome.FITS;
    if (design > 0) {
      Optional<PinnedJoint> pin = pin(design, middle, ear);
      if (pin.isEmpty()) {
        outcome = Outcome.DONT;
        deciding.add("no pin up to 50 mm carries the load in a lug of this thickness");
      } else {
        uses.add(bench.strength().pin(pin.get()));
        parts.add(words(pin.get(), design, middle, ear));
      }
    } else {
      parts.add("bracket between two ears with a pin; give the load to size it");
    }
    parts.add(
        "bracket on the frame, or on base cap and gland of a cylinder by its own holes; none on the barrel");
    return cold(
        Way.PINNED,
        outcome,
        uses,
        parts,
        "minutes pins",
        List.of("drill the holes of both ears in one setting"),
        deciding);
  }

  /** Ears beside a lug: four fifths of its thickness, 6 mm at least. */
  static double earMm(double lugMm) {
    return Math.max(6, Math.ceil(EAR_SHARE * lugMm));
  }

  private static Optional<PinnedJoint> pin(double designN, double middle, double ear) {
    for (double d : PINS_MM) {
      PinnedJoint pin =
          new PinnedJoint(
              d,
              d + ShopValue.of("hole over pin"),
              middle,
              ear,
              1,
              ShopValue.of("pin tensile"),
              ShopValue.of("pin yield"),
              ShopValue.of("wall stress long"));
      if (pin.use(designN) <= 1) {
        return Optional.of(pin);
      }
    }
    return Optional.empty();
  }

  private static String words(PinnedJoint pin, double design, double middle, double ear) {
    return String.format(
        Locale.ROOT,
        "pin %.0f mm, C45, through holes of %.1f mm; lug %.0f mm between ears of %.0f mm; metal round"
            + " the lug's hole %.0f mm beyond it, %.0f mm beside it",
        pin.pinMm(),
        pin.holeMm(),
        middle,
        ear,
        Math.ceil(pin.beyondHole(design, middle).value()),
        Math.ceil(pin.besideHole(design, middle).value()));
  }

  private WayAnswer cold(
      Way way,
      Outcome outcome,
      List<StrengthUse> uses,
      List<String> parts,
      String minutes,
      List<String> before,
      List<String> deciding) {
    return new WayAnswer(
        way,
        outcome,
        Optional.empty(),
        bench.still(),
        uses,
        parts,
        Optional.empty(),
        0,
        ShopValue.of(minutes),
        before,
        List.of(),
        deciding);
  }
}
