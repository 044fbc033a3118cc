package org.counterpull.solid;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.counterpull.space.Frame;

/** A convex prism between two planes: corners of the low end, then of the high end, in order. */
public final class ConvexPiece {
  private final List<Vector3D> corners;
  private final List<int[]> faces;
  private final List<int[]> edges;
  private final List<Vector3D> normals;
  private final List<Vector3D> edgeDirections;
  private final Box box;

  private ConvexPiece(List<Vector3D> corners) {
    this.corners = List.copyOf(corners);
    int n = corners.size() / 2;
    faces = facesOf(n);
    edges = edgesOf(n);
    normals = faces.stream().map(this::normalOf).toList();
    edgeDirections = directionsOf(n);
    box = Box.around(corners);
  }

  static ConvexPiece prism(Frame sweep, List<Vector2D> section, Cut low, Cut high) {
    List<Vector3D> corners = new ArrayList<>();
    for (Cut cut : List.of(low, high)) {
      for (Vector2D at : section) {
        double w = cut.at(at.getX(), at.getY());
        corners.add(sweep.outOf(new Vector3D(at.getX(), at.getY(), w)));
      }
    }
    return new ConvexPiece(corners);
  }

  private static List<int[]> facesOf(int n) {
    List<int[]> faces = new ArrayList<>();
    int[] low = new int[n];
    int[] high = new int[n];
    for (int i = 0; i < n; i++) {
      int next = (i + 1) % n;
      faces.add(new int[] {i, next, n + next, n + i});
      low[i] = n - 1 - i;
      high[i] = n + i;
    }
    faces.add(low);
    faces.add(high);
    return faces;
  }

  private static List<int[]> edgesOf(int n) {
    List<int[]> edges = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      int next = (i + 1) % n;
      edges.add(new int[] {i, next});
      edges.add(new int[] {n + i, n + next});
      edges.add(new int[] {i, n + i});
    }
    return edges;
  }

  /** By Newell's sum, which stands a side of no length. */
  private Vector3D normalOf(int[] face) {
    Vector3D sum = Vector3D.ZERO;
    Vector3D base = corners.get(face[0]);
    for (int i = 1; i + 1 < face.length; i++) {
      Vector3D a = corners.get(face[i]).subtract(base);
      sum = sum.add(a.crossProduct(corners.get(face[i + 1]).subtract(base)));
    }
    return sum.getNorm() < 1e-12 ? Vector3D.PLUS_I : sum.normalize();
  }

  private List<Vector3D> directionsOf(int n) {
    List<Vector3D> directions = new ArrayList<>();
    for (int[] edge : edges) {
      Vector3D along = corners.get(edge[1]).subtract(corners.get(edge[0]));
      if (along.getNorm() < 1e-9) {
        continue;
      }
      Vector3D unit = along.normalize();
      if (directions.stream().noneMatch(d -> Math.abs(d.dotProduct(unit)) > 1 - 1e-12)) {
        directions.add(unit);
      }
    }
    return List.copyOf(directions);
  }

  /** Its box. */
  public Box box() {
    return box;
  }

  List<Vector3D> corners() {
    return corners;
  }

  List<int[]> faces() {
    return faces;
  }

  List<int[]> edges() {
    return edges;
  }

  List<Vector3D> normals() {
    return normals;
  }

  List<Vector3D> edgeDirections() {
    return edgeDirections;
  }
}
