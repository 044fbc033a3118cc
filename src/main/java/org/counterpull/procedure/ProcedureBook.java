package org.counterpull.procedure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All rows at hand, in the order read.
 *
 * @param rows procedures with distinct ids
 */
public record ProcedureBook(List<Procedure> rows) {
  public ProcedureBook {
    rows = List.copyOf(rows);
    long distinct = rows.stream().map(Procedure::id).distinct().count();
    if (distinct != rows.size()) {
      throw new IllegalArgumentException("two procedures share an id");
    }
  }

  /** This book with more rows; a row whose id is known takes the old one's place. */
  public ProcedureBook with(List<Procedure> more) {
    Map<String, Procedure> byId = new LinkedHashMap<>();
    rows.forEach(row -> byId.put(row.id(), row));
    more.forEach(row -> byId.put(row.id(), row));
    return new ProcedureBook(new ArrayList<>(byId.values()));
  }

  /** A row by its id. */
  public Optional<Procedure> byId(String id) {
    return rows.stream().filter(row -> row.id().equals(id)).findFirst();
  }

  /**
   * The row for a piece of work: the one whose thickness range holds the thickness and lies closest
   * around it; otherwise settings between two rows of one family; nothing outside them.
   */
  public Optional<Found> find(ProcedureQuery query) {
    List<Procedure> fitting = rows.stream().filter(query::asks).toList();
    double thicknessMm = query.thicknessMm();
    Optional<Procedure> direct =
        fitting.stream()
            .filter(row -> row.scope().thicknessMm().contains(thicknessMm))
            .min(
                Comparator.<Procedure>comparingDouble(
                        row -> Math.abs(row.scope().thicknessMm().middle() - thicknessMm))
                    .thenComparing(Procedure::id));
    if (direct.isPresent()) {
      return Optional.of(new Found(direct.get(), List.of(direct.get().id())));
    }
    return fitting.stream()
        .map(Procedure::family)
        .distinct()
        .sorted()
        .map(family -> between(fitting, family, thicknessMm))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<Found> between(List<Procedure> rows, String family, double thicknessMm) {
    Comparator<Procedure> byThickness =
        Comparator.comparingDouble(row -> row.scope().thicknessMm().middle());
    List<Procedure> sorted =
        rows.stream().filter(r -> r.family().equals(family)).sorted(byThickness).toList();
    for (int i = 1; i < sorted.size(); i++) {
      Procedure thin = sorted.get(i - 1);
      Procedure thick = sorted.get(i);
      boolean straddles =
          thin.scope().thicknessMm().high() < thicknessMm
              && thicknessMm < thick.scope().thicknessMm().low();
      if (straddles) {
        return Interpolation.between(thin, thick, thicknessMm);
      }
    }
    return Optional.empty();
  }
}
