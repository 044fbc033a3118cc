package org.counterpull.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.LoadCheck;
import org.counterpull.jointplan.PassPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.plan.Plan;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;

/** Where the numbers of a plan come from: every formula that gave one, with its source. */
final class FormulasUsed {
  private final Map<String, Tally> tallies = new TreeMap<>();

  /**
   * A formula and what it gave.
   *
   * @param name its name
   * @param formula meaning, unit and source
   * @param numbers how many numbers of the plan it gave
   * @param warnings each sentence about a range that was left, once
   */
  record Use(String name, Formula formula, int numbers, List<String> warnings) {}

  private static final class Tally {
    private final Formula formula;
    private int numbers;
    private final Set<String> warnings = new LinkedHashSet<>();

    private Tally(Formula formula) {
      this.formula = formula;
    }
  }

  FormulasUsed(Plan plan) {
    plan.joints().forEach(this::joint);
    plan.runs().forEach(this::run);
    count(plan.preheat().highest());
    Plan.Consumables c = plan.consumables();
    c.fillers().forEach(f -> count(f.kg()));
    count(c.gasLitres(), c.energyKWh(), c.weldMetalKg(), c.massKg());
    plan.cost().ifPresent(k -> count(k.labour(), k.filler(), k.gas(), k.energy(), k.total()));
    plan.checks().forEach(check -> count(check.toleranceMm()));
    plan.practice()
        .pins()
        .forEach(
            row -> {
              row.fit().left().ifPresent(this::count);
              row.fit().leftAtWorst().ifPresent(this::count);
              row.warm().bindsAtK().ifPresent(this::count);
            });
    plan.practice().swings().stream()
        .flatMap(swing -> swing.positions().stream())
        .flatMap(position -> position.drive().stream())
        .forEach(d -> count(d.armMm(), d.pushN(), d.pullN(), d.neededN()));
  }

  /** By name. */
  List<Use> uses() {
    List<Use> uses = new ArrayList<>();
    tallies.forEach(
        (name, tally) ->
            uses.add(new Use(name, tally.formula, tally.numbers, List.copyOf(tally.warnings))));
    return uses;
  }

  private void joint(JointPlan joint) {
    joint.size().leg().ifPresent(this::count);
    count(joint.size().throat(), joint.preheat());
    joint.carbonEquivalents().forEach(this::count);
    joint.hardness().ifPresent(this::count);
    joint.loadCheck().ifPresent(this::load);
  }

  private void load(LoadCheck check) {
    count(check.utilisation(), check.countedMm());
    check.leastLeg().ifPresent(this::count);
    check.leastThroat().ifPresent(this::count);
    check.standOffMm().ifPresent(this::count);
    for (LoadCheck.Way way : check.ways()) {
      count(way.lineForce(), way.simplified(), way.allowable(), way.besideWeld());
      way.directional().ifPresent(this::count);
    }
  }

  private void run(RunPlan run) {
    count(run.preheatC());
    run.passes().forEach(this::pass);
  }

  private void pass(PassPlan pass) {
    count(pass.area(), pass.arcEnergy(), pass.heatInput(), pass.netHeat(), pass.coolingTime());
    pass.wireFeed().ifPresent(this::count);
  }

  private void count(Computed... numbers) {
    for (Computed number : numbers) {
      Tally tally =
          tallies.computeIfAbsent(number.formula().name(), name -> new Tally(number.formula()));
      tally.numbers++;
      tally.warnings.addAll(number.warnings());
    }
  }
}
