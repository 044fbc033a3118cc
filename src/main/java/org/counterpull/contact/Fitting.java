package org.counterpull.contact;

import java.util.List;

/**
 * How the parts of a weldment fit.
 *
 * @param contacts one for each joint that touches, in the order of the joints
 * @param apart joints that do not touch
 * @param overlaps parts that are in the same place
 */
public record Fitting(List<Contact> contacts, List<NoContact> apart, List<Overlap> overlaps) {
  public Fitting {
    contacts = List.copyOf(contacts);
    apart = List.copyOf(apart);
    overlaps = List.copyOf(overlaps);
  }

  /** True when every joint touches and nothing overlaps. */
  public boolean sound() {
    return apart.isEmpty() && overlaps.isEmpty();
  }
}
