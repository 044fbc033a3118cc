package org.counterpull.procedure;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Where procedures lie: in the jar, and in a folder of the shop's own. */
public final class ProcedureLibrary {
  /** Files of the bundled book, in the order read. */
  static final List<String> FILES =
      List.of(
          "mag.yaml",
          "mag-metal-cored.yaml",
          "mig.yaml",
          "fcaw.yaml",
          "fcaw-s.yaml",
          "mma.yaml",
          "tig.yaml");

  private ProcedureLibrary() {}

  /** The bundled book. */
  public static ProcedureBook bundled() {
    List<Procedure> rows = new ArrayList<>();
    for (String file : FILES) {
      rows.addAll(ProcedureReader.read(resource("/procedures/" + file), "procedures/" + file));
    }
    return new ProcedureBook(rows);
  }

  /**
   * A book with the {@code .yaml} files of a folder added in the order of their names; a row whose
   * id is known takes the old one's place.
   */
  public static ProcedureBook withFolder(ProcedureBook book, Path folder) throws IOException {
    List<Path> files;
    try (Stream<Path> entries = Files.list(folder)) {
      files = entries.filter(path -> path.toString().endsWith(".yaml")).sorted().toList();
    }
    ProcedureBook whole = book;
    for (Path file : files) {
      whole =
          whole.with(ProcedureReader.read(Files.readString(file), file.getFileName().toString()));
    }
    return whole;
  }

  private static String resource(String name) {
    try (InputStream stream = ProcedureLibrary.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException(name + " is missing from the program");
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
