package org.counterpull.pulljob;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.counterpull.contact.Contact;
import org.counterpull.contact.ContactFinder;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.JointPlanner;
import org.counterpull.plan.NamedOrder;
import org.counterpull.plan.PullAnswer;
import org.counterpull.plan.PullAnswer.CheckAnswer;
import org.counterpull.plan.PullAnswer.Share;
import org.counterpull.procedure.ProcedureLibrary;
import org.counterpull.reading.ReadResult;
import org.counterpull.reading.WeldmentReader;
import org.counterpull.weldment.Weldment;

/** Weldments as files, welded by the shape engine. */
final class Shop {
  private static final long SEED = 1;

  private Shop() {}

  /** An answer for a text. */
  static PullAnswer welded(Path folder, String text, NamedOrder order) throws IOException {
    Path file = folder.resolve("weldment.yaml");
    Files.writeString(file, text);
    return welded(file, order, 50);
  }

  /** A weldment as fitted and tacked. */
  static PullModel model(Path folder, String text) throws IOException {
    Path file = folder.resolve("weldment.yaml");
    Files.writeString(file, text);
    Weldment weldment = read(file);
    List<Contact> contacts = ContactFinder.usual().find(weldment).contacts();
    return new PullModel(weldment, PulledRuns.of(weldment, contacts, List.of()));
  }

  private static Weldment read(Path file) {
    ReadResult result = WeldmentReader.read(file);
    if (result instanceof ReadResult.Faulty faulty) {
      throw new AssertionError(faulty.problems().toString());
    }
    return ((ReadResult.Read) result).weldment();
  }

  static PullAnswer welded(Path file, NamedOrder order, long effort) {
    return welded(file, order, effort, () -> false);
  }

  static PullAnswer welded(Path file, NamedOrder order, long effort, BooleanSupplier stop) {
    Weldment weldment = read(file);
    List<Contact> contacts = ContactFinder.usual().find(weldment).contacts();
    JointPlanner planner = new JointPlanner(weldment, ProcedureLibrary.bundled());
    List<JointPlan> joints =
        contacts.stream().map(c -> planner.plan(weldment.joint(c.joint()), c)).toList();
    return PullJob.of(weldment, contacts, joints, SEED).orElseThrow().answer(order, effort, stop);
  }

  static CheckAnswer check(PullAnswer answer, String name) {
    return answer.checks().stream()
        .filter(check -> check.check().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** The check's number with every figure as published: the sum of all shares. */
  static double central(PullAnswer answer, String name) {
    return check(answer, name).shares().stream().mapToDouble(Share::mm).sum();
  }
}
