package org.counterpull.jointplan;

import java.util.List;
import java.util.Optional;
import org.counterpull.quantity.Computed;

/**
 * What one method says about the preheat of a joint.
 *
 * @param method its name
 * @param answer its temperature; empty where it gives none
 * @param words what it was asked with, and what it says where it gives no temperature
 */
public record PreheatOpinion(String method, Optional<Computed> answer, String words) {

  /** The method holds here: it answers, and inside its box. */
  public boolean counts() {
    return answer.filter(Computed::inRange).isPresent();
  }

  /** Which limits of the method were left. */
  public List<String> outside() {
    return answer.map(Computed::warnings).orElse(List.of());
  }
}
