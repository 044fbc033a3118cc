package org.counterpull.procedure;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.feeding.ShieldingGas;
import org.counterpull.position.WeldingPosition;

/** Reads rows from YAML text. */
public final class ProcedureReader {
  private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());

  private ProcedureReader() {}

  /**
   * All rows of one file.
   *
   * @param yaml text of the file
   * @param file its name, for messages
   * @throws ProcedureException for the first row that can't be used
   */
  public static List<Procedure> read(String yaml, String file) {
    List<Row> rows = rows(yaml, file);
    List<Procedure> procedures = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      procedures.add(procedure(rows.get(i), file, i + 1));
    }
    return procedures;
  }

  private static List<Row> rows(String yaml, String file) {
    try {
      List<Row> rows = YAML.readValue(yaml, new TypeReference<List<Row>>() {});
      return rows == null ? List.of() : rows;
    } catch (UnrecognizedPropertyException e) {
      throw new ProcedureException(
          String.format(
              Locale.ROOT,
              "%s: row %d: there is no '%s'; the keys are %s",
              file,
              e.getPath().get(0).getIndex() + 1,
              e.getPropertyName(),
              e.getKnownPropertyIds().stream().map(Object::toString).sorted().toList()),
          e);
    } catch (JsonProcessingException e) {
      String where =
          e.getLocation() == null
              ? file
              : file + ":" + e.getLocation().getLineNr() + ":" + e.getLocation().getColumnNr();
      throw new ProcedureException(where + ": " + e.getOriginalMessage(), e);
    }
  }

  private static Procedure procedure(Row row, String file, int number) {
    try {
      return row.toProcedure();
    } catch (IllegalArgumentException e) {
      String name = row.id() == null ? "row " + number : row.id();
      throw new ProcedureException(file + ": procedure " + name + ": " + e.getMessage(), e);
    }
  }

  /** A row as it stands in the file. */
  private record Row(
      @JsonProperty("id") String id,
      @JsonProperty("family") String family,
      @JsonProperty("process") String process,
      @JsonProperty("material") String material,
      @JsonProperty("joint") String joint,
      @JsonProperty("position") String position,
      @JsonProperty("thickness-mm") double[] thicknessMm,
      @JsonProperty("leg-mm") double[] legMm,
      @JsonProperty("gap-mm") double[] gapMm,
      @JsonProperty("root-face-mm") double[] rootFaceMm,
      @JsonProperty("electrode") String electrode,
      @JsonProperty("diameter-mm") double[] diameterMm,
      @JsonProperty("gas") Gas gas,
      @JsonProperty("polarity") String polarity,
      @JsonProperty("current-a") double[] currentA,
      @JsonProperty("voltage-v") double[] voltageV,
      @JsonProperty("travel-mm-per-s") double[] travelMmPerS,
      @JsonProperty("wire-feed-m-per-min") double[] wireFeedMPerMin,
      @JsonProperty("passes") int passes,
      @JsonProperty("source") String source,
      @JsonProperty("note") String note) {

    Procedure toProcedure() {
      Electrode wire =
          new Electrode(
              text("electrode", electrode),
              range("diameter-mm", diameterMm),
              word("polarity", polarity, Polarity.values(), Polarity::word));
      Settings settings =
          new Settings(
              range("current-a", currentA),
              range("voltage-v", voltageV),
              range("travel-mm-per-s", travelMmPerS),
              optional("wire-feed-m-per-min", wireFeedMPerMin));
      return new Procedure(
          text("id", id),
          text("family", family),
          scope(),
          wire,
          Optional.ofNullable(gas).map(Gas::toShielding),
          settings,
          passes,
          text("source", source),
          Optional.ofNullable(note));
    }

    private Scope scope() {
      return new Scope(
          word("process", process, WeldingProcess.values(), WeldingProcess::word),
          word("material", material, BaseMaterial.values(), BaseMaterial::word),
          word("joint", joint, JointForm.values(), JointForm::word),
          word("position", position, WeldingPosition.values(), WeldingPosition::name),
          range("thickness-mm", thicknessMm),
          optional("leg-mm", legMm),
          optional("gap-mm", gapMm),
          optional("root-face-mm", rootFaceMm));
    }
  }

  private record Gas(
      @JsonProperty("name") String name,
      @JsonProperty("argon") double argon,
      @JsonProperty("co2") double co2,
      @JsonProperty("flow-l-per-min") double[] flowLPerMin) {
    Shielding toShielding() {
      return new Shielding(
          text("gas name", name),
          new ShieldingGas(argon, co2),
          range("flow-l-per-min", flowLPerMin));
    }
  }

  private static String text(String key, String value) {
    if (value == null || value.isBlank()) {
      throw new IllegalArgumentException("'" + key + "' is missing");
    }
    return value;
  }

  private static Optional<Range> optional(String key, double[] ends) {
    return ends == null ? Optional.empty() : Optional.of(range(key, ends));
  }

  private static Range range(String key, double[] ends) {
    if (ends == null || ends.length != 2) {
      throw new IllegalArgumentException("'" + key + "' must be two numbers: [low, high]");
    }
    return new Range(ends[0], ends[1]);
  }

  private static <E> E word(String key, String word, E[] all, Function<E, String> wordOf) {
    return Arrays.stream(all)
        .filter(one -> wordOf.apply(one).equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "'"
                        + key
                        + "' is '"
                        + word
                        + "': write one of "
                        + Arrays.stream(all).map(wordOf).toList()));
  }
}
