package org.counterpull.registry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.counterpull.naming.NearestNames;

/** All published formulas by name. */
public final class FormulaRegistry {
  private static final Map<String, PublishedFormula> BY_NAME =
      byName(
          List.of(
              ArcFormulas.all(),
              CoolingFormulas.all(),
              SteelFormulas.all(),
              StockFormulas.all(),
              WeldFormulas.all(),
              StrengthFormulas.all(),
              FitFormulas.all(),
              LinkageFormulas.all(),
              PowerFormulas.all(),
              FeedingFormulas.all(),
              ShrinkageFormulas.all()));

  private FormulaRegistry() {}

  /** Every formula, family by family. */
  public static List<PublishedFormula> all() {
    return List.copyOf(BY_NAME.values());
  }

  /** The formula of a name. */
  public static Optional<PublishedFormula> find(String name) {
    return Optional.ofNullable(BY_NAME.get(name));
  }

  /** Names near to one that isn't known. */
  public static List<String> near(String name) {
    return NearestNames.of(name, BY_NAME.keySet());
  }

  private static Map<String, PublishedFormula> byName(List<List<PublishedFormula>> families) {
    Map<String, PublishedFormula> byName = new LinkedHashMap<>();
    List<PublishedFormula> every = new ArrayList<>();
    families.forEach(every::addAll);
    for (PublishedFormula published : every) {
      if (byName.put(published.name(), published) != null) {
        throw new IllegalStateException("two formulas are called " + published.name());
      }
    }
    return Collections.unmodifiableMap(byName);
  }
}
