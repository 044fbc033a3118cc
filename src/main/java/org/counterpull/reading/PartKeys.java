package org.counterpull.reading;

import java.util.List;

/** The keys of parts. */
final class PartKeys {
  static final KeyTable PART =
      new KeyTable(
          "part",
          "a part",
          List.of(
              new Key(
                  "stock",
                  Form.STOCK,
                  "the section and its dimensions",
                  Key.NEEDED,
                  "flat 60 x 10"),
              new Key(
                  "length",
                  Form.LENGTH,
                  "along the part (x), at its longest",
                  "needed, but for an outline or two points",
                  "900"),
              new Key(
                  "width",
                  Form.LENGTH,
                  "across a plate (y)",
                  "needed for a plate without outline",
                  "120"),
              new Key(
                  "outline",
                  Form.OUTLINE,
                  "corners [x, y] of a plate in order, from the left front corner of the box around it",
                  "a rectangle",
                  "[[0, 0], [80, 0], [0, 60]]"),
              new Key(
                  "steel",
                  Form.STEEL,
                  "grade, unknown, or a group with certificate values",
                  "the file's steel",
                  "S355J2"),
              new Key(
                  "material constants",
                  Form.group("material constants"),
                  "properties that do not change with temperature, for a published experiment",
                  "tables of the steel",
                  "{conductivity: 40, specific heat: 650, density: 7850}"),
              new Key(
                  "mass",
                  Form.MASS,
                  "of a part that is not what its stock says; kg",
                  "from stock and length",
                  "12 kg"),
              new Key(
                  "ends",
                  Form.group("ends"),
                  "how the ends are cut",
                  "square",
                  "{left: mitred 45 long front}"),
              new Key(
                  "shaped",
                  Form.TRUTH,
                  "true for an end coped or ground to fit the surface it meets",
                  "false",
                  "true"),
              new Key(
                  "loose",
                  Form.TRUTH,
                  "true for a part that is meant to be in no joint",
                  "false",
                  "true"),
              new Key(
                  "start",
                  Form.POINT,
                  "left front bottom corner of the box around the part, in weldment axes",
                  "the first unplaced part starts at [0, 0, 0]",
                  "[0, 0, 0]"),
              new Key(
                  "axis start",
                  Form.POINT,
                  "middle of the section at the left end, in weldment axes",
                  "see start",
                  "[0, 0, 30]"),
              new Key(
                  "along", Form.DIRECTION, "where the part points, from left to right", "x", "-y"),
              new Key("up", Form.DIRECTION, "where its top looks", "z; -x for a part along z", "x"),
              new Key(
                  "axis from",
                  Form.POINT,
                  "middle of the section at the left end",
                  "see start",
                  "[0, 0, 0]"),
              new Key(
                  "axis to",
                  Form.POINT,
                  "middle of the section at the right end; goes with axis from",
                  "see start",
                  "[300, 0, 400]"),
              new Key("onto", Form.NAME, "the part that it is set onto", "see start", "bar"),
              new Key(
                  "face",
                  Form.choice(Words.FACES),
                  "the face of that part; goes with onto",
                  "needed with onto",
                  "top"),
              new Key(
                  "set",
                  Form.choice(Words.SETS),
                  "how it is set on the face",
                  "lying along",
                  "standing across"),
              new Key("at", Form.PLACE_AT, "place along the other part", "middle", "120 from left"),
              new Key("across", Form.PLACE_AT, "place across the face", "middle", "flush front"),
              new Key(
                  "turned",
                  Form.ANGLE,
                  "turned about the face's outward normal, right-handed; degrees",
                  "0",
                  "30 deg"),
              new Key("gap", Form.LENGTH, "raised off the face", "0", "2"),
              new Key(
                  "like",
                  Form.NAME,
                  "copies the entry of that name; keys written beside it win",
                  "nothing copied",
                  "knuckle-1")));

  static final KeyTable ENDS =
      new KeyTable(
          "ends",
          "cuts of the ends",
          List.of(
              new Key(
                  "left",
                  Form.END,
                  "square, or mitred: degrees off square and the face on which the part is longest",
                  "square",
                  "mitred 45 long front"),
              new Key("right", Form.END, "likewise", "square", "square")));

  static final KeyTable STEEL =
      new KeyTable(
          "steel",
          "a steel with certificate values",
          List.of(
              new Key("grade", Form.TEXT, "designation", "unknown", "S355J2"),
              new Key("C", Form.NUMBER, "carbon by the certificate, mass %", "0", "0.18"),
              new Key("Si", Form.NUMBER, "silicon by the certificate, mass %", "0", "0.01"),
              new Key("Mn", Form.NUMBER, "manganese by the certificate, mass %", "0", "0.01"),
              new Key("Cr", Form.NUMBER, "chromium by the certificate, mass %", "0", "0.01"),
              new Key("Mo", Form.NUMBER, "molybdenum by the certificate, mass %", "0", "0.01"),
              new Key("V", Form.NUMBER, "vanadium by the certificate, mass %", "0", "0.01"),
              new Key("Ni", Form.NUMBER, "nickel by the certificate, mass %", "0", "0.01"),
              new Key("Cu", Form.NUMBER, "copper by the certificate, mass %", "0", "0.01"),
              new Key("Nb", Form.NUMBER, "niobium by the certificate, mass %", "0", "0.01"),
              new Key("B", Form.NUMBER, "boron by the certificate, mass %", "0", "0.01"),
              new Key("N", Form.NUMBER, "nitrogen by the certificate, mass %", "0", "0.01"),
              new Key(
                  "P",
                  Form.NUMBER,
                  "phosphorus by the certificate, mass %: read, no formula asks for it",
                  "0",
                  "0.01"),
              new Key(
                  "S",
                  Form.NUMBER,
                  "sulphur by the certificate, mass %: read, no formula asks for it",
                  "0",
                  "0.01"),
              new Key(
                  "Al",
                  Form.NUMBER,
                  "aluminium by the certificate, mass %: read, no formula asks for it",
                  "0",
                  "0.01"),
              new Key(
                  "Ti",
                  Form.NUMBER,
                  "titanium by the certificate, mass %: read, no formula asks for it",
                  "0",
                  "0.01")));

  static final KeyTable MATERIAL_CONSTANTS =
      new KeyTable(
          "material constants",
          "constant properties",
          List.of(
              new Key("conductivity", Form.NUMBER, "thermal conductivity, W/mK", Key.NEEDED, "40"),
              new Key("specific heat", Form.NUMBER, "specific heat, J/kgK", Key.NEEDED, "650"),
              new Key("density", Form.NUMBER, "density, kg/m3", Key.NEEDED, "7850")));

  private PartKeys() {}
}
