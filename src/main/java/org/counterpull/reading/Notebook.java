package org.counterpull.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.counterpull.quantity.LengthUnit;
import org.counterpull.weldment.Assumption;

/** What is noted while a file is read: problems, defaults that were used, units of each file. */
final class Notebook {
  private final Problems problems = new Problems();
  private final List<Assumption> single = new ArrayList<>();
  private final Map<Assumption, List<String>> grouped = new LinkedHashMap<>();
  private final Map<String, LengthUnit> unitOfFile = new LinkedHashMap<>();

  Problems problems() {
    return problems;
  }

  void unit(String file, LengthUnit unit) {
    unitOfFile.put(file, unit);
  }

  /** The unit of a bare length at a place: each file has its own. */
  LengthUnit unitAt(Place place) {
    return unitOfFile.getOrDefault(place.file(), LengthUnit.MM);
  }

  void assume(String where, String what) {
    Assumption assumption = new Assumption(where, what);
    if (!single.contains(assumption)) {
      single.add(assumption);
    }
  }

  /** A default of many entries of a section: listed once, with the names of the entries. */
  void assumeFor(String section, String what, String name) {
    grouped.computeIfAbsent(new Assumption(section, what), a -> new ArrayList<>()).add(name);
  }

  List<Assumption> assumptions() {
    List<Assumption> all = new ArrayList<>(single);
    grouped.forEach(
        (a, names) ->
            all.add(new Assumption(a.where(), a.what() + ", for " + String.join(", ", names))));
    return List.copyOf(all);
  }
}
