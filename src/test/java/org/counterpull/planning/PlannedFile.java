package org.counterpull.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.counterpull.contact.ContactFinder;
import org.counterpull.contact.Fitting;
import org.counterpull.order.AppliedRule;
import org.counterpull.order.Precedence;
import org.counterpull.plan.Plan;
import org.counterpull.plan.Plan.Refusal;
import org.counterpull.procedure.ProcedureBook;
import org.counterpull.procedure.ProcedureLibrary;
import org.counterpull.reading.ReadResult;
import org.counterpull.reading.WeldmentReader;
import org.counterpull.weldment.Weldment;

/** A weldment file as it is planned, with the rules that it brings up. */
public record PlannedFile(Plan plan) {
  private static final ProcedureBook PROCEDURES = ProcedureLibrary.bundled();
  private static final Pattern RULE = Pattern.compile("\\((R\\d+[a-z]?)[;)]");

  /** A file as it stands. */
  public static PlannedFile of(Path file) {
    ReadResult result = WeldmentReader.read(file);
    assertThat(result).as("%s: %s", file, result).isInstanceOf(ReadResult.Read.class);
    Weldment weldment = ((ReadResult.Read) result).weldment();
    Fitting fitting = ContactFinder.usual().find(weldment);
    assertThat(fitting.apart()).as("%s", file).isEmpty();
    assertThat(fitting.overlaps()).as("%s", file).isEmpty();
    return new PlannedFile(new Planner(PROCEDURES).plan(weldment, fitting.contacts(), 1));
  }

  /** A file with lines added at its end. */
  static PlannedFile of(Path file, String added, Path folder) throws IOException {
    Path whole = folder.resolve(file.getFileName());
    Files.writeString(whole, Files.readString(file) + added + "\n");
    return of(whole);
  }

  /** Ids of the rules that had a say, and of those that a refusal names. */
  Set<String> rules() {
    Set<String> ids =
        plan.practice().rules().stream()
            .map(AppliedRule::id)
            .collect(Collectors.toCollection(TreeSet::new));
    plan.precedence().stream().map(Precedence::rule).forEach(ids::add);
    for (Refusal refusal : plan.refusals()) {
      Matcher matcher = RULE.matcher(refusal.why());
      while (matcher.find()) {
        ids.add(matcher.group(1));
      }
    }
    return ids;
  }
}
