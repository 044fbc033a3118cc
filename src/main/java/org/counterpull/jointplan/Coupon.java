package org.counterpull.jointplan;

import java.util.List;

/**
 * A test piece: same thickness, position and settings as a joint, cut, etched and looked at before
 * the job is welded. Joints that ask for the same one share it.
 *
 * @param likeness machine, process, filler, position and sort of weld: joints that are alike in
 *     these share the piece that is hardest to fuse
 * @param chillMmPerKJ thickness of both parts over arc energy: the more, the harder to fuse
 * @param why what is not sure without it
 * @param pieces what it is made of and how it is set up
 * @param welded machine, filler, position and settings
 * @param place where its machine stands
 * @param cut how it is cut and etched
 * @param see what must be seen
 */
public record Coupon(
    String likeness,
    double chillMmPerKJ,
    String why,
    String pieces,
    String welded,
    String place,
    List<String> cut,
    List<String> see) {
  public Coupon {
    cut = List.copyOf(cut);
    see = List.copyOf(see);
  }
}
