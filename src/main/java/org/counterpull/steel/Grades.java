package org.counterpull.steel;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.counterpull.naming.NearestNames;

/** The grades kept in {@code steel/grades.csv}, and their lookup by any of their names. */
public final class Grades {
  private static final String RESOURCE = "/steel/grades.csv";
  private static final int COLUMNS = 10;
  private static final List<Grade> ALL = load();
  private static final Map<String, Grade> BY_NAME = byName();

  private Grades() {}

  /** All grades in the order of the table. */
  public static List<Grade> all() {
    return ALL;
  }

  /** The grade of a designation or alias; case, spaces and hyphens don't matter. */
  public static Optional<Grade> find(String name) {
    return Optional.ofNullable(BY_NAME.get(key(name)));
  }

  /** Designations and aliases near to a name that isn't known. */
  public static List<String> near(String name) {
    List<String> names = new ArrayList<>();
    for (Grade grade : ALL) {
      names.add(grade.designation());
      names.addAll(grade.aliases());
    }
    return NearestNames.of(name, names);
  }

  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[\\s\\-_]", "");
  }

  private static Map<String, Grade> byName() {
    Map<String, Grade> byName = new LinkedHashMap<>();
    for (Grade grade : ALL) {
      List<String> names = new ArrayList<>(grade.aliases());
      names.add(grade.designation());
      for (String name : names) {
        if (byName.put(key(name), grade) != null) {
          throw new IllegalStateException(RESOURCE + " has two grades called " + name);
        }
      }
    }
    return byName;
  }

  private static List<Grade> load() {
    List<Grade> grades = new ArrayList<>();
    try (InputStream in = Grades.class.getResourceAsStream(RESOURCE);
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      lines.readLine(); // column names
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        grades.add(grade(line));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return List.copyOf(grades);
  }

  private static Grade grade(String line) {
    String[] cells = line.split(";", -1);
    if (cells.length != COLUMNS) {
      throw new IllegalStateException(RESOURCE + ": " + cells.length + " columns in: " + line);
    }
    return new Grade(
        cells[0],
        cells[1].isEmpty() ? List.of() : List.of(cells[1].split("\\|")),
        Family.valueOf(cells[2]),
        cells[3],
        cells[4].isEmpty() ? Optional.empty() : Optional.of(Composition.parse(cells[4])),
        number(cells[5]),
        number(cells[6]),
        cells[7],
        !cells[8].isEmpty(),
        cells[9].isEmpty() ? Optional.empty() : Optional.of(cells[9]));
  }

  private static OptionalDouble number(String cell) {
    return cell.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(cell));
  }
}
