package handwheel.debrief;

import java.util.List;

/** Prints a page as one file that needs no script, no network and no other file. */
final class PageHtml implements Block.Visitor {
  private final StringBuilder out = new StringBuilder();
  private int charts;

  private PageHtml() {}

  static String of(Page page) {
    return new PageHtml().print(page);
  }

  private String print(Page page) {
    line("<!DOCTYPE html>");
    line("<html lang=\"en\">");
    line("<head>");
    line("<meta charset=\"utf-8\">");
    line("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">");
    line(
        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src"
            + " 'unsafe-inline'\">");
    line(Html.element("title", page.title()));
    line("<style>" + Style.CSS + "</style>");
    line("</head>");
    line("<body>");
    line("<header>");
    line("<p class=\"drill\">DRILL</p>");
    line(Html.element("h1", page.title()));
    line("</header>");
    contents(page);
    line("<main>");
    for (int i = 0; i < page.sections().size(); i++) {
      section(page.sections().get(i), i);
    }
    line("</main>");
    line(
        "<footer><p><strong>DRILL</strong>. The machine advises; the board decides. The ship's own"
            + " procedures, local codes and licensed practice come before this page.</p></footer>");
    line("</body>");
    line("</html>");
    return out.toString();
  }

  private void contents(Page page) {
    line("<nav aria-label=\"Contents\"><ul>");
    for (int i = 0; i < page.sections().size(); i++) {
      String title = Html.text(page.sections().get(i).title());
      line("<li><a href=\"#s" + i + "\">" + title + "</a></li>");
    }
    line("</ul></nav>");
  }

  private void section(Page.Section section, int number) {
    line("<section aria-labelledby=\"s" + number + "\">");
    line("<h2 id=\"s" + number + "\">" + Html.text(section.title()) + "</h2>");
    section.blocks().forEach(b -> b.accept(this));
    line("</section>");
  }

  private void line(String text) {
    out.append(text).append('\n');
  }

  @Override
  public void paragraph(Block.Paragraph block) {
    line(Html.element("p", block.text()));
  }

  @Override
  public void bullets(Block.Bullets block) {
    line("<ul>");
    block.items().forEach(item -> line(Html.element("li", item)));
    line("</ul>");
  }

  @Override
  public void notes(Block.Notes block) {
    line("<div class=\"note\">");
    line(Html.element("h3", block.heading()));
    line("<dl>");
    for (Block.Labelled l : block.texts()) {
      line("<div>" + Html.element("dt", l.label()) + Html.element("dd", l.text()) + "</div>");
    }
    line("</dl></div>");
  }

  @Override
  public void table(Block.Table block) {
    String name = Html.text(block.caption());
    line("<div class=\"wide\" role=\"region\" tabindex=\"0\" aria-label=\"" + name + "\">");
    line("<table>");
    line(Html.element("caption", block.caption()));
    line("<thead><tr>");
    block.head().forEach(h -> line("<th scope=\"col\">" + Html.marked(h) + "</th>"));
    line("</tr></thead>");
    line("<tbody>");
    block.rows().forEach(this::row);
    line("</tbody></table></div>");
  }

  private void row(List<String> cells) {
    line("<tr>");
    line("<th scope=\"row\">" + Html.marked(cells.get(0)) + "</th>");
    for (String cell : cells.subList(1, cells.size())) {
      String figure = TableText.isFigure(cell) ? " class=\"figure\"" : "";
      line("<td" + figure + ">" + Html.marked(cell) + "</td>");
    }
    line("</tr>");
  }

  @Override
  public void chart(Block.Chart block) {
    charts++;
    line(ChartSvg.of(block, "c" + charts));
    table(ChartSvg.table(block));
  }
}
