package org.counterpull.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.counterpull.contact.Contact;
import org.counterpull.contact.ContactFinder;
import org.counterpull.contact.Fitting;
import org.counterpull.contact.NoContact;
import org.counterpull.contact.Overlap;
import org.counterpull.quantity.LengthUnit;
import org.counterpull.reading.Locations;
import org.counterpull.reading.Problem;
import org.counterpull.reading.ReadResult;
import org.counterpull.reading.WeldmentReader;
import org.counterpull.weldment.Weldment;

/**
 * A weldment file that was read and whose parts fit.
 *
 * @param weldment what is built
 * @param units of bare numbers in the file
 * @param contacts how its parts meet, one for each joint
 */
record SoundWeldment(Weldment weldment, LengthUnit units, List<Contact> contacts) {

  /**
   * Reads a file and looks at how its parts fit.
   *
   * @throws BadInput with every problem, when there is one
   */
  static SoundWeldment read(Path file) {
    ReadResult result = WeldmentReader.read(file);
    if (result instanceof ReadResult.Faulty faulty) {
      throw new BadInput(text(faulty.problems()));
    }
    ReadResult.Read read = (ReadResult.Read) result;
    Fitting fitting = ContactFinder.usual().find(read.weldment());
    List<Problem> problems = problems(read, fitting);
    if (!problems.isEmpty()) {
      throw new BadInput(text(problems));
    }
    return new SoundWeldment(read.weldment(), read.units(), fitting.contacts());
  }

  private static List<Problem> problems(ReadResult.Read read, Fitting fitting) {
    Locations places = read.locations();
    List<Problem> problems = new ArrayList<>();
    for (NoContact apart : fitting.apart()) {
      problems.add(
          places.problem(
              "joints." + apart.joint(),
              apart.words(),
              "move one of the two, or write gap for what the weld is to bridge"));
    }
    for (Contact contact : fitting.contacts()) {
      if (contact.lines().isEmpty()) {
        problems.add(
            places.problem(
                "joints." + contact.joint(),
                "its parts touch, but there is no line to weld along",
                "let one part's edge stand on the other's face"));
      }
    }
    for (Overlap overlap : fitting.overlaps()) {
      problems.add(
          places.problem(
              "parts." + overlap.first(),
              overlap.words(),
              "check start, at, across and length of both"));
    }
    return problems;
  }

  private static String text(List<Problem> problems) {
    String count = problems.size() == 1 ? "1 problem" : problems.size() + " problems";
    return String.join("\n", problems.stream().map(Problem::text).toList()) + "\n" + count;
  }
}
