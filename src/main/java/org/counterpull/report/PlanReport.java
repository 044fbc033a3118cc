package org.counterpull.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.counterpull.plan.Plan;
import org.counterpull.quantity.LengthUnit;

/** A plan as files and as a summary. */
public final class PlanReport {
  public static final String JSON = "plan.json";
  public static final String MARKDOWN = "plan.md";
  public static final String PAGE = "plan.html";

  private final Plan plan;
  private final Plan said;
  private final Measures measures;
  private final FormulasUsed formulas;

  /**
   * A report of one plan.
   *
   * @param plan what to report
   * @param fileUnits the units of the weldment file, which come first on pages
   */
  public PlanReport(Plan plan, LengthUnit fileUnits) {
    this.plan = plan;
    this.said = PlanInFileUnits.of(plan, fileUnits);
    this.measures = new Measures(fileUnits);
    this.formulas = new FormulasUsed(plan);
  }

  /** plan.json. */
  public String json() {
    return new PlanJson(plan, formulas).write();
  }

  /** plan.md. */
  public String markdown() {
    return new PlanMarkdown(said, measures, formulas).write();
  }

  /** plan.html. */
  public String page() {
    return new PlanPage(said, measures, formulas).write();
  }

  /**
   * What the terminal says, lines of at most 100 columns.
   *
   * @param files where the plan is, each on a line of its own; may be longer
   */
  public String summary(List<String> files) {
    return new PlanSummary(said, measures).write(files);
  }

  /** All files by name. */
  public Map<String, String> files() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put(JSON, json());
    files.put(MARKDOWN, markdown());
    files.put(PAGE, page());
    return files;
  }
}
