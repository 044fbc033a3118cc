package org.counterpull.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.counterpull.drawing.JointSection;
import org.counterpull.drawing.WeldSymbol;
import org.counterpull.drawing.WeldSymbol.Standard;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.markup.Markup;
import org.counterpull.plan.Plan;
import org.counterpull.quantity.LengthUnit;

/**
 * A sheet for each joint: a preliminary, unqualified welding procedure specification with section,
 * weld symbol, passes and the fields of ISO 15609-1. One page that holds everything.
 */
public final class JointSheets {
  public static final String PAGE = "joint-sheets.html";

  private final Plan plan;
  private final Measures measures;
  private final Standard standard;

  /**
   * The sheets of one plan.
   *
   * @param plan what is welded
   * @param fileUnits the units of the weldment file, which come first
   * @param standard that draws the symbols
   */
  public JointSheets(Plan plan, LengthUnit fileUnits, Standard standard) {
    this.plan = PlanInFileUnits.of(plan, fileUnits);
    this.measures = new Measures(fileUnits);
    this.standard = standard;
  }

  /** All files by name. */
  public Map<String, String> files() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put(PAGE, page());
    return files;
  }

  private String page() {
    Markup out = new Markup().doctype();
    out.open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en").open("head");
    out.empty("meta", "charset", "utf-8");
    out.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    out.element("title", "Joint sheets: " + plan.weldment().name());
    out.style("/report/page.css").style("/report/sheets.css").close().open("body").open("main");
    int number = 0;
    for (JointPlan joint : plan.joints()) {
      number++;
      out.add(joint.runs().isEmpty() ? unwelded(joint) : sheet(joint, number));
    }
    out.close().close().close();
    return out.toString() + "\n";
  }

  private static Markup unwelded(JointPlan joint) {
    Markup out = new Markup().open("article", "class", "sheet");
    out.element("h1", joint.joint().name());
    out.element("p", "No sheet: nothing is welded here. See the plan.", "class", "stop-note");
    return out.closeLine();
  }

  private Markup sheet(JointPlan joint, int number) {
    Markup out = new Markup().open("article", "class", "sheet");
    out.element("p", "Preliminary welding procedure specification (pWPS)", "class", "kind");
    out.element("h1", plan.weldment().name() + ": " + joint.joint().name());
    out.element(
        "p",
        "Not qualified. Fields as in ISO 15609-1; values are starting points to be proved by a test"
            + " piece.",
        "class",
        "stop-note");
    out.open("div", "class", "drawings").open("figure");
    JointSection.of(joint, number).ifPresent(out::add);
    out.element("figcaption", "Section, beads in the order of welding").close().open("figure");
    out.add(WeldSymbol.of(joint, standard));
    out.element("figcaption", "Symbol by " + standard.words() + ", mm (from memory)");
    out.close().close();
    out.open("div", "class", "groups");
    for (SheetFields.Group group : new SheetFields(plan, measures).of(joint)) {
      out.open("section").element("h2", group.title());
      out.add(PageParts.lines(group.lines())).closeLine();
    }
    out.close();
    out.element("h2", "Passes");
    out.add(PageParts.table(new PlanTables(plan, measures).passes(List.of(joint))));
    out.element(
        "p",
        "Ranges allowed round the planned value: current and wire feed 10 %, voltage 7 %, travel and"
            + " heat input 25 % (from memory: AWS D1.1, ISO 15614-1).",
        "class",
        "basis");
    out.open("div", "class", "sign");
    for (String sign : List.of("written by", "test piece found good", "date")) {
      out.element("span", sign);
    }
    return out.close().closeLine();
  }
}
