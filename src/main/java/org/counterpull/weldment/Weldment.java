package org.counterpull.weldment;

import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.calibration.Effect;
import org.counterpull.calibration.FactorBand;

/**
 * The whole fabrication and the shop that builds it.
 *
 * @param name what it is called
 * @param parts unique names, file order
 * @param joints unique names, file order; each joins two different parts of {@code parts}
 * @param features unique names, file order
 * @param checks unique names, file order
 * @param machines unique names, file order
 * @param fixtures unique names, file order
 * @param surroundings where it is welded
 * @param prices what things cost; empty when no cost is asked for
 * @param before the file's own order rules; free of cycles
 * @param order a sequence that the file fixes
 * @param runs what the file fixes on runs
 * @param probes points whose temperature is wanted
 * @param assumptions every default that was used, in file order
 * @param calibrations what the shop measured about its own welds, file order
 * @param rules rules of order of the file's own, about sorts of steps
 * @param swings what turns about a hinge axis
 * @param stockRoom how stock is bought and sawn
 */
public record Weldment(
    String name,
    List<Part> parts,
    List<Joint> joints,
    List<Feature> features,
    List<Check> checks,
    List<ShopMachine> machines,
    List<Fixture> fixtures,
    Surroundings surroundings,
    Optional<Prices> prices,
    List<Before> before,
    Optional<WrittenOrder> order,
    List<RunGiven> runs,
    List<Probe> probes,
    List<Assumption> assumptions,
    List<Calibration> calibrations,
    List<OwnRule> rules,
    List<Swing> swings,
    StockRoom stockRoom) {

  public Weldment {
    parts = List.copyOf(parts);
    joints = List.copyOf(joints);
    features = List.copyOf(features);
    checks = List.copyOf(checks);
    machines = List.copyOf(machines);
    fixtures = List.copyOf(fixtures);
    before = List.copyOf(before);
    runs = List.copyOf(runs);
    probes = List.copyOf(probes);
    assumptions = List.copyOf(assumptions);
    calibrations = List.copyOf(calibrations);
    rules = List.copyOf(rules);
    swings = List.copyOf(swings);
  }

  /**
   * A weldment of a shop that measured nothing, without rules of its own, in which nothing swings.
   */
  public Weldment(
      String name,
      List<Part> parts,
      List<Joint> joints,
      List<Feature> features,
      List<Check> checks,
      List<ShopMachine> machines,
      List<Fixture> fixtures,
      Surroundings surroundings,
      Optional<Prices> prices,
      List<Before> before,
      Optional<WrittenOrder> order,
      List<RunGiven> runs,
      List<Probe> probes,
      List<Assumption> assumptions) {
    this(
        name,
        parts,
        joints,
        features,
        checks,
        machines,
        fixtures,
        surroundings,
        prices,
        before,
        order,
        runs,
        probes,
        assumptions,
        List.of(),
        List.of(),
        List.of(),
        StockRoom.USUAL);
  }

  /** The same without the order that its file writes. */
  public Weldment withoutOrder() {
    return new Weldment(
        name,
        parts,
        joints,
        features,
        checks,
        machines,
        fixtures,
        surroundings,
        prices,
        before,
        Optional.empty(),
        runs,
        probes,
        assumptions,
        calibrations,
        rules,
        swings,
        stockRoom);
  }

  /**
   * The part of that name.
   *
   * @throws NoSuchElementException when there is none: names have been checked when the file was
   *     read
   */
  public Part part(String name) {
    return parts.stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
  }

  /**
   * The joint of that name.
   *
   * @throws NoSuchElementException when there is none
   */
  public Joint joint(String name) {
    return joints.stream().filter(j -> j.name().equals(name)).findFirst().orElseThrow();
  }

  /**
   * The factor on a published form of shrinkage: of the first calibration that covers it, or as
   * published.
   */
  public FactorBand factor(WeldingProcess process, Effect effect) {
    return calibrations.stream()
        .filter(c -> c.covers(process, effect))
        .map(c -> c.factors().get(effect))
        .findFirst()
        .orElseGet(() -> FactorBand.published(effect));
  }
}
