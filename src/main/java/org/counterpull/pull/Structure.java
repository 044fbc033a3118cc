package org.counterpull.pull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;

/**
 * An assembly as it stands: which links are closed, with what tension, and where everything has
 * moved.
 *
 * <p>It starts with every body loose in space; a link that joins a loose part carries it without
 * strain, exactly, so no supports are needed and none make a difference. A reading that changes
 * when the whole is moved rigidly needs the whole to be grounded.
 *
 * <p>Every movement is booked on an origin (a run, a fixture) by its number; a tension that is let
 * go moves things on the account of those who built it up.
 */
public final class Structure {
  private static final double NO_MOTION = 1e-9;

  private final CoordinateSpace space;
  private final Flexibility flexibility;
  private final List<double[]> motions;
  private final double[] motionScale;
  private final double[][] moved;
  private final double[][] atRest;
  private final double[][] linkStiffness;

  /** Row of each coordinate of the space; minus one for those that are no longer followed. */
  private final int[] rows;

  /**
   * All bodies loose, nothing moved.
   *
   * @param assembly what may happen; later additions to it are not seen
   * @param origins how many accounts to keep
   */
  public Structure(Assembly assembly, int origins) {
    space = new CoordinateSpace(assembly);
    flexibility = space.flexibility();
    motions = space.rigidMotions();
    motionScale = space.motionScale();
    moved = new double[space.size()][origins];
    atRest = new double[space.size()][origins];
    linkStiffness = new double[assembly.links().size()][];
    rows = IntStream.range(0, space.size()).toArray();
  }

  private Structure(Structure other) {
    space = other.space;
    flexibility = other.flexibility.copy();
    motions = new ArrayList<>(other.motions.stream().map(double[]::clone).toList());
    motionScale = other.motionScale;
    moved = deepCopy(other.moved);
    atRest = deepCopy(other.atRest);
    linkStiffness = other.linkStiffness.clone();
    rows = other.rows;
  }

  /** The other one as it stands on some of its coordinates. */
  private Structure(Structure other, int[] coordinates) {
    space = other.space;
    rows = new int[space.size()];
    Arrays.fill(rows, -1);
    int[] kept = new int[coordinates.length];
    moved = new double[kept.length][];
    atRest = new double[kept.length][];
    motionScale = new double[kept.length];
    for (int i = 0; i < coordinates.length; i++) {
      kept[i] = other.rows[coordinates[i]];
      rows[coordinates[i]] = i;
      moved[i] = other.moved[kept[i]].clone();
      atRest[i] = other.atRest[kept[i]].clone();
      motionScale[i] = other.motionScale[kept[i]];
    }
    flexibility = other.flexibility.restrictedTo(kept);
    motions = new ArrayList<>();
    for (double[] motion : other.motions) {
      motions.add(IntStream.of(kept).mapToDouble(row -> motion[row]).toArray());
    }
    linkStiffness = other.linkStiffness.clone();
  }

  /** The other one's stiffness on some of its coordinates, with nothing moved yet. */
  private Structure(Structure other, int[] coordinates, int origins) {
    space = other.space;
    rows = new int[space.size()];
    Arrays.fill(rows, -1);
    int[] kept = new int[coordinates.length];
    for (int i = 0; i < coordinates.length; i++) {
      rows[coordinates[i]] = i;
      kept[i] = other.rows[coordinates[i]];
      if (other.loose(coordinates[i])) {
        throw new IllegalStateException("a part that is still loose can't be put in order");
      }
    }
    flexibility = other.flexibility.restrictedTo(kept);
    motions = List.of();
    motionScale = new double[kept.length];
    moved = new double[kept.length][origins];
    atRest = new double[kept.length][origins];
    linkStiffness = other.linkStiffness.clone();
  }

  /**
   * The stiffness as it stands on some coordinates only, ascending, with nothing moved and new
   * accounts: what a search over orders carries on.
   */
  Structure followed(int[] coordinates, int origins) {
    return new Structure(this, coordinates, origins);
  }

  /** The same, with new accounts. */
  Structure refollowed(int origins) {
    int[] all = IntStream.range(0, rows.length).filter(this::follows).toArray();
    return new Structure(this, all, origins);
  }

  /**
   * The same as it stands, without what nobody asks for any more: links that stay as they are,
   * loads that are never applied, readings that aren't read. What is left costs the less.
   */
  public Structure forgetting(
      Collection<Integer> links, Collection<Integer> loads, Collection<Integer> readings) {
    BitSet forgotten = new BitSet();
    links.forEach(link -> forgotten.set(space.link(link, 0), space.link(link, 0) + 6));
    loads.forEach(load -> forgotten.set(space.load(load)));
    readings.forEach(reading -> forgotten.set(space.reading(reading)));
    int[] coordinates =
        IntStream.range(0, rows.length).filter(c -> follows(c) && !forgotten.get(c)).toArray();
    return new Structure(this, coordinates);
  }

  /** The same with so many new accounts; nothing may have moved yet. */
  public Structure withAccounts(int origins) {
    for (double[] row : moved) {
      if (sum(row) != 0) {
        throw new IllegalStateException("something has moved already: its account would be lost");
      }
    }
    Structure same = forgetting(List.of(), List.of(), List.of());
    for (int i = 0; i < moved.length; i++) {
      same.moved[i] = new double[origins];
      same.atRest[i] = new double[origins];
    }
    return same;
  }

  boolean follows(int coordinate) {
    return rows[coordinate] >= 0;
  }

  int followedCount() {
    return moved.length;
  }

  /** An independent copy. */
  public Structure copy() {
    return new Structure(this);
  }

  /** Rigid motions that nothing holds yet: six when the whole hangs together and floats. */
  public int looseMotions() {
    return motions.size();
  }

  /** True when a link is closed. */
  public boolean closed(int link) {
    return linkStiffness[link] != null;
  }

  /**
   * Closes a link free of stress at its present opening.
   *
   * @param link number of the link
   * @param stiffness of the connection; components of zero stay free
   */
  public void join(int link, SpringStiffness stiffness) {
    if (closed(link)) {
      throw new IllegalStateException("link " + link + " is closed already");
    }
    linkStiffness[link] = stiffness.components();
    int[] block = block(link);
    for (int i : block) {
      atRest[i] = moved[i].clone();
      Arrays.fill(moved[i], 0);
    }
    double[] compliances = compliances(link);
    List<Integer> held = new ArrayList<>();
    for (int k = 0; k < block.length; k++) {
      if (!hang(block[k], compliances[k])) {
        held.add(k);
      }
    }
    flexibility.close(
        held.stream().mapToInt(k -> block[k]).toArray(),
        held.stream().mapToDouble(k -> compliances[k]).toArray());
    for (int i : block) {
      motions.forEach(motion -> motion[i] = 0);
    }
  }

  /**
   * Lets a closed link pull: it wants to change its opening by {@code wanted} and pulls with a
   * lower stiffness than it has once cold.
   *
   * @param link number of the link
   * @param pulling stiffness while it pulls, in no component above that of the link
   * @param wanted change of the opening in the link's six components, mm and rad
   * @param origin account
   */
  public void pull(int link, SpringStiffness pulling, double[] wanted, int origin) {
    pull(List.of(new Pull(link, pulling, wanted)), origin);
  }

  /** Lets closed links pull together: none of them resists another with its cold stiffness. */
  public void pull(List<Pull> pulls, int origin) {
    int[] block = pulls.stream().flatMapToInt(pull -> IntStream.of(block(pull.link()))).toArray();
    double[] injected = injected(block, pulls);
    for (int k = 0; k < block.length; k++) {
      double[] column = flexibility.column(block[k]);
      for (int i = 0; i < column.length; i++) {
        moved[i][origin] += column[i] * injected[k];
      }
      atRest[block[k]][origin] += injected[k];
    }
  }

  /**
   * Lays a segment: whatever lies across the link is remelted, its force let go; then the segment
   * pulls and stays as cold metal.
   */
  public void weld(
      int link, SpringStiffness pulling, SpringStiffness cold, double[] wanted, int origin) {
    lay(link, cold);
    pull(link, pulling, wanted, origin);
  }

  /** Fills a link with metal that doesn't pull yet; a tack that lies there is remelted. */
  public void lay(int link, SpringStiffness cold) {
    if (closed(link) && flexibility.holdsAlone(block(link), compliances(link))) {
      soften(link, cold);
    } else {
      if (closed(link)) {
        release(link);
      }
      join(link, cold);
    }
  }

  /** Takes a connection out and lets its force go. */
  public void release(int link) {
    int[] block = block(link);
    double[][] tension = new double[block.length][];
    for (int k = 0; k < block.length; k++) {
      tension[k] = moved[block[k]];
      moved[block[k]] = atRest[block[k]];
    }
    double[][] perTension = flexibility.open(block, compliances(link));
    for (int k = 0; k < block.length; k++) {
      for (int i = 0; i < moved.length; i++) {
        for (int origin = 0; origin < tension[k].length; origin++) {
          moved[i][origin] += perTension[k][i] * tension[k][origin];
        }
      }
    }
    linkStiffness[link] = null;
  }

  /** True when taking that connection out would leave a part loose. */
  public boolean holdsAlone(int link) {
    return flexibility.holdsAlone(block(link), compliances(link));
  }

  /** Applies a load to the assembly as it stands. */
  public void apply(int load, double factor, int origin) {
    int row = rows[space.load(load)];
    for (double[] motion : motions) {
      if (Math.abs(motion[row]) > NO_MOTION * motionScale[row]) {
        throw new IllegalStateException("load " + load + " would drive a loose part away");
      }
    }
    double[] column = flexibility.column(row);
    for (int i = 0; i < column.length; i++) {
      moved[i][origin] += column[i] * factor;
    }
  }

  /** How far a reading has moved, mm or rad. */
  public double reading(int reading) {
    return sum(moved[rows[space.reading(reading)]]);
  }

  /** Share of one account in a reading. */
  public double share(int reading, int origin) {
    return moved[rows[space.reading(reading)]][origin];
  }

  /** True when moving the whole rigidly leaves a reading as it is. */
  public boolean settled(int reading) {
    int row = rows[space.reading(reading)];
    return motions.stream().allMatch(m -> Math.abs(m[row]) <= NO_MOTION * motionScale[row]);
  }

  /** Forces by which a closed link draws its sides together, in its six components, N and N mm. */
  public double[] tension(int link) {
    double[] tension = new double[6];
    for (int c : components(link)) {
      tension[c] = sum(moved[rows[space.link(link, c)]]);
    }
    return tension;
  }

  /** Opening of a link that is not closed, in its six components, mm and rad. */
  public double[] opening(int link) {
    double[] opening = new double[6];
    for (int c = 0; c < 6; c++) {
      opening[c] = sum(moved[rows[space.link(link, c)]]);
    }
    return opening;
  }

  /** What one account moved a coordinate by, or the tension that it built up there. */
  double moved(int coordinate, int origin) {
    return moved[rows[coordinate]][origin];
  }

  /** What all accounts together moved a coordinate by, or its tension. */
  double moved(int coordinate) {
    return sum(moved[rows[coordinate]]);
  }

  /** Puts a tension on one account, as if it had been built up before. */
  void setTension(int coordinate, int origin, double tension) {
    moved[rows[coordinate]][origin] = tension;
  }

  CoordinateSpace space() {
    return space;
  }

  private boolean loose(int coordinate) {
    int row = rows[coordinate];
    return motions.stream().anyMatch(m -> Math.abs(m[row]) > NO_MOTION * motionScale[row]);
  }

  /** Stress-free change of closed springs that has the same effect as their pull. */
  private double[] injected(int[] block, List<Pull> pulls) {
    double[][] matrix = flexibility.block(block);
    double[] right = new double[block.length];
    int k = 0;
    for (Pull pull : pulls) {
      pull.checkFree(components(pull.link()));
      for (int c : components(pull.link())) {
        double added = pull.addedCompliance(c, linkStiffness[pull.link()][c]);
        for (int l = 0; l < block.length; l++) {
          matrix[k][l] = (k == l ? 1 : 0) - added * matrix[k][l];
        }
        right[k++] = pull.wantedIn(c);
      }
    }
    return SmallSystem.solve(matrix, right);
  }

  /** Closes one coordinate by using up a loose motion; false when no loose motion opens it. */
  private boolean hang(int coordinate, double compliance) {
    double[] using = new double[0];
    double most = NO_MOTION * motionScale[coordinate];
    for (double[] motion : motions) {
      if (Math.abs(motion[coordinate]) > most) {
        most = Math.abs(motion[coordinate]);
        using = motion;
      }
    }
    if (using.length == 0) {
      return false;
    }
    double[] used = using;
    motions.removeIf(motion -> motion == used);
    double[] unit = used.clone();
    for (int i = 0; i < unit.length; i++) {
      unit[i] /= used[coordinate];
    }
    for (double[] motion : motions) {
      double share = motion[coordinate];
      for (int i = 0; share != 0 && i < motion.length; i++) {
        motion[i] -= share * unit[i];
      }
      motion[coordinate] = 0;
    }
    flexibility.hang(coordinate, unit, compliance);
    return true;
  }

  private void soften(int link, SpringStiffness stiffness) {
    int[] components = components(link);
    double[] softer = stiffness.components();
    double[] added = new double[components.length];
    for (int k = 0; k < components.length; k++) {
      added[k] = 1 / softer[components[k]] - 1 / linkStiffness[link][components[k]];
    }
    flexibility.soften(block(link), added);
    linkStiffness[link] = softer;
  }

  /** Components in which a closed link holds. */
  int[] components(int link) {
    return closed(link)
        ? IntStream.range(0, 6).filter(c -> linkStiffness[link][c] > 0).toArray()
        : new int[0];
  }

  private int[] block(int link) {
    return IntStream.of(components(link)).map(c -> rows[space.link(link, c)]).toArray();
  }

  private double[] compliances(int link) {
    return IntStream.of(components(link)).mapToDouble(c -> 1 / linkStiffness[link][c]).toArray();
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }

  private static double[][] deepCopy(double[][] rows) {
    return Arrays.stream(rows).map(double[]::clone).toArray(double[][]::new);
  }
}
