package org.counterpull.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.counterpull.quantity.QuantityParser;
import org.counterpull.weldment.MaterialConstants;
import org.counterpull.weldment.PartMaterial;

/** Reads parts, each for itself; what hangs on other parts is left to {@link Placements}. */
final class PartReading {
  private static final double HEAVIEST_KG = 1e6;

  private final Section section;
  private final Optional<PartMaterial> fileSteel;
  private final List<String> open = new ArrayList<>();

  /**
   * Reads parts.
   *
   * @param fileSteel of parts that name none; empty when the file's own steel is wrong
   */
  PartReading(Section section, Optional<PartMaterial> fileSteel) {
    this.section = section;
    this.fileSteel = fileSteel;
  }

  /** The parts that could be read; the others have been reported. */
  List<PartDraft> read() {
    return section.read(this::part);
  }

  private Optional<PartDraft> part(String name, Fields fields) {
    Optional<PartDraft.Body> body = BodyReading.read(fields);
    Optional<EndReading.Ends> ends = EndReading.read(fields, body);
    Optional<PartMaterial> steel = steel(fields);
    Optional<Double> mass =
        fields
            .get("mass")
            .flatMap(v -> v.quantity(QuantityParser::parseMassKg, 1e-6, HEAVIEST_KG, "kg"));
    boolean shaped = fields.truth("shaped", false);
    boolean loose = fields.truth("loose", false);
    Optional<Position> position = position(name, fields, body);
    if (body.isEmpty() || ends.isEmpty() || steel.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new PartDraft(
            name,
            body.get(),
            ends.get().left(),
            ends.get().right(),
            steel.get(),
            shaped,
            loose,
            mass,
            position));
  }

  private Optional<Position> position(String name, Fields fields, Optional<PartDraft.Body> body) {
    if (PositionReading.isOpen(fields) && !fields.has("like")) {
      open.add(name);
      if (open.size() > 1) {
        return fields.problem(
            "the part is not placed, and only one part may leave that open: "
                + open.get(0)
                + " does",
            "start: [0, 0, 0], or onto: PART with a face");
      }
      fields.book().assume(fields.path(), "not placed: it starts at [0, 0, 0]");
    }
    return PositionReading.read(name, fields, section.names(), body.map(PartDraft.Body::box));
  }

  private Optional<PartMaterial> steel(Fields fields) {
    Optional<PartMaterial> steel =
        fields.has("steel") ? fields.get("steel").flatMap(SteelReading::read) : fileSteel;
    if (!fields.has("material constants")) {
      return steel;
    }
    Optional<MaterialConstants> constants =
        fields
            .get("material constants")
            .flatMap(v -> v.fields(PartKeys.MATERIAL_CONSTANTS))
            .flatMap(SteelReading::constants);
    return constants.flatMap(
        c ->
            steel.map(
                s ->
                    new PartMaterial(
                        s.designation(), s.certainty(), s.composition(), Optional.of(c))));
  }
}
