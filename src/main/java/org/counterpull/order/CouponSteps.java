package org.counterpull.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.counterpull.jointplan.Coupon;
import org.counterpull.jointplan.JointPlan;

/** Test pieces, welded before the job; joints that ask for the same one share it. */
final class CouponSteps {
  private CouponSteps() {}

  static void add(Steps all) {
    Map<Coupon, List<String>> byCoupon = new LinkedHashMap<>();
    for (JointPlan plan : all.joints()) {
      plan.coupon()
          .ifPresent(
              c -> byCoupon.computeIfAbsent(c, k -> new ArrayList<>()).add(plan.joint().name()));
    }
    int turn = 0;
    for (Map.Entry<Coupon, List<String>> entry : byCoupon.entrySet()) {
      turn++;
      Coupon coupon = entry.getKey();
      String names = Steps.names(entry.getValue());
      String at = coupon.place().equals("here") ? "" : ", at " + coupon.place();
      all.add(
          new Steps.Draft(
                  StepTag.TEST_PIECE,
                  "T" + turn,
                  "Weld, cut and etch test piece T" + turn + " for " + names + at,
                  names)
              .why(List.of(sentence(coupon.why())))
              .turn(turn));
    }
  }

  private static String sentence(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1) + ".";
  }
}
