package org.counterpull.weldment;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * Something fitted before the first tack and taken off after the last weld is cold.
 *
 * @param name unique in the weldment
 * @param kind what it is
 * @param parts what it holds, in order
 * @param at places where it holds, in weldment axes, mm; empty for the middles of the parts
 * @param diameterMm of a rod
 */
public record Fixture(
    String name, Kind kind, List<String> parts, List<Vector3D> at, Optional<Double> diameterMm) {

  public Fixture {
    parts = List.copyOf(parts);
    at = List.copyOf(at);
  }

  /** What a fixture is. */
  public enum Kind {
    CLAMP,
    STRONGBACK,
    THROUGH_ROD,
    SPACER,
    SUPPORT,
    TABLE,
    RETURN_CLAMP;

    /** The words used in files and on plans. */
    public String words() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }
}
