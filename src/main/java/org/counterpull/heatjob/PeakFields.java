package org.counterpull.heatjob;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heat.solve.Simulation;

/** Keeps the peaks of one run after the other while a simulation goes on. */
final class PeakFields {
  private final Layout layout;
  private final Simulation simulation;
  private final List<PeakField> fields = new ArrayList<>();
  private final List<double[]> beforeC = new ArrayList<>();
  private Optional<String> run = Optional.empty();
  private double fromS;

  PeakFields(Layout layout, Simulation simulation) {
    this.layout = layout;
    this.simulation = simulation;
  }

  /** A run's arc is struck now: what came before belongs to the run before. */
  void begin(String name) {
    if (run.filter(name::equals).isPresent()) {
      return;
    }
    end();
    run = Optional.of(name);
    fromS = simulation.timeS();
    beforeC.clear();
    for (PartBlock made : layout.blocks()) {
      Block block = made.block();
      double[] temps = new double[block.end() - block.first()];
      for (int p = block.first(); p < block.end(); p++) {
        temps[p - block.first()] = simulation.temperatureC(block, p);
      }
      beforeC.add(temps);
    }
    simulation.forgetPeaks();
  }

  /** Keeps the field of the run that was begun last. */
  void end() {
    run.ifPresent(
        name -> fields.add(new PeakField(name, fromS, simulation.timeS(), List.copyOf(cells()))));
    run = Optional.empty();
  }

  /** The fields so far, in the order of welding. */
  List<PeakField> fields() {
    return List.copyOf(fields);
  }

  private List<PeakField.Cell> cells() {
    List<PeakField.Cell> cells = new ArrayList<>();
    for (int n = 0; n < layout.blocks().size(); n++) {
      PartBlock made = layout.blocks().get(n);
      Block block = made.block();
      for (int p = block.first(); p < block.end(); p++) {
        double volume = block.volumeMm3()[p];
        double before = beforeC.get(n)[p - block.first()];
        double peak = volume > 0 ? simulation.peakC(block, p) : before;
        if (peak >= PeakField.LEAST_C && peak >= before + PeakField.LEAST_RISE_K) {
          Vec3 at = block.centre(p);
          Vector3D middle = new Vector3D(at.x(), at.y(), at.z());
          cells.add(new PeakField.Cell(made.part().name(), middle, volume, before, peak));
        }
      }
    }
    return cells;
  }
}
