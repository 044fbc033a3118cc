package org.counterpull.cost;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.order.CutLength;
import org.counterpull.plan.CutList;
import org.counterpull.section.SectionMass;
import org.counterpull.stock.Plate;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMass;
import org.counterpull.weldment.PartMetal;
import org.counterpull.weldment.StockRoom;
import org.counterpull.weldment.Weldment;

/** The cutting list: what is cut to which length, and how it is laid into bars. */
final class CutLists {
  private CutLists() {}

  static CutList of(Weldment weldment, List<JointPlan> joints) {
    Map<CutList.Cut, List<String>> equal = new LinkedHashMap<>();
    Map<String, List<Part>> byStock = new LinkedHashMap<>();
    for (Part part : weldment.parts()) {
      CutLength length = CutLength.of(part, joints);
      CutList.Cut cut =
          new CutList.Cut(
              part.stock().describe(),
              part.steel().designation(),
              List.of(),
              length.drawnMm(),
              length.gapMm(),
              length.shrinkageMm(),
              length.cutMm(),
              PartMass.kg(part));
      equal.computeIfAbsent(cut, k -> new ArrayList<>()).add(part.name());
      byStock
          .computeIfAbsent(
              part.stock().describe() + "|" + part.steel().designation(), k -> new ArrayList<>())
          .add(part);
    }
    List<CutList.Cut> cuts = new ArrayList<>();
    equal.forEach((cut, names) -> cuts.add(cut.of(names)));
    List<CutList.Bars> bars = new ArrayList<>();
    byStock.values().stream()
        .filter(parts -> !(parts.get(0).stock() instanceof Plate))
        .forEach(parts -> bars.add(bars(parts, joints, weldment.stockRoom())));
    return new CutList(cuts, bars);
  }

  private static CutList.Bars bars(List<Part> parts, List<JointPlan> joints, StockRoom room) {
    Part first = parts.get(0);
    List<Double> fitting = new ArrayList<>();
    List<Double> tooLong = new ArrayList<>();
    for (Part part : parts) {
      double cutMm = CutLength.of(part, joints).cutMm();
      (cutMm <= room.barMm() ? fitting : tooLong).add(cutMm);
    }
    BarPacking packing = BarPacking.of(fitting, room.barMm(), room.kerfMm());
    List<List<Double>> lengths = new ArrayList<>();
    for (List<Integer> bar : packing.bars()) {
      lengths.add(bar.stream().map(fitting::get).toList());
    }
    double wholeMm = packing.bars().size() * room.barMm();
    double longMm = tooLong.stream().mapToDouble(Double::doubleValue).sum();
    double kg =
        SectionMass.kg(first.stock().areaMm2(), wholeMm + longMm, PartMetal.densityKgPerM3(first));
    return new CutList.Bars(
        first.stock().describe(),
        first.steel().designation(),
        room.barMm(),
        room.kerfMm(),
        lengths,
        tooLong,
        packing.leastPossible(),
        kg);
  }
}
