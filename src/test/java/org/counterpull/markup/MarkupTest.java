package org.counterpull.markup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Markup that can't be broken by what is written into it. */
class MarkupTest {
  @Test
  void escapesTextAndAttributes() {
    String text = "<b>\"'&\u0000";
    assertThat(new Markup().element("p", text, "title", text).toString())
        .isEqualTo(
            "<p title=\"&lt;b&gt;&quot;&#39;&amp;\uFFFD\">&lt;b&gt;&quot;&#39;&amp;\uFFFD</p>");
  }

  @Test
  void takesNoScriptsAndNoLinksOutside() {
    assertThatThrownBy(() -> new Markup().empty("a", "onclick", "x"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Markup().empty("a", "href", "javascript:x"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Markup().open("p><script"))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void isClosedBeforeItIsUsed() {
    assertThatThrownBy(() -> new Markup().open("p").toString())
        .isInstanceOf(IllegalStateException.class);
  }

  @ParameterizedTest
  @CsvSource({"1, 1", "1.5, 1.5", "0.126, 0.13", "-0.001, 0", "1234567, 1234567", "-2.5, -2.5"})
  void coordinates(double value, String text) {
    assertThat(Markup.number(value)).isEqualTo(text);
  }
}
