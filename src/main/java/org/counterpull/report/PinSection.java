package org.counterpull.report;

import org.counterpull.drawing.PinPicture;
import org.counterpull.markup.Markup;
import org.counterpull.plan.PinRow;

/** A row of bores on the page: the answer, a picture, every bore, what the pin carries. */
final class PinSection {
  private static final double WIDE_PX = 860;
  private static final double NARROW_PX = 340;

  private final PinWords words;
  private final PinTables tables;

  PinSection(Measures measures) {
    words = new PinWords(measures);
    tables = new PinTables(measures);
  }

  Markup write(PinRow row) {
    Markup out = new Markup().add(PageParts.bullets(words.sentences(row)));
    PinPicture.of(row, WIDE_PX)
        .ifPresent(
            wide -> out.add(PageParts.drawing(wide, PinPicture.of(row, NARROW_PX).orElseThrow())));
    out.add(PageParts.table(tables.bores(row)));
    out.add(PageParts.table(tables.uses(row)));
    String id =
        "pin-" + row.name().toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    return PageParts.section(id, PinWords.title(row), out);
  }
}
