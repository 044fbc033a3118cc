package org.counterpull.reading;

import java.nio.file.Path;
import java.util.List;
import org.counterpull.quantity.LengthUnit;
import org.counterpull.weldment.Weldment;

/** What comes of reading a weldment file: the model, or all that is wrong with the file. */
public sealed interface ReadResult {

  /**
   * The file was read.
   *
   * @param weldment the validated model; parts that overlap and joints that don't touch are not
   *     looked for here
   * @param units of bare numbers in the file
   * @param locations where things stand in the files
   * @param sources the file and all included ones, in the order of reading
   */
  record Read(Weldment weldment, LengthUnit units, Locations locations, List<Path> sources)
      implements ReadResult {
    public Read {
      sources = List.copyOf(sources);
    }
  }

  /**
   * The file is wrong.
   *
   * @param problems at least one, those of the file itself first, by line and column
   */
  record Faulty(List<Problem> problems) implements ReadResult {
    public Faulty {
      problems = List.copyOf(problems);
    }
  }
}
