package org.counterpull.reading;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.counterpull.space.Face;
import org.counterpull.weldment.Check;
import org.counterpull.weldment.Check.Kind;
import org.counterpull.weldment.Check.Subject;
import org.counterpull.weldment.Check.Tolerance;

/** Reads checks. */
final class CheckReading {
  private static final List<String> KINDS = Arrays.stream(Kind.values()).map(Kind::word).toList();

  private final List<String> parts;

  CheckReading(List<String> parts) {
    this.parts = parts;
  }

  Optional<Check> read(String name, Fields fields) {
    List<String> given = KINDS.stream().filter(fields::has).toList();
    if (given.size() != 1) {
      return fields.problem(
          given.isEmpty()
              ? "a check says what must be true, and this one does not"
              : "a check is of one kind, and this one is " + String.join(" and ", given),
          "one of " + String.join(", ", KINDS));
    }
    Kind kind = Kind.values()[KINDS.indexOf(given.get(0))];
    Value value = fields.get(given.get(0)).orElseThrow();
    Optional<List<Subject>> subjects = subjects(value, kind);
    Optional<Tolerance> tolerance = tolerance(name, fields, kind);
    Optional<Double> target = fields.size("target");
    if (kind != Kind.DISTANCE) {
      fields.refuse(List.of("target"), "it goes with distance", "leave it out");
    }
    return subjects.flatMap(s -> tolerance.map(t -> new Check(name, kind, s, t, target)));
  }

  private Optional<List<Subject>> subjects(Value value, Kind kind) {
    Optional<List<Subject>> subjects = value.all(this::subject);
    if (subjects.isEmpty()) {
      return Optional.empty();
    }
    List<Subject> list = subjects.get();
    int count = list.size();
    boolean fits =
        switch (kind) {
          case STRAIGHT, FLAT -> count == 1;
          case DISTANCE, SQUARE, PARALLEL -> count == 2;
          case COAXIAL -> count >= 2;
        };
    if (!fits) {
      String wanted =
          switch (kind) {
            case STRAIGHT -> "bar";
            case FLAT -> "deck/top";
            case DISTANCE -> "[left-side/bottom, right-side/top]";
            case SQUARE, PARALLEL -> "[datum, other]";
            case COAXIAL -> "[knuckle-1, knuckle-2]";
          };
      return value.problem(kind.word() + " does not go with " + count + " subjects", wanted);
    }
    if (list.stream().distinct().count() < count) {
      return value.problem("a thing is compared with itself", "two different parts or faces");
    }
    if (kind == Kind.FLAT && list.get(0).face().isEmpty()) {
      return value.problem(
          "flat needs a face of the part", list.get(0).part() + "/top, or another face");
    }
    boolean axesOnly = kind == Kind.STRAIGHT || kind == Kind.COAXIAL;
    if (axesOnly && list.stream().anyMatch(s -> s.face().isPresent())) {
      return value.problem(
          kind.word() + " looks at the axis of a part, not at a face", "the part's name alone");
    }
    return subjects;
  }

  private Optional<Subject> subject(Value value) {
    Optional<String> text = value.text();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    int slash = text.get().lastIndexOf('/');
    String name = slash < 0 ? text.get() : text.get().substring(0, slash).strip();
    Optional<String> part = value.known(name, parts, "part");
    if (slash < 0) {
      return part.map(p -> new Subject(p, Optional.empty()));
    }
    String word = text.get().substring(slash + 1).strip();
    Optional<Face> face = Words.face(word);
    if (face.isEmpty()) {
      return value.problem(
          Problems.quote(word) + " is no face", Problems.didYouMean(word, Words.FACES));
    }
    return part.map(p -> new Subject(p, face));
  }

  private Optional<Tolerance> tolerance(String name, Fields fields, Kind kind) {
    if (fields.has("within") && fields.has("class")) {
      return fields.problem(
          "class", "within and class both say how far off", "leave one of them out");
    }
    if (fields.has("within")) {
      return fields.get("within").flatMap(v -> v.size(0.01, 1000)).map(Tolerance.Millimetres::new);
    }
    if (kind == Kind.COAXIAL) {
      fields.get("class").ifPresent(v -> v.choice(Words.CLASSES));
      return fields.problem("ISO 13920 has no class for coaxial: say within what", "within: 0.5");
    }
    boolean sizes = kind == Kind.DISTANCE || kind == Kind.SQUARE;
    if (!fields.has("class")) {
      String letter = sizes ? "B" : "F";
      fields.book().assumeFor("checks", "class is " + letter + " of ISO 13920", name);
      return Optional.of(new Tolerance.Iso13920(letter.charAt(0)));
    }
    Optional<String> letter = fields.choice("class");
    String fitting = sizes ? "ABCD" : "EFGH";
    if (letter.isPresent() && !fitting.contains(letter.get())) {
      return fields.problem(
          "class",
          "class " + letter.get() + " of ISO 13920 is not for " + kind.word(),
          "one of " + String.join(", ", fitting.split("")));
    }
    return letter.map(l -> new Tolerance.Iso13920(l.charAt(0)));
  }
}
