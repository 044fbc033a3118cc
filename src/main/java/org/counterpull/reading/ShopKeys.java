package org.counterpull.reading;

import java.util.List;

/** The keys of the shop: machines, surroundings, prices. */
final class ShopKeys {
  static final KeyTable MACHINE =
      new KeyTable(
          "machine",
          "a machine",
          List.of(
              new Key(
                  "process",
                  Form.TEXTS,
                  "mma, mag, mig, fcaw, fcaw-s or tig, or a list of them",
                  Key.NEEDED,
                  "mag"),
              new Key(
                  "current",
                  Form.TEXT,
                  "from the smallest to the largest; A",
                  Key.NEEDED,
                  "30..200 A"),
              new Key(
                  "duty",
                  Form.TEXTS,
                  "duty cycle at a current, or a list of such points",
                  Key.NEEDED,
                  "20% at 200 A"),
              new Key(
                  "supply",
                  Form.TEXT,
                  "voltage and breaker of the socket, and three-phase where it is",
                  Key.NEEDED,
                  "230 V 16 A"),
              new Key(
                  "corrected",
                  Form.TRUTH,
                  "true for an inverter with power factor correction",
                  "true",
                  "false"),
              new Key(
                  "efficiency",
                  Form.NUMBER,
                  "arc power over power drawn, above 0 to 1",
                  "0.85, or 0.80 when not corrected",
                  "0.85"),
              new Key(
                  "power factor",
                  Form.NUMBER,
                  "above 0 to 1",
                  "0.99, or 0.70 when not corrected",
                  "0.99"),
              new Key(
                  "wire",
                  Form.TEXTS,
                  "diameter and designation of the wire, or a list",
                  "0.8 and 1.0 mm; cored 1.2 mm, self-shielded 0.9 mm",
                  "0.8 mm G3Si1"),
              new Key(
                  "electrodes",
                  Form.TEXTS,
                  "diameter and designation of covered electrodes, or a list",
                  "2.5, 3.2 and 4.0 mm",
                  "[2.5 mm E7018, 3.2 mm E7018]"),
              new Key(
                  "rods",
                  Form.TEXTS,
                  "diameter and designation of tig rods, or a list",
                  "1.6 and 2.4 mm",
                  "2.4 mm W3Si1"),
              new Key(
                  "gas",
                  Form.TEXT,
                  "shielding gas: Ar, CO2, a mixture by volume, or none",
                  "Ar + 18 CO2 for mag and fcaw, Ar for mig and tig",
                  "Ar + 18 CO2"),
              new Key(
                  "lead",
                  Form.TEXT,
                  "extension lead between socket and machine: length one way and copper section",
                  "none",
                  "25 m 2.5 mm2"),
              new Key(
                  "shows",
                  Form.TEXTS,
                  "what can be read or set on it: current, voltage, wire feed, or a list",
                  "all of them",
                  "[wire feed, voltage]"),
              new Key(
                  "current dial",
                  Form.TEXTS,
                  "marks of a dial without a display and what they stand for; letters are steps",
                  "no such dial",
                  "[1 = 40 A, 5 = 95 A, 10 = 160 A]"),
              new Key(
                  "voltage dial",
                  Form.TEXTS,
                  "the same for the voltage",
                  "no such dial",
                  "[A = 15.5 V, B = 17 V, C = 18.5 V, D = 20.5 V]"),
              new Key(
                  "wire feed dial",
                  Form.TEXTS,
                  "the same for the wire feed",
                  "no such dial",
                  "[1 = 2 m/min, 10 = 12 m/min]"),
              new Key(
                  "place",
                  Form.TEXT,
                  "where it stands; here is the bench",
                  "here",
                  "neighbour's workshop"),
              new Key(
                  "like",
                  Form.NAME,
                  "copies the entry of that name; keys written beside it win",
                  "nothing copied",
                  "knuckle-1")));

  static final KeyTable SURROUNDINGS =
      new KeyTable(
          "surroundings",
          "surroundings",
          List.of(
              new Key(
                  "ambient",
                  Form.TEMPERATURE,
                  "temperature of air and cold parts; C",
                  "20 C",
                  "15 C"),
              new Key(
                  "film",
                  Form.NUMBER,
                  "film coefficient of all faces, W/m2K; radiation is then left out",
                  "by temperature",
                  "15"),
              new Key("outdoors", Form.TRUTH, "true when wind reaches the arc", "false", "true"),
              new Key(
                  "turning over",
                  Form.TRUTH,
                  "true when the weldment can be turned over",
                  "true",
                  "false"),
              new Key(
                  "edge tools",
                  Form.TEXTS,
                  "what weld edges are cut with: grinder, saw, torch, mill, or a list; U and J forms"
                      + " take a mill",
                  "grinder",
                  "[grinder, torch]")));

  static final KeyTable PRICES =
      new KeyTable(
          "prices",
          "prices",
          List.of(
              new Key("currency", Form.TEXT, "printed behind an amount", Key.NEEDED, "EUR"),
              new Key("labour", Form.NUMBER, "labour and overhead for an hour", "0", "45"),
              new Key("wire", Form.NUMBER, "a kilogram of wire", "0", "4"),
              new Key("electrodes", Form.NUMBER, "a kilogram of covered electrodes", "0", "7"),
              new Key("gas", Form.NUMBER, "a cubic metre of shielding gas", "0", "9"),
              new Key("energy", Form.NUMBER, "a kilowatt hour", "0", "0.3"),
              new Key("stock", Form.NUMBER, "a kilogram of bar, tube or plate", "0", "1.6")));

  static final KeyTable STOCK_ROOM =
      new KeyTable(
          "stock-room",
          "how stock is bought",
          List.of(
              new Key("bar", Form.LENGTH, "length of a bar as sold", "6 m", "6000"),
              new Key("kerf", Form.LENGTH, "what each saw cut takes", "3 mm", "2")));

  static final KeyTable CALIBRATION =
      new KeyTable(
          "calibration",
          "a calibration",
          List.of(
              new Key(
                  "process",
                  Form.TEXT,
                  "the process that was measured: mma, mag, mig, fcaw, fcaw-s or tig",
                  "every process",
                  "mag"),
              factor("angle", "angle", "1.15"),
              within("angle", "1.21"),
              factor("across", "transverse shrinkage", "0.92"),
              within("across", "1.25"),
              factor("along", "shrinkage force along a run", "1.05"),
              within("along", "1.12"),
              new Key(
                  "from",
                  Form.TEXT,
                  "what was measured, in words",
                  "not said",
                  "tee of 8 mm with a fillet of 5 mm")));

  private ShopKeys() {}

  private static Key factor(String effect, String meaning, String example) {
    return new Key(
        effect,
        Form.NUMBER,
        "factor on the published " + meaning + ", 0.05 to 20",
        "as published",
        example);
  }

  private static Key within(String effect, String example) {
    return new Key(
        effect + " within",
        Form.NUMBER,
        "90 % lies between the factor divided by this and multiplied with it, 1 to 10",
        "needed beside " + effect,
        example);
  }
}
