package org.counterpull.reading;

import java.util.List;

/**
 * What may stand behind a key.
 *
 * @param word name of the form, also in the schema's definitions
 * @param choices the words allowed; empty where the form isn't a choice
 */
record Form(String word, List<String> choices) {
  static final Form TEXT = new Form("text");
  static final Form NAME = new Form("name");
  static final Form NAMES = new Form("names");
  static final Form LENGTH = new Form("length");
  static final Form POINT = new Form("point");
  static final Form POINTS = new Form("points");
  static final Form OUTLINE = new Form("outline");
  static final Form DIRECTION = new Form("direction");
  static final Form TEMPERATURE = new Form("temperature");
  static final Form SPEED = new Form("speed");
  static final Form FORCE = new Form("force");
  static final Form TIME = new Form("time");
  static final Form ANGLE = new Form("angle");
  static final Form PRESSURE = new Form("pressure");
  static final Form MASS = new Form("mass");
  static final Form HEAT = new Form("heat per length");
  static final Form NUMBER = new Form("number");
  static final Form TRUTH = new Form("truth");
  static final Form STOCK = new Form("stock");
  static final Form STEEL = new Form("steel");
  static final Form END = new Form("end");
  static final Form PLACE_AT = new Form("place");
  static final Form SIDES = new Form("sides");
  static final Form SUBJECT = new Form("subject");
  static final Form SUBJECTS = new Form("subjects");
  static final Form ORDER = new Form("order");
  static final Form INCLUDE = new Form("include");
  static final Form TEXTS = new Form("texts");

  Form {
    choices = List.copyOf(choices);
  }

  private Form(String word) {
    this(word, List.of());
  }

  /** One of some words. */
  static Form choice(List<String> words) {
    return new Form("choice", words);
  }

  /** A group of keys that has a table of its own. */
  static Form group(String table) {
    return new Form("group:" + table);
  }

  /** Names of one's own, each with a group of keys. */
  static Form named(String table) {
    return new Form("named:" + table);
  }

  /** A list of groups of keys. */
  static Form list(String table) {
    return new Form("list:" + table);
  }
}
