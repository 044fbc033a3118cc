package org.counterpull.heat.superposed;

import java.util.List;
import org.counterpull.heat.link.Link;
import org.counterpull.heat.source.MovingSource;

/**
 * A run whose response is wanted.
 *
 * @param source its arc; the start time does not count
 * @param lays the weld metal that it lays, in blocks of the full model
 */
public record Run(MovingSource source, List<Link> lays) {

  public Run {
    lays = List.copyOf(lays);
  }
}
