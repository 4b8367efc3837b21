package handwheel.board;

import java.util.List;

/**
 * Papers of a candidate as one HTML page: no script, no picture, nothing fetched. Headings in
 * order, table heads with scope, colours with a contrast above 7 to 1; informed by WCAG 2.2.
 */
public final class BoardPack {
  /** Ink and paper; a test works out their contrast. */
  static final String INK = "#1a1a1a";

  static final String PAPER = "#ffffff";

  private static final String STYLE =
      "body{font:1rem/1.5 sans-serif;color:"
          + INK
          + ";background:"
          + PAPER
          + ";max-width:60rem;margin:1rem auto;padding:0 1rem}"
          + "table{border-collapse:collapse;width:100%}"
          + "th,td{border:1px solid #595959;padding:.25rem .5rem;text-align:left;"
          + "vertical-align:top}"
          + ".wide{overflow-x:auto}.drill{border:2px solid;padding:.5rem}"
          + "@media print{body{max-width:none;font-size:9pt}section{break-inside:avoid}"
          + "thead{display:table-header-group}}";

  private BoardPack() {}

  /**
   * Writes the page.
   *
   * @param title whose papers they are
   * @param cautions what a reader must know first
   * @param sections the tables
   * @return a whole HTML document
   */
  public static String html(String title, List<String> cautions, List<Section> sections) {
    StringBuilder out = new StringBuilder("<!doctype html>\n<html lang=\"en\">\n<head>\n");
    out.append("<meta charset=\"utf-8\">\n<title>DRILL: ").append(text(title));
    out.append("</title>\n<meta name=\"viewport\" content=\"width=device-width\">\n<style>");
    out.append(STYLE).append("</style>\n</head>\n<body>\n<main>\n<h1>DRILL: ");
    out.append(text(title)).append("</h1>\n<div class=\"drill\">\n");
    cautions.forEach(c -> out.append("<p>").append(text(c)).append("</p>\n"));
    out.append("</div>\n");
    sections.forEach(s -> section(out, s));
    return out.append("</main>\n</body>\n</html>\n").toString();
  }

  private static void section(StringBuilder out, Section s) {
    out.append("<section>\n<h2>").append(text(s.title())).append("</h2>\n");
    if (s.rows().isEmpty()) {
      out.append("<p>None.</p>\n");
    } else {
      out.append("<div class=\"wide\" tabindex=\"0\" role=\"group\" aria-label=\"");
      out.append(text(s.title())).append("\">\n<table>\n<thead>\n<tr>");
      s.head().forEach(h -> out.append("<th scope=\"col\">").append(text(h)).append("</th>"));
      out.append("</tr>\n</thead>\n<tbody>\n");
      s.rows().forEach(r -> row(out, r));
      out.append("</tbody>\n</table>\n</div>\n");
    }
    if (!s.note().isEmpty()) {
      out.append("<p>").append(text(s.note())).append("</p>\n");
    }
    out.append("</section>\n");
  }

  private static void row(StringBuilder out, List<String> cells) {
    out.append("<tr><th scope=\"row\">").append(text(cells.get(0))).append("</th>");
    cells.subList(1, cells.size()).forEach(c -> out.append("<td>").append(text(c)).append("</td>"));
    out.append("</tr>\n");
  }

  static String text(String plain) {
    return plain
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
