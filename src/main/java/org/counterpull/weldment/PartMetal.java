package org.counterpull.weldment;

import org.counterpull.material.Metal;
import org.counterpull.steel.Grade;
import org.counterpull.steel.Grades;

/** The metal that a part's properties are taken from: by the family of its grade. */
public final class PartMetal {
  private PartMetal() {}

  /** Carbon steel for grades that nobody knows: their density and conduction differ little. */
  public static Metal of(Part part) {
    return Grades.find(part.steel().designation())
        .map(Grade::family)
        .map(
            family ->
                switch (family) {
                  case CARBON, QUENCHED_AND_TEMPERED, CAST_IRON -> Metal.CARBON_STEEL;
                  case STAINLESS -> Metal.STAINLESS_STEEL;
                  case ALUMINIUM -> Metal.ALUMINIUM_5XXX;
                })
        .orElse(Metal.CARBON_STEEL);
  }

  /** Density, kg/m3: the file's, else that of the metal. */
  public static double densityKgPerM3(Part part) {
    return part.steel()
        .constants()
        .map(MaterialConstants::densityKgPerM3)
        .orElseGet(() -> of(part).densityKgPerM3());
  }
}
