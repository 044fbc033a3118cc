package org.counterpull.reading;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.counterpull.steel.Composition;
import org.counterpull.steel.Element;
import org.counterpull.steel.Grade;
import org.counterpull.steel.Grades;
import org.counterpull.weldment.MaterialConstants;
import org.counterpull.weldment.PartMaterial;
import org.counterpull.weldment.PartMaterial.Certainty;

/** Reads what a part is made of: a grade, {@code unknown}, or certificate values. */
final class SteelReading {
  static final String UNKNOWN = "unknown";
  private static final double MOST_PERCENT = 40;
  private static final double MOST_CARBON_PERCENT = 2.1;

  private SteelReading() {}

  static PartMaterial unknown() {
    return new PartMaterial(UNKNOWN, Certainty.UNKNOWN, Optional.empty(), Optional.empty());
  }

  static Optional<PartMaterial> read(Value value) {
    if (!(value.node() instanceof Node.Table)) {
      return value.text().flatMap(text -> grade(value, text));
    }
    return value.fields(PartKeys.STEEL).flatMap(SteelReading::certificate);
  }

  private static Optional<PartMaterial> grade(Value value, String text) {
    if (text.equalsIgnoreCase(UNKNOWN)) {
      value.book().assume(value.path(), "nothing is known of this steel: restrictions apply");
      return Optional.of(unknown());
    }
    Optional<Grade> grade = Grades.find(text);
    if (grade.isEmpty()) {
      return value.problem(Problems.quote(text) + " is no grade that is kept here", mend(text));
    }
    grade
        .get()
        .typical()
        .ifPresent(
            c ->
                value
                    .book()
                    .assume(
                        value.path(),
                        text + " without a certificate: typical composition " + words(c)));
    return Optional.of(
        new PartMaterial(text, Certainty.TYPICAL, grade.get().typical(), Optional.empty()));
  }

  private static String mend(String text) {
    String near = text.length() > 40 ? "" : String.join(" or ", Grades.near(text));
    return (near.isEmpty() ? "" : "did you mean " + near + "? Otherwise ")
        + "{grade: NAME, C: 0.18, Mn: 1.2} with the values of its certificate, or unknown";
  }

  private static Optional<PartMaterial> certificate(Fields fields) {
    Optional<String> grade = fields.has("grade") ? fields.text("grade") : Optional.of(UNKNOWN);
    Map<String, Double> given = new LinkedHashMap<>();
    boolean faulty = grade.isEmpty();
    for (Key key : PartKeys.STEEL.keys()) {
      if (key.form().equals(Form.NUMBER) && fields.has(key.name())) {
        double most = key.name().equals("C") ? MOST_CARBON_PERCENT : MOST_PERCENT;
        Optional<Double> percent = fields.get(key.name()).flatMap(v -> v.number(0, most, "%"));
        faulty |= percent.isEmpty();
        percent.ifPresent(p -> given.put(key.name(), p));
      }
    }
    if (faulty) {
      return Optional.empty();
    }
    if (given.isEmpty()) {
      return fields.get("grade").flatMap(v -> grade(v, grade.get()));
    }
    if (!given.containsKey("C")) {
      return fields.problem(
          "certificate values without carbon tell nothing about hardening", "C: 0.18");
    }
    return composed(fields, given)
        .map(
            c ->
                new PartMaterial(
                    grade.get(), Certainty.CERTIFIED, Optional.of(c), Optional.empty()));
  }

  private static Optional<Composition> composed(Fields fields, Map<String, Double> given) {
    double sum = given.values().stream().mapToDouble(Double::doubleValue).sum();
    if (sum > MOST_PERCENT) {
      return fields.problem(
          String.format(Locale.ROOT, "the elements add up to %.4g %%, more than a steel has", sum),
          "mass percent, such as C: 0.18");
    }
    Map<Element, Double> percent = new EnumMap<>(Element.class);
    given.forEach((symbol, p) -> Element.parse(symbol).ifPresent(e -> percent.put(e, p)));
    return Optional.of(new Composition(percent));
  }

  private static String words(Composition composition) {
    StringBuilder words = new StringBuilder();
    composition
        .percent()
        .forEach(
            (e, p) ->
                words
                    .append(words.length() == 0 ? "" : " ")
                    .append(e.symbol())
                    .append(' ')
                    .append(p));
    return words.append(" %").toString();
  }

  static Optional<MaterialConstants> constants(Fields fields) {
    Optional<Double> k = fields.get("conductivity").flatMap(v -> v.number(0.01, 1000, "W/mK"));
    Optional<Double> c = fields.get("specific heat").flatMap(v -> v.number(10, 10_000, "J/kgK"));
    Optional<Double> d = fields.get("density").flatMap(v -> v.number(100, 25_000, "kg/m3"));
    return k.isPresent() && c.isPresent() && d.isPresent()
        ? Optional.of(new MaterialConstants(k.get(), c.get(), d.get()))
        : Optional.empty();
  }
}
