package org.counterpull.heat.face;

import org.counterpull.heat.block.Patch;
import org.counterpull.heat.block.Vec3;

/**
 * Another condition with its coefficient held at one temperature, for models that are to be linear.
 *
 * @param of the condition
 * @param heldAtC surface temperature at which its coefficient is taken
 * @param airC temperature of the air for which it is taken; a model that rests at another loses
 *     heat by the same coefficient
 */
public record TangentFilm(FaceCondition of, double heldAtC, double airC) implements FaceCondition {

  @Override
  public Exchange at(Patch patch, Vec3 up, double ambientC) {
    Exchange exchange = of.at(patch, up, airC);
    double held = exchange.coefficientWPerMm2K(heldAtC) * 1e6;
    return new Exchange(exchange.bodyC() + ambientC - airC, held, 0, 0, 0);
  }

  @Override
  public Account account() {
    return of.account();
  }
}
