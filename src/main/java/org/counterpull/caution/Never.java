package org.counterpull.caution;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.counterpull.plan.Plan.Refusal;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.SpokenOf;
import org.counterpull.weldment.Weldment;

/** What is never welded, {@code rules/never.yaml}, and where this job would do it. */
public final class Never {
  private static final String RESOURCE = "/rules/never.yaml";

  private static final List<Row> ROWS = read();

  private Never() {}

  /** What lifts a ban. */
  private enum Unless {
    NOTHING,
    STATE,
    REMOVABLE
  }

  /**
   * A ban.
   *
   * @param id of the rule
   * @param words that name the thing
   * @param kind of a feature that stands for it; empty for none
   * @param unless what lifts it
   * @param why the reason
   * @param wayForward what to do instead
   * @param source where it stands
   */
  record Row(
      String id,
      List<String> words,
      Optional<Feature.Kind> kind,
      Unless unless,
      String why,
      String wayForward,
      String source) {}

  static List<Row> rows() {
    return ROWS;
  }

  /** A refusal for each part or feature that a rule forbids to weld. */
  public static List<Refusal> of(Weldment weldment) {
    Set<String> welded = new TreeSet<>();
    for (Joint joint : weldment.joints()) {
      welded.addAll(List.of(joint.first(), joint.second()));
    }
    List<Refusal> refusals = new ArrayList<>();
    for (Row row : ROWS) {
      for (String part : welded) {
        boolean hard =
            SpokenOf.names(part, row.words())
                || SpokenOf.names(weldment.part(part).steel().designation(), row.words());
        if (hard && !lifted(weldment, part, row)) {
          refusals.add(refusal(part, row));
        }
      }
      for (Feature feature : weldment.features()) {
        boolean here = feature.parts().stream().anyMatch(welded::contains);
        if (here && row.kind().equals(Optional.of(feature.kind())) && !lifts(feature, row)) {
          refusals.add(refusal(feature.name(), row));
        }
      }
    }
    return refusals;
  }

  private static Refusal refusal(String where, Row row) {
    return new Refusal(
        where, row.why() + " (" + row.id() + "; " + row.source() + ")", row.wayForward());
  }

  private static boolean lifted(Weldment weldment, String part, Row row) {
    return row.unless() == Unless.STATE
        && weldment.features().stream()
            .filter(Feature::holdsSomething)
            .filter(feature -> feature.parts().contains(part))
            .anyMatch(feature -> lifts(feature, row));
  }

  private static boolean lifts(Feature feature, Row row) {
    return switch (row.unless()) {
      case NOTHING -> false;
      case REMOVABLE -> feature.removable();
      case STATE -> feature.states().containsAll(EnumSet.allOf(Feature.State.class));
    };
  }

  private static List<Row> read() {
    try (InputStream in = Never.class.getResourceAsStream(RESOURCE)) {
      List<Row> rows = new ArrayList<>();
      for (JsonNode row : new YAMLMapper().readTree(in)) {
        List<String> words = new ArrayList<>();
        row.required("words").forEach(word -> words.add(word.asText()));
        String kind = row.required("kind").asText();
        String unless = row.required("unless").asText();
        rows.add(
            new Row(
                row.required("id").asText(),
                List.copyOf(words),
                java.util.Arrays.stream(Feature.Kind.values())
                    .filter(k -> k.words().equals(kind))
                    .findFirst(),
                unless.isEmpty()
                    ? Unless.NOTHING
                    : Unless.valueOf(unless.toUpperCase(java.util.Locale.ROOT)),
                row.required("why").asText(),
                row.required("way forward").asText(),
                row.required("source").asText()));
      }
      return List.copyOf(rows);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + RESOURCE, e);
    }
  }
}
