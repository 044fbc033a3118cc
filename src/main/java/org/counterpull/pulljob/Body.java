package org.counterpull.pulljob;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.pull.ElasticBody;
import org.counterpull.pull.FreeResponse;

/** A part as the shape engine carries it. */
interface Body {

  ElasticBody elastic();

  /** What it is taken as, and why: for the plan. */
  String reason();

  /** The exposed node that carries a point of the part. */
  int nodeAt(Vector3D point);

  /**
   * What a piece of a wall does to the part when it shrinks across a run; empty where nothing of it
   * shows on this body.
   */
  Optional<FreeResponse> shrunk(ShrunkStrip strip);

  /** Points at which its shape is told, in weldment axes: on its axis, or all over a plate. */
  List<Vector3D> stations();
}
