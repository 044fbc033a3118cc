package org.counterpull.order;

import org.counterpull.weldment.ShopMachine;
import org.counterpull.weldment.Weldment;

/** Where work is done. */
final class Places {
  private Places() {}

  /** Where preparing and tacking is done: the bench, unless every machine stands elsewhere. */
  static String bench(Weldment weldment) {
    boolean here =
        weldment.machines().isEmpty()
            || weldment.machines().stream().anyMatch(m -> m.place().equals(ShopMachine.HERE));
    return here ? ShopMachine.HERE : weldment.machines().get(0).place();
  }
}
