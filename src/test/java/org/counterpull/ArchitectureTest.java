package org.counterpull;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/**
 * The pipeline is one way, packages have no cycles, and the physics knows nothing of files or
 * terminals.
 */
@AnalyzeClasses(packages = "org.counterpull", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  private static final String[] FORMULAS = {
    "..arc..",
    "..cooling..",
    "..material..",
    "..steel..",
    "..preheat..",
    "..section..",
    "..power..",
    "..feeding..",
    "..filler..",
    "..groove..",
    "..fillet..",
    "..penetration..",
    "..shrinkage..",
    "..strength..",
    "..zone..",
    "..calibration..",
    "..linkage..",
    "..fit.."
  };

  @ArchTest
  static final ArchRule PACKAGES_HAVE_NO_CYCLES =
      slices().matching("org.counterpull.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule FORMULAS_KNOW_NO_FILES_TERMINALS_OR_CLOCKS =
      noClasses()
          .that()
          .resideInAnyPackage(FORMULAS)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "com.fasterxml..",
              "picocli..",
              "java.time..",
              "java.nio.file..",
              "..weldment..",
              "..cli..");

  @ArchTest
  static final ArchRule ENGINES_KNOW_NO_FILES_OR_TERMINALS =
      noClasses()
          .that()
          .resideInAnyPackage("..heat..", "..pull..", "..contact..", "..solid..", "..weldment..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "com.fasterxml..",
              "picocli..",
              "java.nio.file..",
              "..report..",
              "..cli..",
              "..reading..");

  @ArchTest
  static final ArchRule PIPELINE_IS_ONE_WAY =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .withOptionalLayers(true)
          .layer("formulas")
          .definedBy(FORMULAS)
          .layer("model")
          .definedBy("..weldment..", "..machine..", "..stock..", "..space..")
          .layer("shape")
          .definedBy("..contact..", "..solid..", "..access..", "..swing..")
          .layer("joints")
          .definedBy("..jointplan..")
          .layer("mounts")
          .definedBy("..mount..")
          .layer("order")
          .definedBy("..order..")
          .layer("plan")
          .definedBy("..plan..")
          .layer("planning")
          .definedBy(
              "..planning..",
              "..heatjob..",
              "..pulljob..",
              "..hinge..",
              "..cost..",
              "..caution..",
              "..coupon..")
          .layer("edge")
          .definedBy("..report..", "..drawing..", "..reading..", "..cli..")
          .whereLayer("edge")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("planning")
          .mayOnlyBeAccessedByLayers("edge")
          .whereLayer("plan")
          .mayOnlyBeAccessedByLayers("planning", "edge")
          .whereLayer("order")
          .mayOnlyBeAccessedByLayers("plan", "planning", "edge")
          .whereLayer("mounts")
          .mayOnlyBeAccessedByLayers("plan", "planning", "edge")
          .whereLayer("joints")
          .mayOnlyBeAccessedByLayers("mounts", "order", "plan", "planning", "edge")
          .whereLayer("shape")
          .mayOnlyBeAccessedByLayers("joints", "mounts", "order", "plan", "planning", "edge")
          .whereLayer("model")
          .mayOnlyBeAccessedByLayers(
              "shape", "joints", "mounts", "order", "plan", "planning", "edge");
}
