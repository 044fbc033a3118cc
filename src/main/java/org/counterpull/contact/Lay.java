package org.counterpull.contact;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** How the weldment lies while it is welded. */
public enum Lay {
  AS_DRAWN("as drawn", Vector3D.PLUS_K),
  TURNED_OVER("turned over", Vector3D.MINUS_K),
  ON_ITS_FRONT("stood on its front edge", Vector3D.PLUS_J),
  ON_ITS_BACK("stood on its back edge", Vector3D.MINUS_J),
  ON_ITS_LEFT("stood on its left edge", Vector3D.PLUS_I),
  ON_ITS_RIGHT("stood on its right edge", Vector3D.MINUS_I);

  private final String words;
  private final Vector3D up;

  Lay(String words, Vector3D up) {
    this.words = words;
    this.up = up;
  }

  /** The lay in words, as in "the weldment lies turned over". */
  public String words() {
    return words;
  }

  /** What points up then, as a direction in weldment axes. */
  public Vector3D up() {
    return up;
  }
}
