package org.counterpull.pull;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * All coordinates of an assembly in one numbering (links, six each, then readings, then loads),
 * their flexibility with each body held at its first node, and the rigid motions of each body.
 */
final class CoordinateSpace {
  private final Assembly assembly;
  private final int links;
  private final int readings;
  private final int size;

  CoordinateSpace(Assembly assembly) {
    this.assembly = assembly;
    this.links = assembly.links().size();
    this.readings = assembly.readings().size();
    this.size = 6 * links + readings + assembly.loads().size();
  }

  int size() {
    return size;
  }

  int link(int link, int component) {
    return 6 * link + component;
  }

  int reading(int reading) {
    return 6 * links + reading;
  }

  int load(int load) {
    return 6 * links + readings + load;
  }

  /** Flexibility of the loose bodies. */
  Flexibility flexibility() {
    Flexibility sum = new Flexibility(size);
    List<ElasticBody> bodies = assembly.bodies();
    List<List<Entry>> entries = entries();
    for (int b = 0; b < bodies.size(); b++) {
      double[][] f = bodies.get(b).flexibility();
      List<Entry> own = entries.get(b);
      for (int i = 0; i < own.size(); i++) {
        double[] response = own.get(i).response(f);
        for (int j = 0; j <= i; j++) {
          double value = own.get(j).dot(response);
          // Two terms of one coordinate meet twice on its diagonal, once in a mixed entry.
          boolean mixedOnDiagonal = i != j && own.get(i).row == own.get(j).row;
          sum.add(own.get(i).row, own.get(j).row, mixedOnDiagonal ? 2 * value : value);
        }
      }
      addStrains(sum, own, b);
    }
    return sum;
  }

  private void addStrains(Flexibility sum, List<Entry> own, int body) {
    for (int l = 0; l < assembly.loads().size(); l++) {
      for (Load.Strain strain : assembly.loads().get(l).strains()) {
        if (strain.body() == body) {
          double[] response = strain.response().displacements();
          for (Entry entry : own) {
            sum.add(load(l), entry.row, entry.dot(response));
          }
        }
      }
    }
  }

  /** Rigid motions of all bodies, six each, as columns over all coordinates. */
  List<double[]> rigidMotions() {
    List<double[]> motions = new ArrayList<>();
    List<List<Entry>> entries = entries();
    double length = span();
    for (int b = 0; b < entries.size(); b++) {
      ElasticBody body = assembly.bodies().get(b);
      double[][] six = new double[6][size];
      for (Entry entry : entries.get(b)) {
        Vector3D arm = body.exposed(entry.node).subtract(body.exposed(0));
        Vector3D turn = arm.crossProduct(entry.displacement).add(entry.turn);
        put(six, 0, entry.row, entry.displacement, 1);
        put(six, 3, entry.row, turn, 1 / length);
      }
      motions.addAll(List.of(six));
    }
    return motions;
  }

  /**
   * How much rigid motions can do to each coordinate before its terms cancel: the scale of zero.
   */
  double[] motionScale() {
    double[] scale = new double[size];
    double length = span();
    List<List<Entry>> entries = entries();
    for (int b = 0; b < entries.size(); b++) {
      ElasticBody body = assembly.bodies().get(b);
      for (Entry entry : entries.get(b)) {
        Vector3D arm = body.exposed(entry.node).subtract(body.exposed(0));
        Vector3D turn = arm.crossProduct(entry.displacement).add(entry.turn);
        double most = Math.max(entry.displacement.getNorm(), turn.getNorm() / length);
        scale[entry.row] = Math.max(scale[entry.row], most);
      }
    }
    return scale;
  }

  private static void put(double[][] six, int from, int row, Vector3D vector, double factor) {
    six[from][row] += factor * vector.getX();
    six[from + 1][row] += factor * vector.getY();
    six[from + 2][row] += factor * vector.getZ();
  }

  private double span() {
    Vector3D first = assembly.bodies().get(0).exposed(0);
    double span = 1;
    for (ElasticBody body : assembly.bodies()) {
      for (int i = 0; i < body.exposedCount(); i++) {
        span = Math.max(span, body.exposed(i).distance(first));
      }
    }
    return span;
  }

  private List<List<Entry>> entries() {
    List<List<Entry>> byBody = new ArrayList<>();
    for (int b = 0; b < assembly.bodies().size(); b++) {
      byBody.add(new ArrayList<>());
    }
    for (int l = 0; l < links; l++) {
      for (int c = 0; c < 6; c++) {
        addEntries(byBody, assembly.links().get(l).get(c), link(l, c), 1);
      }
    }
    for (int r = 0; r < readings; r++) {
      addEntries(byBody, assembly.readings().get(r), reading(r), 1);
    }
    for (int l = 0; l < assembly.loads().size(); l++) {
      for (Load.Force force : assembly.loads().get(l).forces()) {
        addEntries(byBody, force.on(), load(l), force.size());
      }
    }
    return byBody;
  }

  private static void addEntries(
      List<List<Entry>> byBody, Coordinate coordinate, int row, double factor) {
    for (Coordinate.Term term : coordinate.times(factor).terms()) {
      byBody.get(term.body()).add(new Entry(row, term.node(), term.displacement(), term.turn()));
    }
  }

  /** What one node adds to one coordinate. */
  private record Entry(int row, int node, Vector3D displacement, Vector3D turn) {
    double[] response(double[][] flexibility) {
      double[] factors = factors();
      double[] response = new double[flexibility.length];
      for (int k = 0; k < 6; k++) {
        double[] column = flexibility[6 * node + k];
        for (int i = 0; i < response.length; i++) {
          response[i] += factors[k] * column[i];
        }
      }
      return response;
    }

    double dot(double[] response) {
      double[] factors = factors();
      double sum = 0;
      for (int k = 0; k < 6; k++) {
        sum += factors[k] * response[6 * node + k];
      }
      return sum;
    }

    private double[] factors() {
      return new double[] {
        displacement.getX(), displacement.getY(), displacement.getZ(),
        turn.getX(), turn.getY(), turn.getZ()
      };
    }
  }
}
