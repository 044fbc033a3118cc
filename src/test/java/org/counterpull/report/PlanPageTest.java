package org.counterpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.counterpull.plan.Plan;
import org.counterpull.quantity.LengthUnit;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** plan.html: well-formed, closed to markup from names, complete in itself. */
class PlanPageTest {
  private static String page(Plan plan) {
    return new PlanReport(plan, LengthUnit.MM).page();
  }

  static Document parsed(String page) throws Exception {
    DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
    return builder.parse(new InputSource(new StringReader(page)));
  }

  @Test
  void isWellFormedWithAnyNames() throws Exception {
    assertThat(parsed(page(SamplePlan.usual())).getElementsByTagName("section").getLength())
        .isGreaterThan(8);
    // One script: the page's own.
    assertThat(parsed(page(SamplePlan.hostile())).getElementsByTagName("script").getLength())
        .isEqualTo(1);
  }

  @Test
  void namesStayNames() throws Exception {
    String page = page(SamplePlan.hostile());
    assertThat(page).doesNotContain("<script>alert").doesNotContain("\u0007");
    assertThat(parsed(page).getElementsByTagName("h1").item(0).getTextContent())
        .isEqualTo("sample" + SamplePlan.HOSTILE.replace('\u0007', '\uFFFD'));
  }

  @Test
  void asksNothingOfTheNetwork() {
    String page = page(SamplePlan.usual());
    assertThat(page).doesNotContain(" src=").doesNotContain("@import").doesNotContain("url(http");
    assertThat(Pattern.compile("href=\"([^\"]*)\"").matcher(page).results())
        .allMatch(link -> link.group(1).startsWith("#"));
  }

  @Test
  void everyLinkInsideHasItsTargetAndNoIdStandsTwice() {
    String page = page(SamplePlan.usual());
    var ids =
        Pattern.compile(" id=\"([^\"]*)\"").matcher(page).results().map(m -> m.group(1)).toList();
    assertThat(ids).doesNotHaveDuplicates();
    assertThat(
            Pattern.compile("(?:href=\"|url\\()#([^\")]*)")
                .matcher(page)
                .results()
                .map((MatchResult m) -> m.group(1))
                .toList())
        .isNotEmpty()
        .allMatch(ids::contains);
  }

  @Test
  void everyStepHasABoxAndEveryRunItsNumber() {
    String page = page(SamplePlan.usual());
    int steps = SamplePlan.usual().operations().size();
    assertThat(page.split("type=\"checkbox\"", -1)).hasSize(steps + 1);
    for (int i = 1; i <= 20; i++) {
      assertThat(page).contains("<span class=\"weldno\">W" + i + "</span>");
    }
  }

  @Test
  void saysFirstWhatCannotBeDone() {
    String page = page(SamplePlan.refused());
    assertThat(page.indexOf("no machine fuses its root"))
        .isPositive()
        .isLessThan(page.indexOf("id=\"cautions\""));
  }

  @Test
  void isTheSameToTheByte() {
    assertThat(page(SamplePlan.usual())).isEqualTo(page(SamplePlan.usual()));
  }

  @Test
  void theFilesUnitsComeFirst() {
    String inches = new PlanReport(SamplePlan.usual(), LengthUnit.IN).page();
    // The ribs' runs are 100 mm long: 3-15/16 in to the nearest sixteenth.
    assertThat(inches).contains("3-15/16 in <span class=\"other\">(100 mm)</span>");
    assertThat(page(SamplePlan.usual()))
        .contains("100 mm <span class=\"other\">(3-15/16 in)</span>");
  }
}
