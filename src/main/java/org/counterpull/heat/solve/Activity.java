package org.counterpull.heat.solve;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.counterpull.heat.source.Deposit;
import org.counterpull.heat.source.MovingSource;

/**
 * Which blocks need the short steps of an arc, and which may wait and take a long one.
 *
 * <p>Short steps go to every block that an arc meets or whose temperature moves fast, and to all
 * that are linked to one of these: so the borders at which a waiting block's temperature is held
 * lie where it hardly changes.
 */
final class Activity {
  private final List<BlockField> fields;
  private final List<LinkTerms> links;
  private final double quietK;

  /**
   * The activity of a set of blocks.
   *
   * @param quietK change over a long step up to which a block counts as waiting
   */
  Activity(List<BlockField> fields, List<LinkTerms> links, double quietK) {
    this.fields = fields;
    this.links = links;
    this.quietK = quietK;
  }

  /** The blocks that need short steps between two times, in the order of the model. */
  List<BlockField> moving(List<MovingSource> burning, double fromS, double toS) {
    Set<BlockField> hot = new LinkedHashSet<>();
    for (BlockField field : fields) {
      boolean met = burning.stream().anyMatch(s -> Deposit.meets(field.block(), s, fromS, toS));
      if (met || field.rateKPerS() * (toS - fromS) > quietK) {
        hot.add(field);
      }
    }
    Set<BlockField> moving = new LinkedHashSet<>(hot);
    for (LinkTerms link : links) {
      if (link.link.fromS() <= toS && (hot.contains(link.a) || hot.contains(link.b))) {
        moving.add(link.a);
        moving.add(link.b);
      }
    }
    List<BlockField> ordered = new ArrayList<>(fields);
    ordered.retainAll(moving);
    return ordered;
  }
}
