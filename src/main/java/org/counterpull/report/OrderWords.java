package org.counterpull.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.counterpull.plan.NamedOrder;
import org.counterpull.plan.PullAnswer;
import org.counterpull.plan.PullAnswer.Compared;
import org.counterpull.plan.PullAnswer.Verdict;

/** Says why runs are welded in this order and not in another. */
final class OrderWords {
  /** Two orders whose worst checks differ by less of a tolerance are alike. */
  private static final double ALIKE = 0.05;

  private final PullAnswer answer;

  OrderWords(PullAnswer answer) {
    this.answer = answer;
  }

  /** The gist first, then each other order, then what no order mends. */
  List<String> sentences() {
    List<String> all = new ArrayList<>();
    Optional<Compared> own = find(answer.order());
    if (own.isEmpty() || answer.checks().isEmpty()) {
      return all;
    }
    all.add(gist(own.get()));
    answer.orders().stream()
        .filter(other -> other.order() != answer.order())
        .forEach(other -> all.add(beside(own.get(), other)));
    unmended().forEach(all::add);
    return all;
  }

  private Optional<Compared> find(NamedOrder order) {
    return answer.orders().stream().filter(o -> o.order() == order).findFirst();
  }

  private String gist(Compared own) {
    int worst = worstCheck(own);
    return String.format(
        Locale.ROOT,
        "In this order the worst check, %s, takes up %s of its tolerance; turning over and moving"
            + " take %.0f min.",
        answer.checks().get(worst).check().name(),
        percent(own.worst()),
        own.handlingMin());
  }

  private int worstCheck(Compared order) {
    int worst = 0;
    double most = -1;
    for (int c = 0; c < answer.checks().size(); c++) {
      double ratio = ratio(order, c);
      worst = ratio > most ? c : worst;
      most = Math.max(most, ratio);
    }
    return worst;
  }

  private double ratio(Compared order, int check) {
    return Math.abs(order.expectedMm().get(check)) / answer.checks().get(check).toleranceMm();
  }

  private String beside(Compared own, Compared other) {
    int check = worstCheck(other);
    double gain = other.worst() - own.worst();
    String minutes = String.format(Locale.ROOT, "%.0f min", other.handlingMin());
    String name = capital(other.order().words());
    if (Math.abs(gain) < ALIKE) {
      String told =
          other.handlingMin() > own.handlingMin() ? "but takes " + minutes : "and takes " + minutes;
      return name + ": comes out alike (" + percent(other.worst()) + "), " + told + ".";
    }
    return String.format(
        Locale.ROOT,
        "%s: %s, %s takes up %s of its tolerance (here %s), %s.",
        name,
        gain > 0 ? "worse" : "better",
        answer.checks().get(check).check().name(),
        percent(other.worst()),
        percent(ratio(own, check)),
        minutes);
  }

  /** Checks that come out of tolerance in every order that was looked at. */
  private List<String> unmended() {
    List<String> sentences = new ArrayList<>();
    for (int c = 0; c < answer.checks().size(); c++) {
      int check = c;
      if (answer.checks().get(c).verdict() == Verdict.NO
          && answer.orders().stream().allMatch(o -> ratio(o, check) > 1)) {
        sentences.add(
            answer.checks().get(c).check().name()
                + ": no order that was looked at brings it into tolerance; what would is said"
                + " with the check.");
      }
    }
    return sentences;
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private static String percent(double ratio) {
    return String.format(Locale.ROOT, "%.0f %%", 100 * ratio);
  }
}
