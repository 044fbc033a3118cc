package org.counterpull.pulljob;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.pull.ElasticBody;
import org.counterpull.pull.FreeResponse;
import org.counterpull.pull.RigidBody;

/**
 * A piece so stocky that its own give doesn't count.
 *
 * @param middle its middle
 * @param reason why it is taken so
 */
record Block(Vector3D middle, String reason) implements Body {

  @Override
  public ElasticBody elastic() {
    return new RigidBody(middle);
  }

  @Override
  public int nodeAt(Vector3D point) {
    return 0;
  }

  @Override
  public Optional<FreeResponse> shrunk(ShrunkStrip strip) {
    return Optional.empty();
  }

  @Override
  public List<Vector3D> stations() {
    return List.of(middle);
  }
}
