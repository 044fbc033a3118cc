package org.counterpull.reading;

import java.nio.file.Path;
import java.util.Optional;
import org.counterpull.weldment.Weldment;

/** Reads a weldment file, YAML or (by its ending {@code .json}) JSON, into the validated model. */
public final class WeldmentReader {

  private WeldmentReader() {}

  /**
   * Reads a file and what it includes.
   *
   * @return the model with the places of everything in the file, or all problems; never an
   *     exception for whatever a file may hold
   */
  public static ReadResult read(Path file) {
    Notebook book = new Notebook();
    Sources sources = new Sources(book);
    Optional<Node.Table> tree = sources.read(file);
    if (tree.isEmpty()) {
      return new ReadResult.Faulty(book.problems().sorted(file.toString()));
    }
    Node.Table whole = Likeness.carriedOut(book, tree.get());
    Optional<Weldment> weldment = new FileReading(book, file).read(whole);
    if (weldment.isEmpty() || !book.problems().isEmpty()) {
      return new ReadResult.Faulty(book.problems().sorted(file.toString()));
    }
    return new ReadResult.Read(
        weldment.get(), book.unitAt(whole.place()), Locations.of(whole), sources.files());
  }
}
