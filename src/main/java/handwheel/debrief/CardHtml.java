package handwheel.debrief;

import java.util.List;

/** A card as one page of HTML, to be printed; no script, nothing loaded from anywhere. */
public final class CardHtml {
  private static final String STYLE =
      "body{font:11pt/1.4 sans-serif;max-width:48em;margin:1em auto;padding:0 1em}"
          + "table{border-collapse:collapse;width:100%}"
          + "th,td{border:1px solid #555;padding:.2em .4em;text-align:left;vertical-align:top}"
          + "h2{break-after:avoid}tr,li{break-inside:avoid}";

  private final StringBuilder out = new StringBuilder();

  private CardHtml() {}

  /**
   * Prints a card.
   *
   * @param card the card
   * @return the page
   */
  public static String page(Card card) {
    CardHtml html = new CardHtml();
    String title = escaped(card.title());
    html.line("<!DOCTYPE html>");
    html.line("<html lang=\"en\"><head><meta charset=\"utf-8\">");
    html.line("<title>DRILL CARD: " + title + "</title><style>" + STYLE + "</style></head><body>");
    html.line("<p><strong>" + escaped(Card.STANDING) + "</strong></p>");
    html.line("<h1>DRILL CARD: " + title + "</h1>");
    card.sections().forEach(html::section);
    html.line("</body></html>");
    return html.out.toString();
  }

  private void section(Card.Section section) {
    line("<h2>" + escaped(section.heading()) + "</h2>");
    if (section.columns().isEmpty()) {
      line("<ul>");
      section.rows().forEach(r -> line("<li>" + escaped(r.get(0)) + "</li>"));
      line("</ul>");
      return;
    }
    line("<table><thead><tr>");
    section.columns().forEach(c -> line("<th scope=\"col\">" + escaped(c) + "</th>"));
    line("</tr></thead><tbody>");
    section.rows().forEach(this::row);
    line("</tbody></table>");
  }

  private void row(List<String> cells) {
    line("<tr><th scope=\"row\">" + escaped(cells.get(0)) + "</th>");
    cells.stream().skip(1).forEach(c -> line("<td>" + escaped(c) + "</td>"));
    line("</tr>");
  }

  private void line(String text) {
    out.append(text).append('\n');
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
