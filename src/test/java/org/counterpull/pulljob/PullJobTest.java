package org.counterpull.pulljob;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import org.counterpull.plan.NamedOrder;
import org.counterpull.plan.PullAnswer;
import org.counterpull.plan.PullAnswer.CheckAnswer;
import org.counterpull.pull.RunSequence;
import org.counterpull.shrinkage.TendonCamber;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Weldments whose shape is known: by closed forms, by symmetry, or in direction by publications.
 */
class PullJobTest {
  @TempDir Path folder;

  /** A tee of two flats with a given force along each of its two fillets. */
  private static String tee(String runs) {
    return """
        weldment: tee
        steel: S355J2
        parts:
          flange: {stock: flat 100 x 10, length: 2000, start: [0, 0, 0]}
          web: {stock: flat 60 x 10, length: 2000, onto: flange, face: top, set: on edge along}
        joints:
          seam: {between: [web, flange], weld: fillet, leg: 5}
        checks:
          camber: {straight: flange, class: F}
        runs:
        """
        + runs;
  }

  private static String along(String run, double kN) {
    return "  " + run + ": {shrinkage: {along: " + kN + " kN}}\n";
  }

  /**
   * Two forces on the seams bend the whole tee as one beam: F d L2 / (8 E I) per unit of both, with
   * A 1000 + 600, centroid of the section 5 + 600 x 35 / 1600 = 18.125 from the bottom, I = 100 x
   * 10^3 / 12 + 1000 x 13.125^2 + 10 x 60^3 / 12 + 600 x 21.875^2 = 647708 mm4. The weld line's
   * middle lies leg / 3 = 1.667 above the flange: d = 18.125 - 11.667 = 6.458. Once both are welded
   * the second force acts on the whole section; the first acted while the web hung on the second
   * side's tacks only, which gives it a little more. Within 10 %.
   */
  @Test
  void aTeeIsCamberedAsABeam() throws IOException {
    PullAnswer answer =
        Shop.welded(
            folder,
            tee(along("seam/front", 50) + along("seam/back", 50)),
            NamedOrder.LEFT_TO_RIGHT);
    double expected = TendonCamber.of(100e3, 6.458, 2000, 647_708, 206_000).value();
    assertThat(expected).isCloseTo(2.42, within(0.005));
    assertThat(Shop.central(answer, "camber")).isCloseTo(expected, within(0.1 * expected));
  }

  /** Equal forces above and below the neutral axis cancel; on one side they add up. */
  @Test
  void balanceAboutTheNeutralAxis() throws IOException {
    String balanced =
        """
        weldment: cross
        steel: S355J2
        parts:
          bar: {stock: flat 60 x 12, length: 1500, start: [0, 0, 0]}
          top: {stock: flat 20 x 6, length: 1400, onto: bar, face: top, set: on edge along}
          under: {stock: flat 20 x 6, length: 1400, onto: bar, face: bottom, set: on edge along}
        joints:
          top: {between: [top, bar], weld: fillet, leg: 3}
          under: {between: [under, bar], weld: fillet, leg: 3}
        checks:
          camber: {straight: bar, class: F}
        runs:
          top/front: {shrinkage: {along: 20 kN}}
          top/back: {shrinkage: {along: 20 kN}}
        """;
    double oneSided =
        Shop.central(Shop.welded(folder, balanced, NamedOrder.LEFT_TO_RIGHT), "camber");
    String both =
        balanced
            + "  under/front: {shrinkage: {along: 20 kN}}\n"
            + "  under/back: {shrinkage: {along: 20 kN}}\n";
    PullAnswer answer = Shop.welded(folder, both, NamedOrder.BEST);
    assertThat(oneSided).isGreaterThan(0.5);
    assertThat(Shop.central(answer, "camber")).isLessThan(0.2 * oneSided);
  }

  /** A web leans towards its first fillet; the second takes part of it back (S, Blodgett). */
  @Test
  void theSecondFilletTakesPartOfTheLeanBack() throws IOException {
    String text =
        """
        weldment: lean
        steel: S355J2
        parts:
          base: {stock: flat 200 x 20, length: 900, start: [0, 0, 0]}
          web: {stock: flat 80 x 8, length: 90, onto: base, face: top, set: standing along}
        joints:
          seam: {between: [web, base], weld: fillet, leg: 5}
        checks:
          upright: {square: [base/top, web/top], within: 1}
        runs:
          seam/front: {heat: {net: 700, travel: 5 mm/s}}
          seam/back: {heat: {net: 700, travel: 5 mm/s}}
        """;
    RunSequence sequence = Shop.model(folder, text).sequence();
    RunSequence.State front = sequence.after(sequence.start(), 0, false);
    double first = Math.abs(sequence.readings(front)[0]);
    double second = Math.abs(sequence.readings(sequence.after(front, 1, false))[0]);
    // Free lean 0.010 x 5 / (8 + 5 / 3) = 0.0052 rad over 90 mm is 0.47 mm; the tacks resist.
    assertThat(first).isBetween(0.1, 0.47);
    assertThat(second).isLessThan(0.8 * first);
  }

  private static String hingeLine(String axes, String fixtures) {
    return """
        weldment: hinge line
        steel: S275JR
        parts:
          rail: {stock: flat 50 x 10, length: 1000, %s}
          k1: {stock: round tube 30 x 6.5, length: 60, onto: rail, face: top, at: 150 from left, gap: 1}
          k2: {like: k1, at: 500 from left}
          k3: {like: k1, at: 850 from left}
        joints:
          h1: {between: [k1, rail], weld: flare bevel, gap: 1}
          h2: {like: h1, between: [k2, rail]}
          h3: {like: h1, between: [k3, rail]}
        checks:
          pin line: {coaxial: [k1, k2, k3], within: 0.5}
        %s
        runs:
          h1/front: {heat: {net: 700, travel: 5 mm/s}}
          h1/back: {heat: {net: 700, travel: 5 mm/s}}
          h2/front: {heat: {net: 700, travel: 5 mm/s}}
          h2/back: {heat: {net: 700, travel: 5 mm/s}}
          h3/front: {heat: {net: 700, travel: 5 mm/s}}
          h3/back: {heat: {net: 700, travel: 5 mm/s}}
        """
        .formatted(axes, fixtures);
  }

  private static final String ALTERNATING =
      "order: [h2/front, h1/back, h3/back, h2/back, h1/front, h3/front]\n";

  /** The turned weldment comes out the same, turned: no figure knows where up is. */
  @Test
  void aTurnedWeldmentComesOutTurned() throws IOException {
    PullAnswer plain =
        Shop.welded(folder, hingeLine("start: [0, 0, 0]", "") + ALTERNATING, NamedOrder.WRITTEN);
    PullAnswer turned =
        Shop.welded(
            folder,
            hingeLine("start: [100, -50, 30], along: -y, up: x", "") + ALTERNATING,
            NamedOrder.WRITTEN);
    double expected = Shop.central(plain, "pin line");
    assertThat(expected).isGreaterThan(0.05);
    assertThat(Shop.central(turned, "pin line")).isCloseTo(expected, within(1e-6 * expected));
  }

  /** Left and right exchanged, the order too: the same figure from the mirrored runs. */
  @Test
  void aMirroredOrderComesOutMirrored() throws IOException {
    String text = hingeLine("start: [0, 0, 0]", "");
    String order = "order: [h1/front, h1/back, h2/front, h2/back, h3/front, h3/back]\n";
    String mirrored = "order: [h3/front, h3/back, h2/front, h2/back, h1/front, h1/back]\n";
    CheckAnswer one = Shop.check(Shop.welded(folder, text + order, NamedOrder.WRITTEN), "pin line");
    PullAnswer other = Shop.welded(folder, text + mirrored, NamedOrder.WRITTEN);
    double expected = one.shares().stream().mapToDouble(PullAnswer.Share::mm).sum();
    assertThat(Shop.central(other, "pin line")).isCloseTo(expected, within(1e-6 * expected));
  }

  /** Alternating sides beats one side first (AWS D1.1:2015, 5.20, from memory). */
  @Test
  void alternatingBeatsOneSideFirst() throws IOException {
    String text = hingeLine("start: [0, 0, 0]", "");
    PullAnswer best = Shop.welded(folder, text, NamedOrder.BEST);
    double oneSideFirst =
        best.orders().stream()
            .filter(o -> o.order() == NamedOrder.ONE_SIDE_FIRST)
            .findFirst()
            .orElseThrow()
            .worst();
    double found =
        best.orders().stream()
            .filter(o -> o.order() == NamedOrder.BEST)
            .findFirst()
            .orElseThrow()
            .worst();
    assertThat(found).isLessThanOrEqualTo(oneSideFirst);
  }

  /** A rod holds the line while it is in; what springs back when it comes out is more. */
  @Test
  void aRodHoldsTheLineWhileItIsIn() throws IOException {
    String rod = "fixtures:\n  rod: {kind: through rod, on: [k1, k2, k3], diameter: 16.9}";
    CheckAnswer held =
        Shop.check(
            Shop.welded(
                folder, hingeLine("start: [0, 0, 0]", rod) + ALTERNATING, NamedOrder.WRITTEN),
            "pin line");
    assertThat(held.held().expected()).isLessThan(0.7 * held.released().expected());
  }

  /** Parts set off by as much as they are expected to move leave only the scatter. */
  @Test
  void presetsTakeOutWhatIsExpected() throws IOException {
    CheckAnswer check =
        Shop.check(
            Shop.welded(
                folder, hingeLine("start: [0, 0, 0]", "") + ALTERNATING, NamedOrder.WRITTEN),
            "pin line");
    assertThat(check.withPresets().expected()).isLessThan(0.5 * check.released().expected());
    assertThat(check.released().low()).isLessThan(check.released().expected());
    assertThat(check.released().high()).isGreaterThan(check.released().expected());
  }

  /** Two legs of different length on one bar, and the same seen in a mirror. */
  private static String lopsided(String side) {
    return """
        weldment: lopsided
        steel: S355J2
        parts:
          base: {stock: flat 100 x 12, length: 800, start: [0, 0, 0]}
          long: {stock: flat 60 x 8, length: 120, onto: base, face: top, set: standing along, at: 200 from %1$s}
          short: {stock: flat 60 x 8, length: 70, onto: base, face: top, set: standing along, at: 650 from %1$s}
        joints:
          long: {between: [long, base], weld: fillet, leg: 5}
          short: {between: [short, base], weld: fillet, leg: 4}
        checks:
          bar: {straight: base, class: F}
        order: [long/front, short/back, short/front, long/back]
        runs:
          long/front: {heat: {net: 700, travel: 5 mm/s}}
          long/back: {heat: {net: 700, travel: 5 mm/s}}
          short/front: {heat: {net: 500, travel: 5 mm/s}}
          short/back: {heat: {net: 500, travel: 5 mm/s}}
        """
        .formatted(side);
  }

  /** Parts, welds and all exchanged left for right: the same figure, and each run's share too. */
  @Test
  void aMirroredWeldmentComesOutMirrored() throws IOException {
    CheckAnswer one = Shop.check(Shop.welded(folder, lopsided("left"), NamedOrder.WRITTEN), "bar");
    CheckAnswer other =
        Shop.check(Shop.welded(folder, lopsided("right"), NamedOrder.WRITTEN), "bar");
    double expected = one.shares().stream().mapToDouble(PullAnswer.Share::mm).sum();
    assertThat(expected).isGreaterThan(0.02);
    for (PullAnswer.Share share : one.shares()) {
      PullAnswer.Share mirrored =
          other.shares().stream()
              .filter(s -> s.run().equals(share.run()))
              .findFirst()
              .orElseThrow();
      assertThat(mirrored.mm()).as(share.run()).isCloseTo(share.mm(), within(1e-6 * expected));
    }
  }

  /** A search that is told to stop hands over the best of the orders that it starts from. */
  @Test
  void anInterruptedSearchKeepsTheBestSoFar() {
    PullAnswer stopped =
        Shop.welded(Path.of("examples/thick-bracket.yaml"), NamedOrder.BEST, 300, () -> true);
    assertThat(stopped.search().orElseThrow().interrupted()).isTrue();
    double found = worst(stopped, NamedOrder.BEST);
    assertThat(found).isLessThanOrEqualTo(worst(stopped, NamedOrder.RULES));
    assertThat(stopped.sequence()).hasSize(stopped.runs().size());
  }

  private static double worst(PullAnswer answer, NamedOrder order) {
    return answer.orders().stream()
        .filter(o -> o.order() == order)
        .findFirst()
        .orElseThrow()
        .worst();
  }

  /** A remedy is built and welded anew: a file that is written with the smaller heat agrees. */
  @Test
  void aSmallerWeldIsWhatAFileWithItGives() throws IOException {
    String text =
        lopsided("left")
            .replace("class: F", "within: 0.01")
            .replace("net: 700", "net: 450")
            .replace("net: 500", "net: 320");
    CheckAnswer own = Shop.check(Shop.welded(folder, text, NamedOrder.WRITTEN), "bar");
    double smaller =
        own.remedies().stream()
            .filter(remedy -> remedy.what().startsWith("every weld a size smaller"))
            .findFirst()
            .orElseThrow()
            .leaves()
            .expected();
    String written =
        text.replace("net: 450", "net: 288")
            .replace("net: 320", "net: 204.8")
            .replace("leg: 4}", "leg: 3.2}")
            .replace("leg: 5}", "leg: 4}");
    double asWritten =
        Shop.check(Shop.welded(folder, written, NamedOrder.WRITTEN), "bar").released().expected();
    assertThat(smaller).isLessThan(own.released().expected());
    assertThat(smaller).isCloseTo(asWritten, within(0.1 * asWritten));
  }
}
