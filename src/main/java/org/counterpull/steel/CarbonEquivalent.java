package org.counterpull.steel;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;

/**
 * Carbon equivalents: one figure for how readily a steel hardens beside a weld.
 *
 * <p>All in mass percent. Outside the composition for which an equivalent was fitted it is still
 * answered, with a warning. None means anything for cast iron, stainless steel or aluminium.
 */
public final class CarbonEquivalent {
  public static final Formula CE_IIW =
      new Formula("ce-iiw", "carbon equivalent CE", "%", "IIW doc. IX-535-67; EN 1011-2");
  public static final Formula CET =
      new Formula("cet", "carbon equivalent CET", "%", "Uwer and Hohne 1991; EN 1011-2, C.3");
  public static final Formula PCM =
      new Formula("pcm", "crack sensitivity Pcm", "%", "Ito and Bessyo 1968");
  public static final Formula CEN =
      new Formula("cen", "carbon equivalent CEN", "%", "Yurioka et al. 1983");
  public static final Formula CE_AWS =
      new Formula("ce-aws", "carbon equivalent of AWS D1.1", "%", "AWS D1.1, hardness control");

  private CarbonEquivalent() {}

  /** CE = C + Mn/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15. Valid for C 0.05 to 0.25 %. */
  public static Computed ceIIW(Composition s) {
    return CE_IIW.result(
        s.c() + s.mn() / 6 + (s.cr() + s.mo() + s.v()) / 5 + (s.ni() + s.cu()) / 15,
        new Limits().within("C", s.c(), 0.05, 0.25, "%").outside());
  }

  /**
   * CET = C + (Mn + Mo)/10 + (Cr + Cu)/20 + Ni/40. Valid for C 0.05 to 0.32, Si to 0.8, Mn 0.5 to
   * 1.9, Cr to 1.5, Cu to 0.7, Mo to 0.75, Nb to 0.06, Ni to 2.5, V to 0.18, B to 0.005 %.
   */
  public static Computed cet(Composition s) {
    Limits limits =
        new Limits()
            .within("C", s.c(), 0.05, 0.32, "%")
            .within("Si", s.si(), 0, 0.8, "%")
            .within("Mn", s.mn(), 0.5, 1.9, "%")
            .within("Cr", s.cr(), 0, 1.5, "%")
            .within("Cu", s.cu(), 0, 0.7, "%")
            .within("Mo", s.mo(), 0, 0.75, "%")
            .within("Nb", s.nb(), 0, 0.06, "%")
            .within("Ni", s.ni(), 0, 2.5, "%")
            .within("V", s.v(), 0, 0.18, "%")
            .within("B", s.b(), 0, 0.005, "%");
    return CET.result(
        s.c() + (s.mn() + s.mo()) / 10 + (s.cr() + s.cu()) / 20 + s.ni() / 40, limits.outside());
  }

  /**
   * Pcm = C + Si/30 + (Mn + Cu + Cr)/20 + Ni/60 + Mo/15 + V/10 + 5 B. Valid for low carbon, up to
   * about 0.17 %.
   */
  public static Computed pcm(Composition s) {
    return PCM.result(pcmPercent(s), new Limits().within("C", s.c(), 0, 0.17, "%").outside());
  }

  static double pcmPercent(Composition s) {
    return s.c()
        + s.si() / 30
        + (s.mn() + s.cu() + s.cr()) / 20
        + s.ni() / 60
        + s.mo() / 15
        + s.v() / 10
        + 5 * s.b();
  }

  /**
   * CEN = C + A [Si/24 + Mn/6 + Cu/15 + Ni/20 + (Cr + Mo + Nb + V)/5 + 5 B] with A = 0.75 + 0.25
   * tanh(20 (C - 0.12)). Valid for C 0.02 to 0.3 %.
   */
  public static Computed cen(Composition s) {
    double a = 0.75 + 0.25 * Math.tanh(20 * (s.c() - 0.12));
    return CEN.result(
        s.c() + a * cenBracket(s), new Limits().within("C", s.c(), 0.02, 0.3, "%").outside());
  }

  static double cenBracket(Composition s) {
    return s.si() / 24
        + s.mn() / 6
        + s.cu() / 15
        + s.ni() / 20
        + (s.cr() + s.mo() + s.nb() + s.v()) / 5
        + 5 * s.b();
  }

  /** CE = C + (Mn + Si)/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15. */
  public static Computed ceAws(Composition s) {
    return CE_AWS.result(
        s.c() + (s.mn() + s.si()) / 6 + (s.cr() + s.mo() + s.v()) / 5 + (s.ni() + s.cu()) / 15);
  }
}
