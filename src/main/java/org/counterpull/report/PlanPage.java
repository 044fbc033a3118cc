package org.counterpull.report;

import java.util.List;
import java.util.Map;
import org.counterpull.drawing.PartMap;
import org.counterpull.drawing.PlanHeatChart;
import org.counterpull.drawing.SwingGraph;
import org.counterpull.drawing.SwingPicture;
import org.counterpull.drawing.TimeChart;
import org.counterpull.drawing.WeldMap;
import org.counterpull.jointplan.Coupon;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.markup.Markup;
import org.counterpull.plan.Plan;
import org.counterpull.plan.Plan.Caution;
import org.counterpull.plan.Plan.Refusal;
import org.counterpull.swing.SwingResult;

/**
 * A plan as one page that holds everything: it is read without a script and without a network, on
 * paper, at a desk and on a phone.
 */
final class PlanPage {
  private static final double WIDE_PX = 860;
  private static final double NARROW_PX = 340;
  private static final int FIRST_CAUTIONS = 8;

  private final Plan plan;
  private final Measures measures;
  private final PlanWords words;
  private final PlanTables tables;
  private final PracticeTables practice;
  private final MachineLimits limits;
  private final FormulasUsed formulas;

  PlanPage(Plan plan, Measures measures, FormulasUsed formulas) {
    this.plan = plan;
    this.measures = measures;
    this.formulas = formulas;
    words = new PlanWords(plan, measures);
    tables = new PlanTables(plan, measures);
    practice = new PracticeTables(plan, measures);
    limits = new MachineLimits(plan, measures);
  }

  String write() {
    Markup out = new Markup().doctype();
    out.open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en").open("head");
    out.empty("meta", "charset", "utf-8");
    out.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    out.element("title", "Welding plan: " + plan.weldment().name());
    out.style("/report/page.css").close().open("body").open("main").text("\n");
    out.add(head());
    out.add(firstCautions());
    out.add(map());
    out.add(PageParts.section("welds", "Welds", PageParts.table(tables.welds())));
    out.add(PageParts.section("steps", "Steps", new StepsSection(words, tables).write()));
    out.add(time());
    out.add(heat());
    out.add(PageParts.section("joints", "Joints", new JointsSection(words, tables).write()));
    out.add(
        PageParts.section(
            "machines",
            "What each machine can weld",
            PageParts.table(tables.verdicts()),
            PageParts.bullets(limits.sentences())));
    plan.practice().mounts().forEach(mount -> out.add(MountSection.ofPlan(mount)));
    out.add(coupons());
    section(out, "checks", "Checks", tables.checks());
    plan.shape()
        .ifPresent(
            shape ->
                out.add(
                    PageParts.section(
                        "shape", "How it comes out", new ShapeSection(shape, measures).write())));
    section(out, "access", "What no tool reaches any more", practice.access());
    PinSection pins = new PinSection(measures);
    plan.practice().pins().forEach(row -> out.add(pins.write(row)));
    plan.practice().swings().forEach(swing -> out.add(swing(swing)));
    section(out, "lists", "Strip, mask, drill, put back", tables.lists());
    section(out, "cuts", "Cutting list", tables.cuts().cuts());
    section(out, "bars", "Bars to buy", tables.cuts().bars());
    section(out, "use", "What is used up", tables.consumables());
    section(out, "cost", "Cost", tables.cost());
    out.add(why());
    section(out, "rules", "Rules that had a say", practice.rules());
    out.add(assumptions());
    section(out, "numbers", "Where the numbers come from", PlanTables.formulas(formulas));
    out.add(foot());
    out.close().script("/report/page.js").close().close();
    return out.toString() + "\n";
  }

  private Markup head() {
    Markup out = new Markup().open("header", "class", "head");
    out.element("p", "Welding plan", "class", "kind").element("h1", plan.weldment().name());
    boolean stop = !plan.refusals().isEmpty();
    out.element("p", words.answer(), "class", stop ? "answer stop" : "answer");
    if (stop) {
      out.open("div", "class", "refusals").element("h2", "What can't or mustn't be done");
      plan.refusals().forEach(refusal -> out.add(refusal(refusal)));
      out.closeLine();
    }
    out.add(PageParts.lines(words.head()));
    out.open("ul", "class", "jump");
    jump(out, "map", "Weld map");
    jump(out, "welds", "Welds");
    jump(out, "steps", "Steps");
    plan.heat().ifPresent(heat -> jump(out, "heat", "Temperatures"));
    jump(out, "joints", "Joints");
    jump(out, "checks", "Checks");
    plan.shape().ifPresent(shape -> jump(out, "shape", "How it comes out"));
    return out.close().closeLine();
  }

  private static void jump(Markup out, String section, String title) {
    out.open("li").element("a", title, "href", "#" + section).close();
  }

  private static Markup refusal(Refusal refusal) {
    Markup out = new Markup().open("p").element("strong", refusal.where() + ": ");
    out.text(refusal.why());
    if (!refusal.wayForward().isEmpty()) {
      out.text(" ").element("strong", "Way forward: ").text(refusal.wayForward());
    }
    return out.closeLine();
  }

  private Markup firstCautions() {
    List<Caution> first =
        plan.cautions().subList(0, Math.min(FIRST_CAUTIONS, plan.cautions().size()));
    return PageParts.section("cautions", "Cautions", cautions(first));
  }

  private static Markup cautions(List<Caution> cautions) {
    Markup out = new Markup().open("ul", "class", "cautions");
    for (Caution caution : cautions) {
      out.open("li").text(caution.text() + " ");
      String because = caution.because().isEmpty() ? "" : "Here: " + caution.because() + ". ";
      out.element("span", because + caution.basis(), "class", "basis").closeLine();
    }
    return out.close();
  }

  private Markup map() {
    WeldMap map = new WeldMap(plan);
    Markup out = new Markup();
    out.element(
        "p",
        "Numbers are the order of welding. Dot: start. Arrow: where the run goes. Dashed: hidden."
            + " Light grey: numbered on another view.",
        "class",
        "legend");
    List<Markup> wide = map.drawings(WIDE_PX);
    List<Markup> narrow = map.drawings(NARROW_PX);
    for (int i = 0; i < wide.size(); i++) {
      out.add(PageParts.drawing(wide.get(i), narrow.get(i)));
    }
    PartMap parts = new PartMap(plan);
    out.add(PageParts.drawing(parts.drawing(WIDE_PX), parts.drawing(NARROW_PX)));
    return PageParts.section("map", "Weld map", out);
  }

  private Markup time() {
    Markup out = new Markup();
    TimeChart.of(plan, WIDE_PX, "time-wide")
        .ifPresent(
            wide ->
                out.add(
                    PageParts.drawing(
                        wide, TimeChart.of(plan, NARROW_PX, "time-narrow").orElseThrow())));
    return PageParts.section("time", "Time", out);
  }

  private Markup heat() {
    Markup out = new Markup();
    if (plan.heat().isEmpty()) {
      return out;
    }
    HeatTables heat = new HeatTables(plan, measures);
    PlanHeatChart.of(plan, WIDE_PX)
        .ifPresent(
            wide ->
                out.add(PageParts.drawing(wide, PlanHeatChart.of(plan, NARROW_PX).orElseThrow())));
    if (!heat.features().isEmpty()) {
      out.add(PageParts.table(heat.features()));
    }
    out.add(PageParts.table(heat.starts()));
    out.element("p", heat.how().orElseThrow(), "class", "legend");
    out.add(PageParts.bullets(heat.notes()));
    return PageParts.section("heat", "Temperatures", out);
  }

  private static void section(Markup out, String id, String title, Table table) {
    if (!table.isEmpty()) {
      out.add(PageParts.section(id, title, PageParts.table(table)));
    }
  }

  private Markup coupons() {
    if (words.coupons().isEmpty()) {
      return new Markup();
    }
    Markup out = new Markup();
    int number = 0;
    for (Map.Entry<Coupon, List<JointPlan>> entry : words.coupons().entrySet()) {
      out.open("div", "class", "joint");
      out.element("h3", "T" + ++number + " for " + PlanWords.namesOf(entry.getValue()));
      out.add(PageParts.lines(PlanWords.coupon(entry.getKey()))).closeLine();
    }
    return PageParts.section("coupons", "Test pieces, before the first tack", out);
  }

  private Markup swing(SwingResult swing) {
    Markup out = new Markup().add(PageParts.bullets(practice.words(swing)));
    out.add(
        PageParts.drawing(
            SwingPicture.of(plan.weldment(), swing, WIDE_PX),
            SwingPicture.of(plan.weldment(), swing, NARROW_PX)));
    if (swing.swing().cylinder().isPresent()) {
      out.add(PageParts.drawing(SwingGraph.of(swing, WIDE_PX), SwingGraph.of(swing, NARROW_PX)));
      out.add(PageParts.table(practice.drive(swing)));
    }
    return PageParts.section(
        "swing-" + plan.practice().swings().indexOf(swing),
        "Swing of " + swing.swing().name(),
        out);
  }

  private Markup why() {
    return plan.orderReasons().isEmpty()
        ? new Markup()
        : PageParts.section("order", "Why in this order", PageParts.bullets(plan.orderReasons()));
  }

  private Markup assumptions() {
    List<String> texts =
        plan.weldment().assumptions().stream().map(a -> a.where() + ": " + a.what()).toList();
    return texts.isEmpty()
        ? new Markup()
        : PageParts.section("assumptions", "Assumptions", PageParts.bullets(texts));
  }

  private Markup foot() {
    Markup out = new Markup();
    if (plan.cautions().size() > FIRST_CAUTIONS) {
      List<Caution> rest = plan.cautions().subList(FIRST_CAUTIONS, plan.cautions().size());
      out.add(PageParts.section("more-cautions", "More cautions", cautions(rest)));
    }
    out.open("footer").element("p", PlanWords.FOOT).open("div", "class", "sign");
    for (String sign : List.of("welded by", "checked by", "date")) {
      out.element("span", sign);
    }
    return out.close().closeLine();
  }
}
