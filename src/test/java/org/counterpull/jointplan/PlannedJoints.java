package org.counterpull.jointplan;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.counterpull.contact.ContactFinder;
import org.counterpull.procedure.ProcedureBook;
import org.counterpull.procedure.ProcedureLibrary;
import org.counterpull.reading.ReadResult;
import org.counterpull.reading.WeldmentReader;
import org.counterpull.weldment.Weldment;

/** Plans the joints of a weldment that a test writes as a user would. */
final class PlannedJoints {
  private static final ProcedureBook PROCEDURES = ProcedureLibrary.bundled();

  private PlannedJoints() {}

  static Weldment read(Path folder, String yaml) {
    try {
      Path file = Files.writeString(folder.resolve("weldment.yaml"), yaml);
      ReadResult result = WeldmentReader.read(file);
      if (result instanceof ReadResult.Faulty faulty) {
        throw new IllegalStateException(faulty.problems().toString() + "\n" + yaml);
      }
      return ((ReadResult.Read) result).weldment();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<JointPlan> of(Path folder, String yaml) {
    return of(read(folder, yaml));
  }

  static List<JointPlan> of(Weldment weldment) {
    JointPlanner planner = new JointPlanner(weldment, PROCEDURES);
    return ContactFinder.usual().find(weldment).contacts().stream()
        .map(contact -> planner.plan(weldment.joint(contact.joint()), contact))
        .toList();
  }
}
