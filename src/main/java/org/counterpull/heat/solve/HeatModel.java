package org.counterpull.heat.solve;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.Patch;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heat.face.FaceCondition;
import org.counterpull.heat.face.FixedFilm;
import org.counterpull.heat.face.TangentFilm;
import org.counterpull.heat.link.Link;
import org.counterpull.heat.link.Pair;

/**
 * What heat flows through: blocks, what lies on their faces, how they touch, the air around them.
 * Immutable; made by {@link #builder()}.
 */
public final class HeatModel {
  private final double ambientC;
  private final Vec3 up;
  private final List<Block> blocks;
  private final List<Link> links;
  private final List<Sink> sinks;
  private final List<Face> faces;
  private final FaceCondition otherwise;

  private record Face(Block block, Predicate<Patch> where, FaceCondition condition) {}

  private HeatModel(Builder from) {
    this.ambientC = from.ambientC;
    this.up = from.up;
    this.blocks = List.copyOf(from.blocks.values());
    this.links = List.copyOf(from.links);
    this.sinks = List.copyOf(from.sinks);
    this.faces = List.copyOf(from.faces);
    this.otherwise = from.otherwise;
    if (blocks.isEmpty()) {
      throw new IllegalArgumentException("a heat model needs a block");
    }
    for (Link link : links) {
      requireOwn(link.a());
      requireOwn(link.b());
    }
    faces.forEach(f -> requireOwn(f.block()));
    sinks.forEach(s -> requireOwn(s.block()));
  }

  /** Starts a model in still surroundings of 20 C, insulated until said otherwise. */
  public static Builder builder() {
    return new Builder();
  }

  public double ambientC() {
    return ambientC;
  }

  /** Unit direction against gravity. */
  public Vec3 up() {
    return up;
  }

  public List<Block> blocks() {
    return blocks;
  }

  public List<Link> links() {
    return links;
  }

  public List<Sink> sinks() {
    return sinks;
  }

  /** Cells with metal in them. */
  public int cells() {
    int cells = 0;
    for (Block block : blocks) {
      for (double v : block.volumeMm3()) {
        cells += v > 0 ? 1 : 0;
      }
    }
    return cells;
  }

  /** What lies on a patch, the face given last counting first. */
  FaceCondition condition(Block block, Patch patch) {
    for (int n = faces.size() - 1; n >= 0; n--) {
      Face face = faces.get(n);
      if (face.block() == block && face.where().test(patch)) {
        return face.condition();
      }
    }
    return otherwise;
  }

  /**
   * Gives a copy of this model the same faces, with their coefficients held at one temperature.
   *
   * @param into the copy
   * @param copies copy of each block that is copied
   * @param heldAtC surface temperature at which coefficients are taken
   */
  public void copyFaces(Builder into, Map<Block, Block> copies, double heldAtC) {
    into.faces(new TangentFilm(otherwise, heldAtC, ambientC));
    for (Face face : faces.stream().filter(f -> copies.containsKey(f.block())).toList()) {
      into.face(
          copies.get(face.block()),
          face.where(),
          new TangentFilm(face.condition(), heldAtC, ambientC));
    }
  }

  /** Area of each patch that links cover, of this model's links. */
  Map<Patch, Double> coveredMm2() {
    Map<Patch, Double> covered = new IdentityHashMap<>();
    for (Link link : links) {
      if (link.law().covers()) {
        for (Pair pair : link.pairs()) {
          covered.merge(pair.a(), pair.areaMm2(), Double::sum);
          covered.merge(pair.b(), pair.areaMm2(), Double::sum);
        }
      }
    }
    return covered;
  }

  void requireOwn(Block block) {
    if (!blocks.contains(block)) {
      throw new IllegalArgumentException("block " + block + " is not in the model");
    }
  }

  /** Gathers a model. */
  public static final class Builder {
    private double ambientC = 20;
    private Vec3 up = Vec3.Z;
    private final Map<String, Block> blocks = new LinkedHashMap<>();
    private final List<Link> links = new ArrayList<>();
    private final List<Sink> sinks = new ArrayList<>();
    private final List<Face> faces = new ArrayList<>();
    private FaceCondition otherwise = new FixedFilm(0, 0);

    private Builder() {}

    /** Temperature of the air and of what surfaces radiate to. */
    public Builder ambientC(double tempC) {
      this.ambientC = tempC;
      return this;
    }

    /** Direction against gravity. */
    public Builder up(Vec3 direction) {
      this.up = direction.unit();
      return this;
    }

    /** Adds a block; its name must be its own. */
    public Builder block(Block block) {
      if (blocks.putIfAbsent(block.name(), block) != null) {
        throw new IllegalArgumentException("two blocks are named " + block.name());
      }
      return this;
    }

    /** What lies on every face of which nothing else is said. */
    public Builder faces(FaceCondition condition) {
      this.otherwise = condition;
      return this;
    }

    /** What lies on some patches of a block; said later counts before said earlier. */
    public Builder face(Block block, Predicate<Patch> where, FaceCondition condition) {
      faces.add(new Face(block, where, condition));
      return this;
    }

    /** Adds a link between two of the blocks. */
    public Builder link(Link link) {
      links.add(link);
      return this;
    }

    /** Adds a heat sink for a time. */
    public Builder sink(Sink sink) {
      sinks.add(sink);
      return this;
    }

    public HeatModel build() {
      return new HeatModel(this);
    }
  }
}
