package org.counterpull.heat.solve;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.link.Link;
import org.counterpull.heat.source.Deposit;
import org.counterpull.heat.source.MovingSource;

/**
 * Which blocks are stepped on their own cells, and which rest on wider ones because no arc is near
 * and their temperature is smooth.
 */
final class Rest {
  /** Wide cells; own choice. */
  private static final double WIDEST_MM = 12;

  /** Blocks this near to an arc are woken; own choice. */
  private static final double NEAR_ARC_MM = 20;

  /** A block rests only if that leaves less than this share of its cells. */
  private static final double WORTH_RESTING = 0.6;

  /** Error of straight lines between wide cells with which a block may rest, in quiet changes. */
  private static final double EVEN = 0.5;

  /** Bend between wide cells above which a block is woken, in quiet changes. */
  private static final double BENT = 4;

  private final List<BlockField> fields;
  private final double quietK;
  private final List<Link> links = new ArrayList<>();
  private final List<BlockField> stepped;
  private final List<LinkTerms> terms = new ArrayList<>();
  private final Map<Block, BlockField> byBlock = new IdentityHashMap<>();
  private final Map<BlockField, Optional<RestingBlock>> known = new IdentityHashMap<>();
  private final Map<BlockField, RestingBlock> resting = new IdentityHashMap<>();
  private final Map<BlockField, RestingBlock> byWide = new IdentityHashMap<>();
  private final Map<Link, LinkTerms[]> made = new IdentityHashMap<>();

  /**
   * All blocks awake.
   *
   * @param quietK change that counts as none; 0 for blocks that never rest
   */
  Rest(List<BlockField> fields, double quietK) {
    this.fields = List.copyOf(fields);
    this.quietK = quietK;
    this.stepped = new ArrayList<>(fields);
    fields.forEach(f -> byBlock.put(f.block(), f));
  }

  /** What is stepped, in the order of the model: a block itself, or its wide cells. */
  List<BlockField> stepped() {
    return stepped;
  }

  /** The links among these. */
  List<LinkTerms> terms() {
    return terms;
  }

  void add(Link link) {
    links.add(link);
    terms.add(terms(link));
  }

  /** The blocks themselves of what was stepped. */
  List<BlockField> own(List<BlockField> some) {
    return some.stream().map(this::own).toList();
  }

  private BlockField own(BlockField field) {
    RestingBlock rest = byWide.get(field);
    return rest == null ? field : rest.fine();
  }

  /** Lets the cells of resting blocks follow what was stepped in their place. */
  void follow(List<BlockField> some) {
    for (BlockField field : some) {
      RestingBlock rest = byWide.get(field);
      if (rest != null) {
        rest.follow();
      }
    }
  }

  /**
   * Wakes blocks near arcs and where it has become steep; lays others to rest.
   *
   * @return whether anything changed
   */
  boolean update(List<MovingSource> burning, double fromS, double toS) {
    boolean changed = false;
    for (BlockField field : fields) {
      boolean near =
          burning.stream().anyMatch(s -> Deposit.near(field.block(), s, fromS, toS, NEAR_ARC_MM));
      RestingBlock rest = resting.get(field);
      if (rest == null && quietK > 0 && !near) {
        changed |= layToRest(field);
      } else if (rest != null && (near || rest.bentK() > BENT * quietK)) {
        field.rateOf(rest.wide());
        resting.remove(field);
        changed = true;
      }
    }
    if (changed) {
      gather();
    }
    return changed;
  }

  private boolean layToRest(BlockField field) {
    Optional<RestingBlock> rest = known.computeIfAbsent(field, this::wider);
    boolean smooth = rest.isPresent() && rest.get().begin(EVEN * quietK, BENT * quietK / 2);
    if (smooth) {
      resting.put(field, rest.get());
    }
    return smooth;
  }

  private Optional<RestingBlock> wider(BlockField field) {
    WiderCells cells = new WiderCells(field.block(), WIDEST_MM);
    if (cells.wide().grid().cells() > WORTH_RESTING * field.block().grid().cells()) {
      return Optional.empty();
    }
    RestingBlock rest = new RestingBlock(field, cells);
    byWide.put(rest.wide(), rest);
    return Optional.of(rest);
  }

  private void gather() {
    stepped.clear();
    for (BlockField field : fields) {
      stepped.add(Optional.ofNullable(resting.get(field)).map(RestingBlock::wide).orElse(field));
    }
    terms.clear();
    links.forEach(link -> terms.add(terms(link)));
  }

  private LinkTerms terms(Link link) {
    BlockField a = byBlock.get(link.a());
    BlockField b = byBlock.get(link.b());
    Optional<RestingBlock> restA = Optional.ofNullable(resting.get(a));
    Optional<RestingBlock> restB = Optional.ofNullable(resting.get(b));
    int which = (restA.isPresent() ? 1 : 0) + (restB.isPresent() ? 2 : 0);
    LinkTerms[] four = made.computeIfAbsent(link, l -> new LinkTerms[4]);
    if (four[which] == null) {
      Link wide =
          which == 0
              ? link
              : WiderCells.link(
                  link, restA.map(RestingBlock::cells), restB.map(RestingBlock::cells));
      four[which] =
          new LinkTerms(
              wide,
              restA.map(RestingBlock::wide).orElse(a),
              restB.map(RestingBlock::wide).orElse(b));
    }
    return four[which];
  }
}
