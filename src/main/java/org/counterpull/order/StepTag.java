package org.counterpull.order;

import java.util.Locale;

/**
 * What a rule can speak of: sorts of steps, finer than {@link Operation.Kind}. In the order in
 * which steps are taken when no rule decides.
 */
public enum StepTag {
  MAKE_SAFE(Operation.Kind.STRIP),
  CUT(Operation.Kind.CUT),
  MAKE_MOUNT(Operation.Kind.CUT),
  BEVEL(Operation.Kind.BEVEL),
  DRILL(Operation.Kind.DRILL),
  VENT(Operation.Kind.DRILL),
  TRIAL(Operation.Kind.MEASURE),
  STRIP_COATING(Operation.Kind.STRIP),
  REMOVE_SENSITIVE(Operation.Kind.STRIP),
  DEGREASE(Operation.Kind.CLEAN),
  CLEAN(Operation.Kind.CLEAN),
  TEST_PIECE(Operation.Kind.TEST),
  SUPPORT(Operation.Kind.FIT),
  FIT(Operation.Kind.FIT),
  INSERT(Operation.Kind.INSERT),
  THROUGH_ROD(Operation.Kind.FIT),
  PAIR_PIN(Operation.Kind.FIT),
  DUMMY_BAR(Operation.Kind.FIT),
  FIXTURE(Operation.Kind.FIT),
  PROP(Operation.Kind.FIT),
  RETURN_CLAMP(Operation.Kind.FIT),
  HEAT_SINK(Operation.Kind.FIT),
  MASK(Operation.Kind.MASK),
  PREHEAT_FOR_TACKS(Operation.Kind.PREHEAT),
  TACK(Operation.Kind.TACK),
  BRACE(Operation.Kind.FIT),
  CHECK_DATUM(Operation.Kind.MEASURE),
  WELD(Operation.Kind.WELD),
  FIRE_WATCH(Operation.Kind.WATCH),
  COOL_TO_HAND_WARM(Operation.Kind.COOL),
  RELEASE(Operation.Kind.RELEASE),
  COOL(Operation.Kind.COOL),
  REMOVE_ROD(Operation.Kind.RELEASE),
  UNBRACE(Operation.Kind.RELEASE),
  REMOVE_DUMMY(Operation.Kind.RELEASE),
  REMOVE_SINK(Operation.Kind.RELEASE),
  UNMASK(Operation.Kind.DRESS),
  FIT_MOUNT(Operation.Kind.REFIT),
  MEASURE_COLD(Operation.Kind.MEASURE),
  STRAIGHTEN(Operation.Kind.DRESS),
  REAM(Operation.Kind.DRESS),
  CHASE(Operation.Kind.DRESS),
  REFIT(Operation.Kind.REFIT),
  PROVE(Operation.Kind.MEASURE),
  GALVANISE(Operation.Kind.PAINT),
  PAINT(Operation.Kind.PAINT),
  FIT_NIPPLE(Operation.Kind.REFIT),
  FIT_PIN(Operation.Kind.REFIT),
  GREASE(Operation.Kind.REFIT),
  TRY_SWING(Operation.Kind.MEASURE),
  UNPROP(Operation.Kind.RELEASE),
  RECONNECT(Operation.Kind.REFIT),
  LOOK_AGAIN(Operation.Kind.WATCH);

  private final Operation.Kind kind;

  StepTag(Operation.Kind kind) {
    this.kind = kind;
  }

  Operation.Kind kind() {
    return kind;
  }

  /** The words used in rules and times: {@code check datum}. */
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The sort that these words mean. */
  public static StepTag of(String words) {
    return valueOf(words.toUpperCase(Locale.ROOT).replace(' ', '_'));
  }
}
