package org.counterpull.heat.superposed;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.Patch;
import org.counterpull.heat.link.Link;
import org.counterpull.heat.link.Pair;
import org.counterpull.heat.material.ThermalMaterial;
import org.counterpull.heat.solve.HeatModel;

/**
 * A linear copy of a model: constant properties, films held at a mean temperature, everything laid
 * that ever will be, no heat sinks that come and go.
 */
public final class LinearCopy {
  private final HeatModel copy;
  private final Map<Block, Block> blocks = new IdentityHashMap<>();
  private final Map<Patch, Patch> patches = new IdentityHashMap<>();

  /**
   * Copies a model.
   *
   * @param model the full one
   * @param laid links that are laid in the course of the job
   * @param range temperatures for which it is to hold
   */
  public LinearCopy(HeatModel model, List<Link> laid, LinearRange range) {
    this(model, laid, range, block -> true);
  }

  /** Copies some of the blocks, for a run whose heat does not get further. */
  LinearCopy(HeatModel model, List<Link> laid, LinearRange range, Predicate<Block> within) {
    double restC = range.restC().orElse(model.ambientC());
    HeatModel.Builder builder = HeatModel.builder().ambientC(restC).up(model.up());
    Map<ThermalMaterial, ThermalMaterial> metals = new IdentityHashMap<>();
    for (Block block : model.blocks().stream().filter(within).toList()) {
      ThermalMaterial metal =
          range.restC().isPresent()
              ? block.material()
              : metals.computeIfAbsent(
                  block.material(), m -> m.constantBetween(range.lowC(), range.highC()));
      Block other = new Block(block.name(), metal, block.frame(), block.grid());
      blocks.put(block, other);
      for (int n = 0; n < block.patches().size(); n++) {
        patches.put(block.patches().get(n), other.patches().get(n));
      }
      builder.block(other);
    }
    model.copyFaces(builder, blocks, range.filmAtC());
    List<Link> links = new ArrayList<>(model.links());
    links.addAll(laid);
    links.stream()
        .filter(l -> blocks.containsKey(l.a()) && blocks.containsKey(l.b()))
        .forEach(l -> builder.link(copied(l)));
    this.copy = builder.build();
  }

  private Link copied(Link link) {
    List<Pair> pairs = new ArrayList<>();
    for (Pair p : link.pairs()) {
      pairs.add(new Pair(patches.get(p.a()), patches.get(p.b()), p.areaMm2(), p.distanceMm()));
    }
    return new Link(link.name(), blocks.get(link.a()), blocks.get(link.b()), link.law(), pairs, 0);
  }

  /** The linear model. */
  public HeatModel model() {
    return copy;
  }

  /** The copy of a block of the full model. */
  public Block of(Block block) {
    return blocks.get(block);
  }
}
