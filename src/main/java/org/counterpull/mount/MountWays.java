package org.counterpull.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Works out every way of fastening one thing to one tube, and says which to take. */
public final class MountWays {
  private static final double THIN_FROM = 5;

  private final MountCase mount;
  private final Optional<GivenSleeve> given;
  private final MountBench bench;

  private MountWays(MountCase mount, Optional<GivenSleeve> given) {
    this.mount = mount;
    this.given = given;
    this.bench = new MountBench(mount);
  }

  /** All ways side by side. */
  public static MountAnswer of(MountCase mount) {
    return of(mount, Optional.empty());
  }

  /** The same with a sleeve that is at hand instead of one that is sized. */
  public static MountAnswer of(MountCase mount, Optional<GivenSleeve> given) {
    return new MountWays(mount, given).answer();
  }

  private MountAnswer answer() {
    boolean lug = mount.partner().kind() == Partner.Kind.LUG;
    DirectWays direct = new DirectWays(bench);
    HeatSetup drawn = HeatSetup.direct(mount);
    HeatSetup small =
        new HeatSetup(direct.smallSeams(), true, false, mount.inside(), Optional.empty(), true);
    Optional<SleeveWays> sleeves =
        lug ? Optional.of(new SleeveWays(bench, given)) : Optional.empty();
    List<Optional<HeatSetup>> setups =
        List.of(
            Optional.of(drawn),
            Optional.of(small),
            Optional.of(drawn.waiting().dry()),
            Optional.of(drawn.withChill()),
            sleeves.flatMap(SleeveWays::looseSetup),
            sleeves.flatMap(SleeveWays::ringSetup));
    // The ways know nothing of each other, so two cores may share them.
    List<Optional<HeatFigures>> heats =
        setups.parallelStream().map(s -> s.map(x -> LocalHeat.of(mount, x))).toList();
    List<WayAnswer> ways = new ArrayList<>();
    ways.add(direct.asDrawn(heats.get(0).orElseThrow()));
    ways.add(direct.smallPasses(heats.get(1).orElseThrow()));
    if (mount.near().stream().anyMatch(Sensitive::removable)) {
      ways.add(direct.stripped(heats.get(2).orElseThrow()));
    }
    ways.add(direct.heatSink(heats.get(3).orElseThrow()));
    sleeves.ifPresent(
        s -> {
          ways.add(s.loose(heats.get(4)));
          ways.add(s.ringed(heats.get(5)));
        });
    if (mount.partner().kind() != Partner.Kind.RAIL) {
      ColdWays cold = new ColdWays(bench);
      if (lug) {
        ways.add(cold.saddle());
        ways.add(cold.clamp());
      }
      ways.add(cold.pinned());
    }
    Way taken = taken(ways);
    return new MountAnswer(mount, ways, taken, verdict(ways, taken), unknown(), Optional.empty());
  }

  /** As drawn where that fits; else the first that fits; else the first that fits on conditions. */
  private static Way taken(List<WayAnswer> ways) {
    for (Outcome good : List.of(Outcome.FITS, Outcome.FITS_IF)) {
      Optional<WayAnswer> first = ways.stream().filter(w -> w.outcome() == good).findFirst();
      boolean drawnWillDo = ways.get(0).outcome() == Outcome.FITS_IF;
      if (first.isPresent()
          && !(good == Outcome.FITS && drawnWillDo && first.get() != ways.get(0))) {
        return first.get().way();
      }
    }
    return Way.AS_DRAWN;
  }

  private List<String> verdict(List<WayAnswer> ways, Way taken) {
    WayAnswer drawn = ways.get(0);
    List<String> sentences = new ArrayList<>();
    sentences.add("Welded as drawn: " + drawn.outcome().words() + reasons(drawn));
    if (taken != Way.AS_DRAWN) {
      WayAnswer better = ways.stream().filter(w -> w.way() == taken).findFirst().orElseThrow();
      sentences.add(
          "Take instead: " + taken.words() + ", " + better.outcome().words() + reasons(better));
      String others =
          String.join(
              ", ",
              ways.stream()
                  .filter(w -> w.outcome() != Outcome.DONT && w.way() != taken)
                  .map(w -> w.way().words())
                  .toList());
      if (!others.isEmpty()) {
        sentences.add("These would do too: " + others + ".");
      }
    } else if (drawn.outcome() == Outcome.DONT) {
      sentences.add(
          "None of the ways looked at keeps what is near: take it off or change the drawing.");
    }
    return sentences;
  }

  private static String reasons(WayAnswer way) {
    return way.deciding().isEmpty() ? "." : ". " + sentences(way.deciding());
  }

  private static String sentences(List<String> words) {
    return String.join(
        " ",
        words.stream()
            .map(w -> w.substring(0, 1).toUpperCase(Locale.ROOT) + w.substring(1) + ".")
            .toList());
  }

  private List<String> unknown() {
    Stream<String> always =
        Stream.of(
            "No measured change of a bore under a lug is published: the bands are those of"
                + " uncalibrated shrinkage.",
            "Limits of temperature near seals are common practice: ask the seal's maker.");
    List<String> unknown = new ArrayList<>();
    if (mount.forceN().isEmpty()) {
      unknown.add("The load: without it nothing is said about strength.");
    } else {
      unknown.add(
          "Loads across the lug, fatigue and shock: an engineer decides where something is lifted,"
              + " ridden or stood under.");
    }
    always.forEach(unknown::add);
    double slender = mount.tube().meanRadiusMm() / mount.tube().wallMm();
    if (slender < THIN_FROM) {
      unknown.add(
          String.format(
              Locale.ROOT,
              "The wall is thick for a shell (radius over wall %.1f, trusted from %.0f on): the movement is"
                  + " rather overstated.",
              slender,
              THIN_FROM));
    }
    return unknown;
  }
}
