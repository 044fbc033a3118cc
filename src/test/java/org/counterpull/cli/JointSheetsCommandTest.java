package org.counterpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JointSheetsCommandTest {
  @TempDir Path folder;

  /** The fields of ISO 15609-1, clause 4, in the words of the sheet. */
  private static final List<String> FIELDS =
      List.of(
          "manufacturer",
          "pWPS no.",
          "WPQR no.",
          "thickness",
          "outside diameter",
          "type",
          "preparation",
          "cleaning",
          "positions",
          "run sequence",
          "jigs",
          "tacks",
          "weaving",
          "torch angle",
          "gouging",
          "backing",
          "designation",
          "make and trade name",
          "size",
          "drying, handling",
          "shielding gas",
          "backing gas",
          "current and pole",
          "pulse",
          "current",
          "voltage",
          "travel",
          "wire feed",
          "preheat, at least",
          "interpass, at least",
          "interpass, at most",
          "heat input",
          "hydrogen release",
          "post-heating",
          "heat treatment",
          "process");

  private static final String GROOVES =
      """
      weldment: grooves
      units: mm
      steel: S355J2
      parts:
        a: {stock: flat 100 x 12, length: 300, start: [0,0,0]}
        b: {stock: flat 100 x 12, length: 300, start: [302,0,0]}
        c: {stock: flat 80 x 15, length: 80, onto: a, face: top, set: standing across, at: middle}
        d: {stock: flat 80 x 8, length: 90, onto: b, face: top, set: standing along, at: middle}
        e: {stock: round tube 40 x 5, length: 60, start: [352, 0, -60], along: z}
      joints:
        butt: {between: [b, a], weld: v, gap: 2}
        bevel: {between: [c, a], weld: double bevel, sides: both}
        stitch: {between: [d, b], weld: fillet, leg: 4, stitch: {length: 20, clear: 15}}
        ring: {between: [e, b], weld: fillet, leg: 4}
      machines:
        mag: {process: mag, current: 30..250 A, duty: 35% at 250 A, supply: 400 V 16 A three-phase}
      """;

  @ParameterizedTest
  @ValueSource(strings = {"pit-cover", "hinge-bar", "cradle", "thick-bracket"})
  void everyJointOfTheExamplesHasASheetWithEveryField(String example) throws IOException {
    CommandRun run =
        CommandRun.of(
            "joint", "sheets", "examples/" + example + ".yaml", "--out", folder.toString());
    assertThat(run.code()).isZero();
    String[] sheets = page().split("<article");
    assertThat(sheets.length).isGreaterThan(2);
    for (int i = 1; i < sheets.length; i++) {
      for (String field : FIELDS) {
        assertThat(sheets[i]).contains("<dt>" + field + "</dt>");
      }
      assertThat(sheets[i]).contains("weld-symbol", "joint-section", "Not qualified");
    }
  }

  @Test
  void isoPutsTheArrowSideOnTheSolidLineAndTheOtherOnADashedOne() throws IOException {
    String ring = symbol("iso", "ring");
    assertThat(ring).contains(">z4<").contains("stroke-dasharray").contains("<circle");
    // Above the solid line at y 84: the triangle's top lies at 60.
    assertThat(ring).contains(",60 ");
  }

  @Test
  void awsPutsTheArrowSideBelowOneLine() throws IOException {
    String ring = symbol("aws", "ring");
    assertThat(ring).contains(">4<").doesNotContain("stroke-dasharray").contains("<circle");
    assertThat(ring).contains(",108 ").contains(">GMAW<");
  }

  @Test
  void bothSidesAlikeNeedNoDashedLine() throws IOException {
    String stitch = symbol("iso", "stitch");
    assertThat(stitch).doesNotContain("stroke-dasharray").doesNotContain("<circle");
    assertThat(count(stitch, ">z4<")).isEqualTo(2);
    assertThat(count(stitch, "2 \u00d7 20 \\(15\\)")).isEqualTo(2);
    // Pitch is length and clear distance together: 20 + 15.
    assertThat(count(symbol("aws", "stitch"), ">20-35<")).isEqualTo(2);
  }

  @Test
  void aBevelBreaksItsArrowTowardsThePreparedPart() throws IOException {
    String bevel = symbol("iso", "bevel");
    assertThat(bevel).contains(">to c<");
    assertThat(count(bevel, ">45\u00b0<")).isEqualTo(2);
    // Spray digs, so the V is 50 degrees instead of 60.
    assertThat(symbol("iso", "butt")).doesNotContain(">to ").contains(">50\u00b0<");
  }

  @Test
  void aFullPenetrationButtSaysCjpInTheAmericanTail() throws IOException {
    assertThat(symbol("aws", "butt")).contains(">CJP<");
    assertThat(symbol("iso", "butt")).doesNotContain("CJP").contains(">135<");
  }

  private String symbol(String standard, String joint) throws IOException {
    Path file = Files.writeString(folder.resolve("grooves.yaml"), GROOVES);
    CommandRun run =
        CommandRun.of(
            "joint", "sheets", file.toString(), "--symbols", standard, "--out", folder.toString());
    assertThat(run.err()).isEmpty();
    Matcher symbol =
        Pattern.compile(
                "<svg[^>]*weld-symbol[^>]*><title>Weld symbol of joint "
                    + joint
                    + "</title>.*?</svg>",
                Pattern.DOTALL)
            .matcher(page());
    assertThat(symbol.find()).as(joint).isTrue();
    return symbol.group();
  }

  private static int count(String text, String pattern) {
    return (int) Pattern.compile(pattern).matcher(text).results().count();
  }

  private String page() throws IOException {
    return Files.readString(folder.resolve("joint-sheets.html"));
  }
}
