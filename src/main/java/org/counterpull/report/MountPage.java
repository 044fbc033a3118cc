package org.counterpull.report;

import java.util.List;
import org.counterpull.markup.Markup;
import org.counterpull.mount.MountAnswer;
import org.counterpull.mount.WayAnswer;

/** {@code mount.html}: the answer first, the ways side by side, the section, then each way. */
final class MountPage {
  private final List<MountAnswer> answers;
  private final List<String> leftOut;

  MountPage(List<MountAnswer> answers, List<String> leftOut) {
    this.answers = answers;
    this.leftOut = leftOut;
  }

  String html() {
    Markup out = new Markup().doctype();
    out.open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en").open("head");
    out.empty("meta", "charset", "utf-8");
    out.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    out.element("title", "Directly, or how else").style("/report/page.css").close();
    out.open("body").open("main").text("\n");
    out.open("div", "class", "head").element("p", "Mount", "class", "kind");
    out.element("h1", "Directly, or how else").close();
    for (MountAnswer answer : answers) {
      answer(out, answer);
    }
    if (!leftOut.isEmpty()) {
      out.add(PageParts.section("left-out", "Not looked at", PageParts.bullets(leftOut)));
    }
    out.element(
        "p",
        "This sheet plans; it certifies nothing. Alter a cylinder and its pressure is yours: prove it with"
            + " liquid, guarded, never with air. Anything that is lifted, ridden or stood under needs an"
            + " engineer.");
    return out.close().close().close().toString() + "\n";
  }

  private static void answer(Markup out, MountAnswer answer) {
    out.add(MountSection.of(answer));
    for (WayAnswer way : answer.ways()) {
      out.add(MountSection.way(way));
    }
    answer
        .hole()
        .ifPresent(h -> out.element("h3", "Hole of the lug").add(PageParts.bullets(h.words())));
    out.element("h3", "Not known").add(PageParts.bullets(answer.unknown()));
    out.element("h3", "Taken to be so").add(PageParts.bullets(answer.mount().assumptions()));
  }
}
