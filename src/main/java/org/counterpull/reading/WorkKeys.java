package org.counterpull.reading;

import java.util.List;

/** The keys of features, checks and fixtures. */
final class WorkKeys {
  static final KeyTable FEATURE =
      new KeyTable(
          "feature",
          "a feature",
          List.of(
              new Key("on", Form.NAME, "the part that it is on; on or of", "needed, or of", "tab"),
              new Key(
                  "of",
                  Form.NAMES,
                  "several parts that have it alike",
                  "needed, or on",
                  "[knuckle-1, knuckle-2]"),
              new Key("kind", Form.choice(Words.FEATURES), "what it is", Key.NEEDED, "bore"),
              new Key(
                  "at",
                  Form.POINT,
                  "its middle in part axes, from the left front bottom corner of the part's box",
                  "the middle of the part",
                  "[40, 25, 5]"),
              new Key(
                  "axis",
                  Form.choice(Words.AXES),
                  "its axis in part axes",
                  "the part's length",
                  "z"),
              new Key(
                  "diameter",
                  Form.LENGTH,
                  "of a bore, hole, thread or bearing",
                  "not known",
                  "25.5"),
              new Key("length", Form.LENGTH, "along its axis", "not known", "60"),
              new Key("tolerance", Form.TEXT, "ISO 286 class", "none", "H8"),
              new Key("material", Form.TEXT, "of a seal, bush or coating", "not known", "nbr"),
              new Key(
                  "limit",
                  Form.TEMPERATURE,
                  "highest temperature allowed there; C",
                  "by kind and material",
                  "100 C"),
              new Key(
                  "turns on",
                  Form.LENGTH,
                  "diameter of the pin that must turn in it",
                  "nothing turns",
                  "pin 25"),
              new Key(
                  "removable",
                  Form.TRUTH,
                  "true when it can be taken out before welding",
                  "false",
                  "true"),
              new Key(
                  "state",
                  Form.TEXTS,
                  "what was done to a vessel or accumulator: open, drained, cleaned",
                  "closed, full, dirty",
                  "[open, drained, cleaned]"),
              new Key(
                  "like",
                  Form.NAME,
                  "copies the entry of that name; keys written beside it win",
                  "nothing copied",
                  "knuckle-1")));

  static final KeyTable CHECK =
      new KeyTable(
          "check",
          "a check",
          List.of(
              new Key(
                  "distance",
                  Form.SUBJECTS,
                  "two faces (or parts) and the distance between them",
                  "one of the six kinds is needed",
                  "[left/bottom, right/top]"),
              new Key(
                  "square",
                  Form.SUBJECTS,
                  "two parts or faces at right angles; the first is the datum",
                  "",
                  "[lug, bar]"),
              new Key("straight", Form.NAME, "a part whose axis stays straight", "", "bar"),
              new Key("flat", Form.SUBJECT, "a face that stays flat", "", "deck/top"),
              new Key(
                  "parallel",
                  Form.SUBJECTS,
                  "two parts or faces; the first is the datum",
                  "",
                  "[ear-1, ear-2]"),
              new Key(
                  "coaxial",
                  Form.SUBJECTS,
                  "two or more round parts on one line",
                  "",
                  "[knuckle-1, knuckle-2]"),
              new Key("target", Form.LENGTH, "the distance wanted", "as drawn", "600"),
              new Key(
                  "within", Form.LENGTH, "how far it may be off; within or class", "class", "0.5"),
              new Key(
                  "class",
                  Form.choice(Words.CLASSES),
                  "ISO 13920: A to D for distance and square, E to H for straight, flat and parallel",
                  "B or F",
                  "F")));

  static final KeyTable FIXTURE =
      new KeyTable(
          "fixture",
          "a fixture",
          List.of(
              new Key("kind", Form.choice(Words.FIXTURES), "what it is", Key.NEEDED, "clamp"),
              new Key(
                  "on",
                  Form.NAMES,
                  "the parts that it holds",
                  "none: needed except for a table",
                  "[bar, tab]"),
              new Key(
                  "at",
                  Form.POINTS,
                  "where it holds, in weldment axes: a point or a list of points",
                  "the middles of the parts",
                  "[[100, 0, 0], [800, 0, 0]]"),
              new Key(
                  "diameter",
                  Form.LENGTH,
                  "of a through rod",
                  "needed for a through rod",
                  "16.9")));

  private WorkKeys() {}
}
