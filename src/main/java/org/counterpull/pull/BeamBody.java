package org.counterpull.pull;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.space.Frame;

/**
 * A bar as a chain of straight shear-flexible beams along its centroid, straight or bent.
 *
 * <p>Its flexibility is the exact integral of the section compliances over the chain (force method,
 * Timoshenko beam: J. S. Przemieniecki, Theory of Matrix Structural Analysis, 1968, from memory),
 * so short elements cost no digits. Warping is left out.
 */
public final class BeamBody implements ElasticBody {
  private static final double GAUSS = 0.5 / Math.sqrt(3);

  private final List<Vector3D> nodes;
  private final List<BeamElement> elements;
  private final int[] exposed;
  private final double[][] flexibility;

  /**
   * A bar.
   *
   * @param nodes the chain's nodes on the centroid, from one end to the other, mm
   * @param elements what lies between each two of them
   * @param material of the bar
   * @param exposed indices of the nodes that the outside needs; the first is the held one
   */
  public BeamBody(
      List<Vector3D> nodes,
      List<BeamElement> elements,
      ElasticMaterial material,
      List<Integer> exposed) {
    if (elements.size() != nodes.size() - 1 || exposed.isEmpty()) {
      throw new IllegalArgumentException(
          nodes.size()
              + " nodes need "
              + (nodes.size() - 1)
              + " elements and an exposed node, not "
              + elements.size()
              + " and "
              + exposed.size());
    }
    this.nodes = List.copyOf(nodes);
    this.elements = List.copyOf(elements);
    this.exposed = exposed.stream().mapToInt(Integer::intValue).toArray();
    this.flexibility = integrate(material);
  }

  /** A straight bar of one section; {@code up} is the rough direction of its z axis. */
  public static BeamBody straight(
      List<Vector3D> nodes, SectionStiffness section, Vector3D up, ElasticMaterial material) {
    List<BeamElement> elements =
        Collections.nCopies(nodes.size() - 1, new BeamElement(section, up));
    List<Integer> all = IntStream.range(0, nodes.size()).boxed().toList();
    return new BeamBody(nodes, elements, material, all);
  }

  @Override
  public int exposedCount() {
    return exposed.length;
  }

  @Override
  public Vector3D exposed(int node) {
    return nodes.get(exposed[node]);
  }

  @Override
  public double[][] flexibility() {
    return flexibility;
  }

  /** Axes of an element: x along it, z roughly up; origin at its first node. */
  public Frame axes(int element) {
    Vector3D from = nodes.get(element);
    return Frame.of(from, nodes.get(element + 1).subtract(from), elements.get(element).up());
  }

  /**
   * What a jump of the axis does: where two halves of the bar are set off and turned against each
   * other.
   *
   * @param element where
   * @param fraction how far along the element, 0 to 1
   * @param jump elongation, two offsets, twist, turns about y and z, in the element's axes; mm, rad
   */
  public FreeResponse jump(int element, double fraction, double[] jump) {
    double[] response = new double[6 * exposed.length];
    Frame axes = axes(element);
    Vector3D at = between(element, fraction);
    for (int i = 0; i < exposed.length; i++) {
      double[][] forces = sectionForces(i, element, axes, at);
      for (int r = 0; forces.length > 0 && r < 6; r++) {
        for (int c = 0; c < 6; c++) {
          response[6 * i + c] += forces[r][c] * jump[r];
        }
      }
    }
    return new FreeResponse(response);
  }

  /**
   * What a wall of the bar does that shrinks along the bar by the transverse shrinkage of a weld
   * that crosses it: a shortening S A / A_bar and a kink S A c / I.
   *
   * @param element where
   * @param fraction how far along the element, 0 to 1
   * @param shrinkageMm transverse shrinkage of the weld, mm, positive
   * @param wallAreaMm2 area of the wall that shrinks, mm2
   * @param yMm centroid of that wall in the element's axes, mm
   * @param zMm the same along z, mm
   */
  public FreeResponse wallShrinkage(
      int element,
      double fraction,
      double shrinkageMm,
      double wallAreaMm2,
      double yMm,
      double zMm) {
    double[] jump = elements.get(element).section().jumpOfShrunkStrip(yMm, zMm);
    for (int i = 0; i < jump.length; i++) {
      jump[i] *= shrinkageMm * wallAreaMm2;
    }
    return jump(element, fraction, jump);
  }

  private double[][] integrate(ElasticMaterial material) {
    int size = 6 * exposed.length;
    double[][] sum = new double[size][size];
    for (int e = 0; e < elements.size(); e++) {
      double length = nodes.get(e + 1).distance(nodes.get(e));
      double[][] compliance = elements.get(e).section().compliance(material);
      for (double fraction : new double[] {0.5 - GAUSS, 0.5 + GAUSS}) {
        addPoint(sum, e, fraction, compliance, length / 2);
      }
    }
    return sum;
  }

  private void addPoint(
      double[][] sum, int element, double fraction, double[][] compliance, double weight) {
    Frame axes = axes(element);
    Vector3D at = between(element, fraction);
    double[][][] forces = new double[exposed.length][][];
    double[][][] strains = new double[exposed.length][][];
    for (int i = 0; i < exposed.length; i++) {
      forces[i] = sectionForces(i, element, axes, at);
      strains[i] = times(compliance, forces[i]);
    }
    for (int i = 0; i < exposed.length; i++) {
      for (int j = 0; j < exposed.length; j++) {
        addProduct(sum, 6 * i, 6 * j, forces[i], strains[j], weight);
      }
    }
  }

  /**
   * Section forces at a point from unit forces and moments on an exposed node; empty when the point
   * doesn't lie between that node and the held one.
   */
  private double[][] sectionForces(int node, int element, Frame axes, Vector3D at) {
    boolean beyond = exposed[node] > element;
    if (beyond == exposed[0] > element) {
      return new double[0][];
    }
    double sign = beyond ? 1 : -1;
    Vector3D arm = nodes.get(exposed[node]).subtract(at);
    Vector3D[] unit = {Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K};
    double[][] forces = new double[6][6];
    for (int c = 0; c < 3; c++) {
      put(forces, 0, c, axes.directionInto(unit[c]), sign);
      put(forces, 3, c, axes.directionInto(arm.crossProduct(unit[c])), sign);
      put(forces, 3, c + 3, axes.directionInto(unit[c]), sign);
    }
    return forces;
  }

  private Vector3D between(int element, double fraction) {
    return new Vector3D(1 - fraction, nodes.get(element), fraction, nodes.get(element + 1));
  }

  private static void put(double[][] to, int row, int column, Vector3D vector, double sign) {
    to[row][column] = sign * vector.getX();
    to[row + 1][column] = sign * vector.getY();
    to[row + 2][column] = sign * vector.getZ();
  }

  private static double[][] times(double[][] a, double[][] b) {
    double[][] product = new double[b.length][b.length];
    for (int r = 0; r < b.length; r++) {
      for (int k = 0; k < b.length; k++) {
        for (int c = 0; c < b.length; c++) {
          product[r][c] += a[r][k] * b[k][c];
        }
      }
    }
    return product;
  }

  private static void addProduct(
      double[][] sum, int row, int column, double[][] forces, double[][] strains, double weight) {
    if (forces.length == 0 || strains.length == 0) {
      return;
    }
    for (int r = 0; r < 6; r++) {
      for (int c = 0; c < 6; c++) {
        double dot = 0;
        for (int k = 0; k < 6; k++) {
          dot += forces[k][r] * strains[k][c];
        }
        sum[row + r][column + c] += weight * dot;
      }
    }
  }
}
