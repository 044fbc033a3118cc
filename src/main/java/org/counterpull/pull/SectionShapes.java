package org.counterpull.pull;

import java.util.List;

/**
 * Section properties of rolled and drawn stock with sharp corners.
 *
 * <p>Area and second moments are exact for the sharp-cornered shape. Shear areas of rectangle,
 * round and thin round tube by G. R. Cowper, J. Appl. Mech. 33, 1966, for nu 0.3 (from memory); of
 * shapes made of walls the walls that run along the force, between the middles of the walls across.
 * Torsion of a rectangle by the closed approximation of Roark (from memory, within 4 %), of open
 * walls the sum of b t3 / 3, of closed ones by Bredt. Shear centres by thin-wall theory.
 */
public final class SectionShapes {
  private static final double COWPER_RECTANGLE = 10 * 1.3 / (12 + 11 * 0.3);
  private static final double COWPER_ROUND = 6 * 1.3 / (7 + 6 * 0.3);
  private static final double COWPER_THIN_TUBE = 2 * 1.3 / (4 + 3 * 0.3);

  private SectionShapes() {}

  /** A rectangle; its sizes along y and z in mm. */
  public static SectionStiffness rectangle(double alongYMm, double alongZMm) {
    double area = alongYMm * alongZMm;
    double a = Math.max(alongYMm, alongZMm) / 2;
    double b = Math.min(alongYMm, alongZMm) / 2;
    double ratio = b / a;
    double torsion = a * b * b * b * (16.0 / 3 - 3.36 * ratio * (1 - Math.pow(ratio, 4) / 12));
    return new SectionStiffness(
        area,
        alongYMm * Math.pow(alongZMm, 3) / 12,
        alongZMm * Math.pow(alongYMm, 3) / 12,
        0,
        torsion,
        COWPER_RECTANGLE * area,
        COWPER_RECTANGLE * area,
        0,
        0);
  }

  /** A round bar of that diameter, mm. */
  public static SectionStiffness round(double diameterMm) {
    double area = Math.PI * diameterMm * diameterMm / 4;
    double inertia = Math.PI * Math.pow(diameterMm, 4) / 64;
    double shear = COWPER_ROUND * area;
    return new SectionStiffness(area, inertia, inertia, 0, 2 * inertia, shear, shear, 0, 0);
  }

  /** A round tube; outside diameter and wall in mm. */
  public static SectionStiffness roundTube(double outsideMm, double wallMm) {
    double inside = outsideMm - 2 * wallMm;
    double area = Math.PI * (outsideMm * outsideMm - inside * inside) / 4;
    double inertia = Math.PI * (Math.pow(outsideMm, 4) - Math.pow(inside, 4)) / 64;
    double shear = COWPER_THIN_TUBE * area;
    return new SectionStiffness(area, inertia, inertia, 0, 2 * inertia, shear, shear, 0, 0);
  }

  /** A rectangular tube; outside sizes along y and z and wall in mm. */
  public static SectionStiffness rectangularTube(double alongYMm, double alongZMm, double wallMm) {
    double innerY = alongYMm - 2 * wallMm;
    double innerZ = alongZMm - 2 * wallMm;
    double midY = alongYMm - wallMm;
    double midZ = alongZMm - wallMm;
    return new SectionStiffness(
        alongYMm * alongZMm - innerY * innerZ,
        (alongYMm * Math.pow(alongZMm, 3) - innerY * Math.pow(innerZ, 3)) / 12,
        (alongZMm * Math.pow(alongYMm, 3) - innerZ * Math.pow(innerY, 3)) / 12,
        0,
        2 * wallMm * Math.pow(midY * midZ, 2) / (midY + midZ),
        2 * wallMm * midY,
        2 * wallMm * midZ,
        0,
        0);
  }

  /** An angle whose heel is at low y and low z; legs along y and z and wall in mm. */
  public static SectionStiffness angle(double legYMm, double legZMm, double wallMm) {
    List<Wall> walls = List.of(new Wall(0, legYMm, 0, wallMm), new Wall(0, wallMm, wallMm, legZMm));
    double half = wallMm / 2;
    return open(walls, half, half, wallMm * (legYMm - half), wallMm * (legZMm - half));
  }

  /**
   * A channel whose web stands along z at low y; depth along z, flange width along y, web and
   * flange thickness in mm.
   */
  public static SectionStiffness channel(
      double depthMm, double flangeMm, double webMm, double flangeThicknessMm) {
    List<Wall> walls =
        List.of(
            new Wall(0, webMm, 0, depthMm),
            new Wall(webMm, flangeMm, 0, flangeThicknessMm),
            new Wall(webMm, flangeMm, depthMm - flangeThicknessMm, depthMm));
    double midDepth = depthMm - flangeThicknessMm;
    double midFlange = flangeMm - webMm / 2;
    double offset =
        3
            * midFlange
            * midFlange
            * flangeThicknessMm
            / (6 * midFlange * flangeThicknessMm + midDepth * webMm);
    return open(
        walls,
        webMm / 2 - offset,
        depthMm / 2,
        2 * flangeThicknessMm * midFlange,
        webMm * midDepth);
  }

  /** An I or H section, web along z; depth, flange width, web and flange thickness in mm. */
  public static SectionStiffness i(
      double depthMm, double flangeMm, double webMm, double flangeThicknessMm) {
    double y = (flangeMm - webMm) / 2;
    List<Wall> walls =
        List.of(
            new Wall(0, flangeMm, 0, flangeThicknessMm),
            new Wall(y, y + webMm, flangeThicknessMm, depthMm - flangeThicknessMm),
            new Wall(0, flangeMm, depthMm - flangeThicknessMm, depthMm));
    return open(
        walls,
        flangeMm / 2,
        depthMm / 2,
        2 * flangeThicknessMm * flangeMm * 5 / 6,
        webMm * (depthMm - flangeThicknessMm));
  }

  private static SectionStiffness open(
      List<Wall> walls, double shearY, double shearZ, double shearAreaY, double shearAreaZ) {
    double area = walls.stream().mapToDouble(Wall::area).sum();
    double y = walls.stream().mapToDouble(wall -> wall.area() * wall.y()).sum() / area;
    double z = walls.stream().mapToDouble(wall -> wall.area() * wall.z()).sum() / area;
    double[] moments = new double[4];
    for (Wall wall : walls) {
      double dy = wall.y() - y;
      double dz = wall.z() - z;
      moments[0] += wall.dy() * Math.pow(wall.dz(), 3) / 12 + wall.area() * dz * dz;
      moments[1] += wall.dz() * Math.pow(wall.dy(), 3) / 12 + wall.area() * dy * dy;
      moments[2] += wall.area() * dy * dz;
      double thin = Math.min(wall.dy(), wall.dz());
      moments[3] += Math.max(wall.dy(), wall.dz()) * thin * thin * thin / 3;
    }
    return new SectionStiffness(
        area,
        moments[0],
        moments[1],
        moments[2],
        moments[3],
        shearAreaY,
        shearAreaZ,
        shearY - y,
        shearZ - z);
  }

  private record Wall(double y0, double y1, double z0, double z1) {
    double dy() {
      return y1 - y0;
    }

    double dz() {
      return z1 - z0;
    }

    double area() {
      return dy() * dz();
    }

    double y() {
      return (y0 + y1) / 2;
    }

    double z() {
      return (z0 + z1) / 2;
    }
  }
}
