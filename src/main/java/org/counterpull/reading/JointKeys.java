package org.counterpull.reading;

import java.util.List;

/** The keys of joints, and of what is said about runs and their order. */
final class JointKeys {
  static final KeyTable JOINT =
      new KeyTable(
          "joint",
          "a joint",
          List.of(
              new Key(
                  "between",
                  Form.NAMES,
                  "the part that is fitted, and the part it is fitted onto",
                  Key.NEEDED,
                  "[tab, bar]"),
              new Key(
                  "weld",
                  Form.choice(Words.WELDS),
                  "kind of weld",
                  "chosen by shape and thickness",
                  "fillet"),
              new Key(
                  "leg", Form.LENGTH, "leg length of a fillet", "the least for the thickness", "5"),
              new Key(
                  "throat",
                  Form.LENGTH,
                  "effective throat; leg or throat, not both",
                  "the least for the thickness",
                  "3.5"),
              new Key(
                  "sides",
                  Form.SIDES,
                  "sides to weld, in the axes of the second part",
                  "all that can be reached",
                  "[top, bottom]"),
              new Key("gap", Form.LENGTH, "opening that the weld bridges", "0", "2"),
              new Key(
                  "clearance",
                  Form.LENGTH,
                  "opening that stays open because something turns there",
                  "0",
                  "1"),
              new Key(
                  "penetration",
                  Form.choice(Words.PENETRATIONS),
                  "full when the whole thickness must be joined",
                  "partial",
                  "full"),
              new Key(
                  "stitch",
                  Form.group("stitch"),
                  "an intermittent weld",
                  "continuous",
                  "{length: 50, clear: 100}"),
              new Key(
                  "holes",
                  Form.group("holes"),
                  "what a plug or slot weld fills",
                  "needed for plug and slot",
                  "{diameter: 16, count: 3}"),
              new Key("load", Form.FORCE, "force on the joint; N", "none", "8 kN"),
              new Key(
                  "machine",
                  Form.NAME,
                  "machine to weld it with",
                  "the planner's choice",
                  "shop mag"),
              new Key(
                  "like",
                  Form.NAME,
                  "copies the entry of that name; keys written beside it win",
                  "nothing copied",
                  "knuckle-1")));

  static final KeyTable STITCH =
      new KeyTable(
          "stitch",
          "an intermittent weld",
          List.of(
              new Key("length", Form.LENGTH, "of each stitch", Key.NEEDED, "50"),
              new Key("clear", Form.LENGTH, "between two stitches", Key.NEEDED, "100")));

  static final KeyTable HOLES =
      new KeyTable(
          "holes",
          "the holes of a plug or slot weld, in the first part",
          List.of(
              new Key(
                  "diameter", Form.LENGTH, "of a hole, or the width of a slot", Key.NEEDED, "16"),
              new Key("length", Form.LENGTH, "of a slot, ends included", "round holes", "40"),
              new Key("count", Form.NUMBER, "how many, in a row", "1", "3")));

  static final KeyTable BEFORE =
      new KeyTable(
          "before",
          "a rule about the order",
          List.of(
              new Key(
                  "first", Form.NAME, "a run, joint, part, feature or fixture", Key.NEEDED, "seal"),
              new Key("then", Form.NAME, "what comes after it", Key.NEEDED, "lug"),
              new Key(
                  "because",
                  Form.TEXT,
                  "the reason, printed on the plan",
                  "none given",
                  "the seal would melt")));

  static final KeyTable ORDER =
      new KeyTable(
          "order",
          "a run of the sequence",
          List.of(
              new Key(
                  "run",
                  Form.NAME,
                  "joint/side, with #n where a side has several lines",
                  Key.NEEDED,
                  "tab/front"),
              new Key(
                  "from",
                  Form.choice(Words.FACES),
                  "the end it starts at, in the axes of the joint's second part",
                  "the planner's choice",
                  "left"),
              new Key(
                  "start",
                  Form.TIME,
                  "when the arc starts, from the beginning; s",
                  "after the run above",
                  "120 s"),
              new Key("pause", Form.TIME, "wait after the run above; s", "none", "30 s")));

  static final KeyTable PROBE =
      new KeyTable(
          "probe",
          "a probe",
          List.of(
              new Key("on", Form.NAME, "the part that it is on", Key.NEEDED, "bar"),
              new Key(
                  "at",
                  Form.POINT,
                  "in part axes, from the left front bottom corner of the part's box",
                  Key.NEEDED,
                  "[100, 30, 5]")));

  static final KeyTable RUN =
      new KeyTable(
          "run",
          "what is fixed on a run",
          List.of(
              new Key(
                  "on",
                  Form.NAME,
                  "the part that a bead of your own lies on, which joins nothing",
                  "the run is one of a joint",
                  "plate"),
              new Key(
                  "from",
                  Form.POINT,
                  "where such a bead begins, in part axes, from the left front bottom corner of the part's box",
                  "needed with on",
                  "[50, 75, 12]"),
              new Key("to", Form.POINT, "where it ends", "needed with on", "[250, 75, 12]"),
              new Key(
                  "heat",
                  Form.group("heat"),
                  "heat and speed instead of a procedure",
                  "by procedure",
                  "{net: 600, travel: 5 mm/s}"),
              new Key(
                  "shrinkage",
                  Form.group("shrinkage"),
                  "shrinkage instead of a formula",
                  "by formula",
                  "{across: 0.2, angle: 1 deg, along: 100 kN}")));

  static final KeyTable HEAT =
      new KeyTable(
          "heat",
          "heat of a run",
          List.of(
              new Key(
                  "net",
                  Form.HEAT,
                  "heat that stays in the metal, J/mm; net, arc, power, or volts and amps",
                  "needed, or another",
                  "600"),
              new Key(
                  "arc",
                  Form.HEAT,
                  "volts times amperes over speed, J/mm",
                  "needed, or another",
                  "750"),
              new Key(
                  "power",
                  Form.TEXT,
                  "power that stays in the metal; W",
                  "needed, or another",
                  "3000"),
              new Key("volts", Form.TEXT, "of the arc; V", "needed, or another", "24"),
              new Key("amps", Form.TEXT, "of the arc; A", "needed with volts", "160"),
              new Key(
                  "efficiency",
                  Form.NUMBER,
                  "share of the arc's energy that stays in the metal; with arc, or volts and amps",
                  "of the process",
                  "0.8"),
              new Key("travel", Form.SPEED, "travel speed; mm/s", Key.NEEDED, "5 mm/s"),
              new Key(
                  "source",
                  Form.TEXT,
                  "even power in a box that moves with the arc: along, across, deep",
                  "the size of the bead",
                  "box 8 x 8 x 4")));

  static final KeyTable SHRINKAGE =
      new KeyTable(
          "shrinkage",
          "shrinkage of a run, free of restraint",
          List.of(
              new Key("across", Form.LENGTH, "shortening across the joint", "0", "0.2"),
              new Key("angle", Form.ANGLE, "closing angle; degrees", "0", "1 deg"),
              new Key("along", Form.FORCE, "tendon force along the run; N", "0", "100 kN")));

  private JointKeys() {}
}
