package org.counterpull.reading;

/** Thrown inside this package where a text can't be read any further. */
final class FaultyText extends Exception {
  private static final long serialVersionUID = 1L;
  private final transient Place place;
  private final String what;
  private final String tryThis;

  FaultyText(Place place, String what, String tryThis) {
    super(what);
    this.place = place;
    this.what = what;
    this.tryThis = tryThis;
  }

  void report(Problems problems) {
    problems.add(place, "", what, tryThis);
  }
}
