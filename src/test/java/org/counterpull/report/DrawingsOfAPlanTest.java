package org.counterpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.counterpull.drawing.JointSection;
import org.counterpull.drawing.PartMap;
import org.counterpull.drawing.TimeChart;
import org.counterpull.drawing.WeldMap;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.markup.Markup;
import org.counterpull.plan.Plan;
import org.junit.jupiter.api.Test;

/** What the drawings of a plan show. */
class DrawingsOfAPlanTest {
  private final Plan plan = SamplePlan.usual();

  private static List<String> texts(String svg) {
    return Pattern.compile("<text[^>]*>([^<]*)</text>")
        .matcher(svg)
        .results()
        .map(m -> m.group(1))
        .toList();
  }

  @Test
  void theWeldMapNumbersEveryRunOnce() {
    for (double width : new double[] {340, 860}) {
      List<String> numbers = new ArrayList<>();
      for (Markup view : new WeldMap(plan).drawings(width)) {
        texts(view.toString()).stream().filter(t -> t.matches("W\\d+")).forEach(numbers::add);
      }
      List<String> all = new ArrayList<>();
      for (int i = 1; i <= 20; i++) {
        all.add("W" + i);
      }
      assertThat(numbers).containsExactlyInAnyOrderElementsOf(all);
    }
  }

  @Test
  void thePartMapNamesEveryPart() {
    List<String> names = plan.weldment().parts().stream().map(p -> p.name()).toList();
    assertThat(texts(new PartMap(plan).drawing(860).toString())).containsAll(names);
  }

  @Test
  void theSectionShowsEveryBeadOfBothSides() {
    for (JointPlan joint : plan.joints()) {
      List<String> texts = texts(JointSection.of(joint, 1).orElseThrow().toString());
      List<String> beads = new ArrayList<>();
      for (RunPlan run : joint.runs()) {
        run.passes().forEach(pass -> beads.add(Integer.toString(pass.number())));
      }
      assertThat(texts.stream().filter(t -> t.matches("\\d+")).toList())
          .as(joint.joint().name())
          .containsExactlyInAnyOrderElementsOf(beads);
    }
  }

  @Test
  void theTimeChartNamesTheCausesOfWaits() {
    String chart = TimeChart.of(plan, 860, "t").orElseThrow().toString();
    assertThat(String.join("\n", texts(chart))).contains("Interpass wait");
  }

  @Test
  void eachDrawingSpeaksToThoseWhoCannotSeeIt() {
    List<Markup> drawings = new ArrayList<>(new WeldMap(plan).drawings(860));
    drawings.add(new PartMap(plan).drawing(860));
    drawings.add(JointSection.of(plan.joints().get(0), 1).orElseThrow());
    drawings.add(TimeChart.of(plan, 340, "t").orElseThrow());
    for (Markup drawing : drawings) {
      assertThat(drawing.toString())
          .contains("role=\"img\"")
          .containsPattern("<title>[^<]+</title><desc>[^<]+</desc>");
    }
  }
}
