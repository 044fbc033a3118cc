package org.counterpull.cost;

import java.util.List;
import org.counterpull.order.Operation;
import org.counterpull.order.WorkOrder;
import org.counterpull.plan.CutList;
import org.counterpull.plan.Plan;
import org.counterpull.quantity.Computed;
import org.counterpull.weldment.Prices;

/**
 * What the work costs.
 *
 * <p>People are paid while they are busy and while they wait between runs; cooling before measuring
 * and the fire watch, when other work goes on, are left out.
 */
public final class Costing {
  private static final double S_PER_H = 3600;
  private static final double L_PER_M3 = 1000;

  private Costing() {}

  /** Cost of a work order and what it uses up. */
  public static Plan.Cost of(WorkOrder order, Plan.Consumables used, Prices prices) {
    String currency = prices.currency();
    Computed labour =
        Price.of(Price.LABOUR, labourS(order) / S_PER_H, prices.labourPerHour(), currency);
    double fillerCost = 0;
    for (Plan.FillerUse filler : used.fillers()) {
      boolean electrodes =
          order.runs().stream()
              .anyMatch(
                  run ->
                      Consumption.isElectrode(run)
                          && run.filler().designation().equals(filler.designation()));
      double perKg = electrodes ? prices.electrodePerKg() : prices.wirePerKg();
      fillerCost += filler.kg().value() * perKg;
    }
    Computed filler = Price.of(Price.MATERIAL, 1, fillerCost, currency);
    Computed gas =
        Price.of(Price.MATERIAL, used.gasLitres().value() / L_PER_M3, prices.gasPerM3(), currency);
    Computed energy =
        Price.of(Price.MATERIAL, used.energyKWh().value(), prices.energyPerKWh(), currency);
    Computed stock =
        Price.of(Price.MATERIAL, stockKg(used.cutList()), prices.stockPerKg(), currency);
    double sum = 0;
    for (Computed part : List.of(labour, filler, gas, energy, stock)) {
      sum += part.value();
    }
    return new Plan.Cost(
        currency, labour, filler, gas, energy, stock, Price.of(Price.TOTAL, 1, sum, currency));
  }

  /** The pieces as cut: what is left of a bar goes back to the rack. */
  private static double stockKg(CutList list) {
    return list.cuts().stream().mapToDouble(c -> c.kg() * c.parts().size()).sum();
  }

  private static double labourS(WorkOrder order) {
    return order.operations().stream()
        .filter(
            o ->
                o.operation().kind() != Operation.Kind.COOL
                    && o.operation().kind() != Operation.Kind.WATCH)
        .mapToDouble(o -> o.endS() - o.startS())
        .sum();
  }
}
