package org.counterpull.heat.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.CartesianGrid;
import org.counterpull.heat.block.Coarser;
import org.counterpull.heat.block.CylinderGrid;
import org.counterpull.heat.block.Frame;
import org.counterpull.heat.block.Grading;
import org.counterpull.heat.block.Grid;
import org.counterpull.heat.block.Outline;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heat.face.FixedFilm;
import org.counterpull.heat.link.LinkLaw;
import org.counterpull.heat.link.Links;
import org.counterpull.heat.material.HeatMaterials;
import org.counterpull.heat.source.DoubleEllipsoid;
import org.counterpull.heat.source.MovingSource;
import org.counterpull.heat.source.TravelPath;
import org.junit.jupiter.api.Test;

/** Blocks that rest on wider cells: the same temperatures with less work, and no energy lost. */
class RestingBlocksTest {
  private static final double[][] CUT = {{0, 0}, {120, 0}, {120, 60}, {70, 80}, {0, 80}};

  /** A bead along the top of a bar on which an outlined plate, a bar and a tube stand. */
  private static Simulation job(Fineness fineness, List<Probe> probes) {
    CartesianGrid foot =
        new CartesianGrid(
            Grading.uniform(0, 120, 3), Grading.uniform(0, 80, 4), Grading.uniform(0, 9, 3));
    CartesianGrid cut =
        new CartesianGrid(
            Grading.uniform(0, 120, 4),
            Grading.uniform(0, 80, 4),
            Grading.uniform(0, 8, 4),
            new Outline(CUT));
    CylinderGrid round = new CylinderGrid(Grading.uniform(0, 15, 3), 24, Grading.uniform(0, 60, 3));
    CylinderGrid tube = new CylinderGrid(Grading.uniform(12, 18, 3), 24, Grading.uniform(0, 60, 3));
    List<Grid> grids = List.of(foot, cut, round, tube);
    double[][] places = {{0, 0, 0}, {0, 0, -8}, {30, 40, 9}, {90, 40, 9}};
    HeatModel.Builder builder = HeatModel.builder().faces(new FixedFilm(15, 0.7));
    List<Block> blocks = new ArrayList<>();
    for (int n = 0; n < grids.size(); n++) {
      Frame frame =
          new Frame(
              new Vec3(places[n][0], places[n][1], places[n][2]),
              new Vec3(1, 0, 0),
              new Vec3(0, 1, 0),
              Vec3.Z);
      blocks.add(new Block("block " + n, HeatMaterials.carbonSteel(), frame, grids.get(n)));
      builder.block(blocks.get(n));
    }
    LinkLaw contact = new LinkLaw.Contact(1000);
    for (int n = 1; n < blocks.size(); n++) {
      builder.link(Links.facing(blocks.get(0), blocks.get(n), contact, -0.1, 0.1).orElseThrow());
    }
    Simulation s = new Simulation(builder.build(), fineness, 20);
    probes.add(s.probe("foot", blocks.get(0), new Vec3(110, 70, 4)));
    probes.add(s.probe("cut", blocks.get(1), new Vec3(60, 70, -7)));
    probes.add(s.probe("bar", blocks.get(2), new Vec3(30, 40, 60)));
    probes.add(s.probe("tube", blocks.get(3), new Vec3(90, 24, 50)));
    Vec3 from = new Vec3(20, 10, 9);
    s.strike(
        MovingSource.along(
            "bead",
            2500,
            5,
            TravelPath.straight(from, from.plus(new Vec3(80, 0, 0)), new Vec3(0, 0, -1)),
            5,
            new DoubleEllipsoid(4, 8, 5, 4)));
    s.advanceTo(900);
    return s;
  }

  // Against the same with all blocks awake and stepped alike: 1 % of the rise, at the peak and at
  // the end, where it is some 60 K; two thirds of the work at most; balance to rounding.
  @Test
  void restChangesNothingThatMatters() {
    List<Probe> rested = new ArrayList<>();
    List<Probe> awake = new ArrayList<>();
    Simulation resting = job(Fineness.NORMAL, rested);
    Simulation all = job(Fineness.NORMAL.withoutWaiting(), awake);
    for (int n = 0; n < rested.size(); n++) {
      double rise = awake.get(n).peakC() - 20;
      assertThat(rested.get(n).peakC() - 20)
          .as("peak at " + rested.get(n).name())
          .isCloseTo(rise, within(0.01 * rise));
      double end = awake.get(n).nowC() - 20;
      assertThat(rested.get(n).nowC() - 20)
          .as("end at " + rested.get(n).name())
          .isCloseTo(end, within(0.01 * end));
    }
    assertThat(resting.cellUpdates()).isLessThan(all.cellUpdates() * 2 / 3);
    assertThat(resting.balance().imbalance()).isLessThan(1e-9);
    double asked = resting.balance().askedJ();
    assertThat(resting.balance().inJ()).isCloseTo(asked, within(1e-9 * asked));
  }

  // Putting cells together keeps all of the metal, and each cell lies in the cell that holds it.
  @Test
  void wideCellsHoldTheSameMetal() {
    List<Grid> grids =
        List.of(
            new CartesianGrid(
                Grading.uniform(0, 120, 4),
                Grading.uniform(0, 80, 4),
                Grading.uniform(0, 8, 2),
                new Outline(CUT)),
            new CylinderGrid(Grading.uniform(0, 15, 3), 24, Grading.uniform(0, 60, 3)));
    for (Grid grid : grids) {
      Coarser coarser = grid.coarser(12);
      double[] held = new double[coarser.grid().cells()];
      for (int k = 0; k < grid.nz(); k++) {
        for (int j = 0; j < grid.ny(); j++) {
          for (int i = 0; i < grid.nx(); i++) {
            held[coarser.parent()[grid.cell(i, j, k)]] += grid.volumeMm3(i, j, k);
          }
        }
      }
      Grid wide = coarser.grid();
      assertThat(wide.cells()).isLessThan(grid.cells() / 8);
      for (int k = 0; k < wide.nz(); k++) {
        for (int j = 0; j < wide.ny(); j++) {
          for (int i = 0; i < wide.nx(); i++) {
            assertThat(held[wide.cell(i, j, k)]).isCloseTo(wide.volumeMm3(i, j, k), within(1e-6));
          }
        }
      }
    }
  }
}
