package org.counterpull.reading;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Side;

/** Reads the name of a run: {@code joint/side}, with {@code #n} where a side has several lines. */
final class RunName {
  private static final Pattern FORM = Pattern.compile("(.+)/([^/#]+)(#[1-9]\\d{0,3})?");

  private RunName() {}

  /** The name, when its joint is known and has that side. */
  static Optional<String> check(Value value, List<String> jointNames, List<Joint> joints) {
    Optional<String> text = value.text();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Matcher run = FORM.matcher(text.get());
    if (!run.matches()) {
      return value.problem(
          Problems.quote(text.get()) + " is no name of a run: joint/side is",
          mend(text.get(), jointNames));
    }
    if (value.known(run.group(1), jointNames, "joint").isEmpty()) {
      return Optional.empty();
    }
    Optional<Side> side = Words.side(run.group(2));
    if (side.isEmpty()) {
      return value.problem(
          Problems.quote(run.group(2)) + " is no side of a joint",
          Problems.didYouMean(run.group(2), Words.SIDES));
    }
    Optional<Joint> joint = joints.stream().filter(j -> j.name().equals(run.group(1))).findFirst();
    boolean welded =
        joint.isEmpty()
            || joint.get().sides().isEmpty()
            || joint.get().sides().contains(side.get());
    return welded
        ? text
        : value.problem(
            "joint " + run.group(1) + " is not welded on the " + side.get().word(),
            "one of its sides: "
                + String.join(", ", joint.get().sides().stream().map(Side::word).toList()));
  }

  private static String mend(String text, List<String> joints) {
    String joint = joints.contains(text) ? text : joints.isEmpty() ? "joint" : joints.get(0);
    return joint + "/top, or another side";
  }
}
