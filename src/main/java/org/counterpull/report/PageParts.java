package org.counterpull.report;

import java.util.List;
import org.counterpull.markup.Markup;

/** Pieces that the page is made of: quantities, tables, lists, headed sections. */
final class PageParts {
  private PageParts() {}

  /** A quantity: the file's unit, then the other in grey. */
  static Markup shown(Shown shown) {
    Markup out = new Markup().text(shown.first());
    if (!shown.other().isEmpty()) {
      out.text(" ").element("span", "(" + shown.other() + ")", "class", "other");
    }
    return out;
  }

  /** A table; on a narrow screen each row becomes a card with the heads as labels. */
  static Markup table(Table table) {
    Markup out = new Markup();
    if (table.isEmpty()) {
      return out;
    }
    out.open("table").open("thead").open("tr");
    table.heads().forEach(head -> out.element("th", head, "scope", "col"));
    out.close().close().open("tbody");
    for (List<Shown> row : table.rows()) {
      out.open("tr");
      out.open("th", "scope", "row").add(shown(row.get(0))).close();
      for (int i = 1; i < row.size(); i++) {
        out.open("td", "data-label", table.heads().get(i));
        out.open("span").add(shown(row.get(i))).close().close();
      }
      out.closeLine();
    }
    return out.close().close();
  }

  static Markup lines(List<PlanWords.Line> lines) {
    Markup out = new Markup().open("dl");
    for (PlanWords.Line line : lines) {
      out.element("dt", line.label()).open("dd").add(shown(line.value())).closeLine();
    }
    return out.close();
  }

  static Markup bullets(List<String> texts) {
    Markup out = new Markup();
    if (texts.isEmpty()) {
      return out;
    }
    out.open("ul");
    texts.forEach(text -> out.element("li", text).text("\n"));
    return out.close();
  }

  /** A section with its heading. */
  static Markup section(String id, String title, Markup... content) {
    Markup out = new Markup().open("section", "id", id).element("h2", title).text("\n");
    for (Markup piece : content) {
      out.add(piece).text("\n");
    }
    return out.closeLine();
  }

  /** A drawing in two widths, for sheets and for phones. */
  static Markup drawing(Markup wide, Markup narrow) {
    Markup out = new Markup();
    out.open("div", "class", "drawing wide").add(wide).closeLine();
    return out.open("div", "class", "drawing narrow").add(narrow).closeLine();
  }
}
