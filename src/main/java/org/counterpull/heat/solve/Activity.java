package org.counterpull.heat.solve;

import java.util.List;

/** Which blocks move fast enough to need the short steps of an arc. */
final class Activity {
  private final List<BlockField> fields;
  private final List<LinkTerms> links;

  Activity(List<BlockField> fields, List<LinkTerms> links) {
    this.fields = fields;
    this.links = links;
  }

  boolean atTime(BlockField field, double timeS) {
    return true;
  }
}
