package org.counterpull.space;

import java.util.Locale;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** The six faces of a part, in its own axes; left and right are its two ends. */
public enum Face {
  LEFT(Vector3D.MINUS_I),
  RIGHT(Vector3D.PLUS_I),
  FRONT(Vector3D.MINUS_J),
  BACK(Vector3D.PLUS_J),
  BOTTOM(Vector3D.MINUS_K),
  TOP(Vector3D.PLUS_K);

  private final Vector3D normal;

  Face(Vector3D normal) {
    this.normal = normal;
  }

  /** Outward normal in part axes. */
  public Vector3D normal() {
    return normal;
  }

  /** The face on the other side. */
  public Face opposite() {
    return switch (this) {
      case LEFT -> RIGHT;
      case RIGHT -> LEFT;
      case FRONT -> BACK;
      case BACK -> FRONT;
      case BOTTOM -> TOP;
      case TOP -> BOTTOM;
    };
  }

  /** The word used in files and on plans. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
