package org.counterpull.mount;

import java.util.List;
import java.util.Optional;

/**
 * How a weld is made, as the heat sees it.
 *
 * @param seams what is welded, in order; on the sleeve where there is one, but for a ring that ends
 *     it
 * @param waits whether the next pass waits until the metal is hand-warm
 * @param chilled whether a bar fills the bore and a wet rag lies before what is near
 * @param inside what is in the tube
 * @param sleeve between tube and lug; empty for none
 * @param lugIsThere false where only the ring of a sleeve is welded
 */
record HeatSetup(
    List<Seam> seams,
    boolean waits,
    boolean chilled,
    Inside inside,
    Optional<Sleeve> sleeve,
    boolean lugIsThere) {

  HeatSetup {
    seams = List.copyOf(seams);
  }

  /** Straight onto the tube, one run after the other. */
  static HeatSetup direct(MountCase mount) {
    return new HeatSetup(mount.seams(), false, false, mount.inside(), Optional.empty(), true);
  }

  HeatSetup waiting() {
    return new HeatSetup(seams, true, chilled, inside, sleeve, lugIsThere);
  }

  HeatSetup withChill() {
    return new HeatSetup(seams, waits, true, inside, sleeve, lugIsThere);
  }

  HeatSetup dry() {
    return new HeatSetup(seams, waits, chilled, Inside.DRAINED, sleeve, lugIsThere);
  }
}
