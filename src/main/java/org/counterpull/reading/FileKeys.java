package org.counterpull.reading;

import java.util.List;

/** The keys at the top of a file, and all tables together. */
final class FileKeys {
  static final KeyTable TOP =
      new KeyTable(
          "file",
          "a weldment file",
          List.of(
              new Key(
                  "weldment",
                  Form.TEXT,
                  "what the weldment is called",
                  "the name of the file",
                  "pit cover"),
              new Key("units", Form.choice(Words.UNITS), "the unit of a bare length", "mm", "in"),
              new Key(
                  "steel",
                  Form.STEEL,
                  "the grade of every part that names none",
                  "unknown",
                  "S275JR"),
              new Key(
                  "include",
                  Form.INCLUDE,
                  "a file, or a list of files, with what a shop keeps: machines, fixtures, rules, prices, stock room, surroundings, calibration; a path from this file's folder",
                  "nothing",
                  "shop.yaml"),
              new Key(
                  "parts",
                  Form.named("part"),
                  "pieces of stock, by name",
                  Key.NEEDED,
                  "bar: {stock: flat 60 x 10, length: 900}"),
              new Key(
                  "joints",
                  Form.named("joint"),
                  "welds between two parts, by name",
                  "none",
                  "tab: {between: [tab, bar]}"),
              new Key(
                  "features",
                  Form.named("feature"),
                  "what heat, spatter, current or movement can spoil, by name",
                  "none",
                  "bores: {of: [knuckle-1, knuckle-2], kind: bore}"),
              new Key(
                  "checks",
                  Form.named("check"),
                  "what must come out true, by name",
                  "none",
                  "bar: {straight: bar, class: F}"),
              new Key(
                  "machines",
                  Form.named("machine"),
                  "power sources, by name",
                  "none",
                  "shop mag: {process: mag, current: 30..200 A}"),
              new Key(
                  "fixtures",
                  Form.named("fixture"),
                  "what holds parts from the first tack until the last weld is cold, by name",
                  "none",
                  "hinge rod: {kind: through rod, on: [knuckle-1], diameter: 16.9}"),
              new Key(
                  "surroundings",
                  Form.group("surroundings"),
                  "where the work is done",
                  "20 C, indoors, can be turned over",
                  "{ambient: 15 C}"),
              new Key(
                  "prices",
                  Form.group("prices"),
                  "what things cost",
                  "no cost is worked out",
                  "{currency: EUR, labour: 45}"),
              new Key(
                  "stock room",
                  Form.group("stock-room"),
                  "how stock is bought and sawn",
                  "bars of 6 m, saw cuts of 3 mm",
                  "{bar: 6000, kerf: 2}"),
              new Key(
                  "calibration",
                  Form.named("calibration"),
                  "what the shop measured about its own welds, by name",
                  "the published bands",
                  "mag: {process: mag, angle: 1.15, angle within: 1.21}"),
              new Key(
                  "before",
                  Form.list("before"),
                  "rules of your own about what is done before what",
                  "none",
                  "[{first: seal, then: lug, because: it would melt}]"),
              new Key(
                  "rules",
                  Form.named("rule"),
                  "rules of order of your own about sorts of steps, by name",
                  "none",
                  "chips: {first: ream, then: unmask, because: chips spoil it}"),
              new Key(
                  "swings",
                  Form.named("swing"),
                  "what turns about a hinge axis, by name",
                  "nothing turns",
                  "cover: {moves: back-rail, about: knuckle-1, to: 95 deg}"),
              new Key(
                  "order",
                  Form.ORDER,
                  "a sequence of runs that is kept as written",
                  "the planner's own",
                  "[tab/front, tab/back]"),
              new Key(
                  "probes",
                  Form.named("probe"),
                  "points whose temperature is wanted, by name",
                  "none",
                  "seat: {on: bar, at: [100, 30, 5]}"),
              new Key(
                  "runs",
                  Form.named("run"),
                  "what is fixed on a run, by the run's name joint/side",
                  "a procedure for each",
                  "tab/front: {heat: {net: 600, travel: 5 mm/s}}")));

  static final List<KeyTable> ALL =
      List.of(
          TOP,
          PartKeys.PART,
          PartKeys.ENDS,
          PartKeys.STEEL,
          PartKeys.MATERIAL_CONSTANTS,
          JointKeys.JOINT,
          JointKeys.STITCH,
          JointKeys.HOLES,
          WorkKeys.FEATURE,
          WorkKeys.CHECK,
          ShopKeys.MACHINE,
          WorkKeys.FIXTURE,
          ShopKeys.SURROUNDINGS,
          ShopKeys.PRICES,
          ShopKeys.STOCK_ROOM,
          ShopKeys.CALIBRATION,
          JointKeys.BEFORE,
          JointKeys.ORDER,
          JointKeys.PROBE,
          JointKeys.RUN,
          JointKeys.HEAT,
          JointKeys.SHRINKAGE,
          MotionKeys.SWING,
          MotionKeys.CYLINDER,
          MotionKeys.RULE);

  private FileKeys() {}
}
