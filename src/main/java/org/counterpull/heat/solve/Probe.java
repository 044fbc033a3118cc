package org.counterpull.heat.solve;

import java.util.Arrays;
import org.counterpull.heat.block.Interpolation;
import org.counterpull.heat.block.Vec3;

/** The temperature at one point over time. */
public final class Probe {
  private final String name;
  private final Vec3 point;
  private final BlockField field;
  private final Interpolation at;
  private double[] timesS = new double[256];
  private double[] tempsC = new double[256];
  private int count;

  Probe(String name, Vec3 point, BlockField field, double timeS) {
    this.name = name;
    this.point = point;
    this.field = field;
    this.at = field.block().interpolation(point);
    record(timeS);
  }

  BlockField field() {
    return field;
  }

  void record(double timeS) {
    if (count == timesS.length) {
      timesS = Arrays.copyOf(timesS, 2 * count);
      tempsC = Arrays.copyOf(tempsC, 2 * count);
    }
    timesS[count] = timeS;
    tempsC[count++] = nowC();
  }

  public String name() {
    return name;
  }

  public Vec3 point() {
    return point;
  }

  /** Present temperature. */
  public double nowC() {
    double[] enthalpy = field.now();
    return at.of(p -> field.material().tempC(enthalpy[p]));
  }

  /** Times at which the temperature was noted. */
  public double[] timesS() {
    return Arrays.copyOf(timesS, count);
  }

  /** Temperatures at these times. */
  public double[] tempsC() {
    return Arrays.copyOf(tempsC, count);
  }

  public double peakC() {
    return tempsC[peakIndex()];
  }

  /** Time of the peak: the top of the parabola through the highest note and its neighbours. */
  public double peakTimeS() {
    int top = peakIndex();
    if (top == 0 || top == count - 1) {
      return timesS[top];
    }
    double before = timesS[top] - timesS[top - 1];
    double after = timesS[top + 1] - timesS[top];
    double rise = (tempsC[top] - tempsC[top - 1]) / before;
    double fall = (tempsC[top + 1] - tempsC[top]) / after;
    double slope = (rise * after + fall * before) / (before + after);
    double bend = (fall - rise) / (before + after);
    return bend < 0 ? timesS[top] - slope / (2 * bend) : timesS[top];
  }

  private int peakIndex() {
    int best = 0;
    for (int n = 1; n < count; n++) {
      if (tempsC[n] > tempsC[best]) {
        best = n;
      }
    }
    return best;
  }

  /** Temperature at a past time, on the straight line between notes. */
  public double atC(double timeS) {
    int found = Arrays.binarySearch(timesS, 0, count, timeS);
    if (found >= 0) {
      return tempsC[found];
    }
    int next = -found - 1;
    if (next == 0 || next == count) {
      return tempsC[next == 0 ? 0 : count - 1];
    }
    double part = (timeS - timesS[next - 1]) / (timesS[next] - timesS[next - 1]);
    return tempsC[next - 1] + part * (tempsC[next] - tempsC[next - 1]);
  }

  /** Time spent above a temperature. */
  public double timeAboveS(double limitC) {
    double sum = 0;
    for (int n = 0; n + 1 < count; n++) {
      double here = tempsC[n] - limitC;
      double next = tempsC[n + 1] - limitC;
      double step = timesS[n + 1] - timesS[n];
      if (here > 0 && next > 0) {
        sum += step;
      } else if (here > 0 || next > 0) {
        sum += step * Math.max(here, next) / Math.abs(here - next);
      }
    }
    return sum;
  }

  /** Time from the last fall through one temperature to the next fall through a lower one, s. */
  public double fallTimeS(double fromC, double toC) {
    double start = lastFallS(fromC);
    for (int n = 0; n + 1 < count; n++) {
      if (timesS[n + 1] > start && tempsC[n] >= toC && tempsC[n + 1] < toC) {
        return crossingS(n, toC) - start;
      }
    }
    return Double.NaN;
  }

  private double lastFallS(double limitC) {
    for (int n = count - 2; n >= 0; n--) {
      if (tempsC[n] >= limitC && tempsC[n + 1] < limitC) {
        return crossingS(n, limitC);
      }
    }
    return Double.NaN;
  }

  private double crossingS(int n, double limitC) {
    double part = (tempsC[n] - limitC) / (tempsC[n] - tempsC[n + 1]);
    return timesS[n] + part * (timesS[n + 1] - timesS[n]);
  }
}
