package org.counterpull.reading;

import java.util.List;

/** The keys of swings, their cylinders, and of a shop's own rules. */
final class MotionKeys {
  static final KeyTable SWING =
      new KeyTable(
          "swing",
          "a swing",
          List.of(
              new Key(
                  "moves",
                  Form.NAMES,
                  "parts that turn; what joints tie to them turns with them",
                  Key.NEEDED,
                  "back-rail"),
              new Key(
                  "about",
                  Form.NAME,
                  "the part whose axis is the hinge axis; angles are right-handed about its x",
                  Key.NEEDED,
                  "knuckle-1"),
              new Key("from", Form.ANGLE, "one end of the range; 0 is as drawn", "0", "0 deg"),
              new Key("to", Form.ANGLE, "the other end of the range", Key.NEEDED, "95 deg"),
              new Key(
                  "cylinder",
                  Form.group("cylinder"),
                  "the hydraulic cylinder that moves it",
                  "moved by hand",
                  "{fixed at: [0, 0, 0], moving at: [300, 0, 200], bore: 50, rod: 28, closed: 300, stroke: 200, pressure: 160 bar}")));

  static final KeyTable CYLINDER =
      new KeyTable(
          "cylinder",
          "a cylinder",
          List.of(
              new Key(
                  "fixed at",
                  Form.POINT,
                  "its pin on what stands still, in weldment axes",
                  Key.NEEDED,
                  "[640, 300, -500]"),
              new Key(
                  "moving at",
                  Form.POINT,
                  "its pin on what turns, in weldment axes as drawn",
                  Key.NEEDED,
                  "[640, 360, -25]"),
              new Key("bore", Form.LENGTH, "diameter of its piston", Key.NEEDED, "50"),
              new Key("rod", Form.LENGTH, "diameter of its rod", Key.NEEDED, "28"),
              new Key("closed", Form.LENGTH, "pin to pin with the rod in", Key.NEEDED, "400"),
              new Key("stroke", Form.LENGTH, "travel of the rod", Key.NEEDED, "300"),
              new Key("pressure", Form.PRESSURE, "highest pressure; bar", Key.NEEDED, "160 bar"),
              new Key("reserve", Form.LENGTH, "stroke to be left at either end", "5", "10")));

  static final KeyTable RULE =
      new KeyTable(
          "rule",
          "a rule",
          List.of(
              new Key(
                  "first",
                  Form.choice(Words.STEPS),
                  "the sort of step that comes first",
                  Key.NEEDED,
                  "ream"),
              new Key(
                  "then",
                  Form.choice(Words.STEPS),
                  "the sort of step that comes after it",
                  Key.NEEDED,
                  "unmask"),
              new Key(
                  "match",
                  Form.choice(Words.MATCHES),
                  "which steps of the two sorts",
                  "all",
                  "same part"),
              new Key("because", Form.TEXT, "the reason, a sentence", Key.NEEDED, "chips spoil it"),
              new Key("hard", Form.TRUTH, "false for a preference that gives way", "true", "false"),
              new Key("source", Form.TEXT, "where it stands", "the shop's own", "our handbook")));

  private MotionKeys() {}
}
