package org.counterpull.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.counterpull.fit.ToleranceClass;
import org.counterpull.mount.GivenSleeve;
import org.counterpull.mount.Inside;
import org.counterpull.mount.LugHole;
import org.counterpull.mount.MountAnswer;
import org.counterpull.mount.MountCase;
import org.counterpull.mount.ShortMount;
import org.counterpull.quantity.LengthUnit;
import org.counterpull.quantity.QuantityParser;
import picocli.CommandLine.Option;

/** A lug on a tube, given as options. */
final class MountOptions {
  @Option(
      names = "--tube",
      paramLabel = "SIZE",
      description = "outside diameter x wall: \"60 x 5\", \"2-1/2 x 1/4 in\"")
  private String tube;

  @Option(
      names = "--tolerance",
      paramLabel = "CLASS",
      description = "of the bore, ISO 286: H6 to H11; H8 if left out")
  private String tolerance = "H8";

  @Option(
      names = "--lug",
      paramLabel = "SIZE",
      description = "along the tube x thickness x height: \"40 x 10 x 60\"")
  private String lug;

  @Option(names = "--weld", paramLabel = "LEG", description = "fillets all round: \"leg 6\"")
  private String weld;

  @Option(
      names = "--from-seal",
      paramLabel = "LENGTH",
      description = "from the lug's nearer end to the seal")
  private String fromSeal;

  @Option(
      names = "--seal",
      paramLabel = "WORD",
      description = "nbr (as if left out), hnbr, fkm, ptfe, polyurethane, ...")
  private String seal = "nbr";

  @Option(
      names = "--process",
      paramLabel = "WORD",
      description = "mag (as if left out), mma, tig, ...")
  private String process = "mag";

  @Option(names = "--current", paramLabel = "A", description = "welding current")
  private String current;

  @Option(
      names = "--force",
      paramLabel = "FORCE",
      description = "working load on the lug: \"12 kN\"")
  private String force;

  @Option(
      names = "--arm",
      paramLabel = "LENGTH",
      description = "from the tube to where the load acts; 3/4 of the lug's height if left out")
  private String arm;

  @Option(names = "--pin", paramLabel = "SIZE", description = "pin through the lug: \"16 mm\"")
  private String pin;

  @Option(
      names = "--cylinder",
      paramLabel = "BORE",
      description = "bore of the cylinder that loads the lug, with --pressure instead of --force")
  private String cylinder;

  @Option(names = "--pressure", paramLabel = "P", description = "its pressure: \"160 bar\"")
  private String pressure;

  /** True when a tube is described. */
  boolean given() {
    return tube != null || lug != null || weld != null || fromSeal != null || current != null;
  }

  /** The case that the options describe. */
  MountCase mount(Inside inside) {
    List<Double> tubeMm = sizes("--tube", tube, 2, "\"60 x 5\"");
    List<Double> lugMm = sizes("--lug", lug, 3, "\"40 x 10 x 60\"");
    String leg = required("--weld", weld, "\"leg 6\"").replaceFirst("(?i)^\\s*leg\\s*", "");
    ToleranceClass bore =
        ToleranceClass.parse(tolerance)
            .filter(ToleranceClass::hole)
            .orElseThrow(
                () ->
                    new BadInput(
                        "--tolerance: \""
                            + tolerance
                            + "\" is not known here\nTry: H7, H8, H9 or H10"));
    if (2 * tubeMm.get(1) >= tubeMm.get(0)) {
      throw new BadInput(
          "--tube: its walls meet in the middle\nTry: outside diameter x wall, \"60 x 5\"");
    }
    if (lugMm.get(1) > tubeMm.get(0) / 2) {
      throw new BadInput(
          "--lug: it is thicker than half the tube\nTry: along the tube x thickness x height");
    }
    return new ShortMount(
            tubeMm.get(0),
            tubeMm.get(1),
            bore,
            lugMm.get(0),
            lugMm.get(1),
            lugMm.get(2),
            length("--weld", leg),
            length("--from-seal", required("--from-seal", fromSeal, "\"45 mm\"")),
            seal,
            ProcessOption.parse(process),
            read("--current", required("--current", current, "160"), QuantityParser::parseCurrentA),
            forceN(),
            Optional.ofNullable(arm).map(a -> length("--arm", a)),
            inside)
        .mount();
  }

  /** The load: given, or what a cylinder pushes with. */
  private Optional<Double> forceN() {
    if (cylinder == null && pressure == null) {
      return Optional.ofNullable(force).map(f -> read("--force", f, QuantityParser::parseForceN));
    }
    if (force != null) {
      throw new BadInput("--force and --cylinder were both given\nTry: one of the two");
    }
    double bore = length("--cylinder", required("--cylinder", cylinder, "\"50 mm\""));
    double mpa =
        read(
            "--pressure",
            required("--pressure", pressure, "\"160 bar\""),
            QuantityParser::parsePressureMPa);
    return Optional.of(mpa * Math.PI / 4 * bore * bore);
  }

  /** The answer with the lug's hole, where a pin is given. */
  MountAnswer withPin(MountAnswer answer) {
    return pin == null
        ? answer
        : answer.with(LugHole.through(answer.mount(), length("--pin", pin)));
  }

  /** A sleeve at hand; empty where none is given. */
  static Optional<GivenSleeve> sleeve(String text) {
    if (text == null) {
      return Optional.empty();
    }
    List<Double> mm = sizes("--sleeve", text, 3, "\"5 x 120 x 0.25\"");
    return Optional.of(new GivenSleeve(mm.get(0), mm.get(1), mm.get(2)));
  }

  /** Sizes with a times sign between them; a unit behind the last counts for all. */
  private static List<Double> sizes(String option, String text, int count, String example) {
    String given = required(option, text, example).strip();
    LengthUnit bare = given.matches("(?i).*(in|\")") ? LengthUnit.IN : LengthUnit.MM;
    String[] pieces = given.replaceFirst("(?i)\\s*(in|\"|mm)\\s*$", "").split("(?i)\\s*x\\s*");
    if (pieces.length != count) {
      throw new BadInput(option + ": \"" + text + "\" is not " + count + " sizes\nTry: " + example);
    }
    return Arrays.stream(pieces)
        .map(p -> read(option, p, t -> positive(QuantityParser.parseSizeMm(t, bare))))
        .toList();
  }

  private static double length(String option, String text) {
    return read(option, text, t -> positive(QuantityParser.parseSizeMm(t, LengthUnit.MM)));
  }

  private static double positive(double mm) {
    if (!(mm > 0)) {
      throw new IllegalArgumentException(mm + " mm is not above 0. Try: a length above 0");
    }
    return mm;
  }

  private static String required(String option, String text, String example) {
    if (text == null) {
      throw new BadInput(option + " is missing\nTry: " + option + " " + example);
    }
    return text;
  }

  private static <T> T read(String option, String text, Function<String, T> reader) {
    try {
      return reader.apply(text);
    } catch (IllegalArgumentException e) {
      throw new BadInput(option + ": " + e.getMessage().replace(". Try: ", "\nTry: "));
    }
  }
}
