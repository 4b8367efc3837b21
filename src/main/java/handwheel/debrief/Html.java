package handwheel.debrief;

/** Text made safe inside HTML: what comes from scripts and people is never markup. */
final class Html {
  private static final char UNSEEN = '\uFFFD';

  private Html() {}

  static String text(String text) {
    StringBuilder out = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append("&quot;");
        case '\'' -> out.append("&#39;");
        case '\n', '\t', '\r' -> out.append(' ');
        default -> out.append(isHarmless(c) ? c : UNSEEN);
      }
    }
    return out.toString();
  }

  /** No control characters, and none that turn the direction of writing. */
  private static boolean isHarmless(char c) {
    return !Character.isISOControl(c) && Character.getType(c) != Character.FORMAT;
  }

  static String element(String tag, String text) {
    return "<" + tag + ">" + marked(text) + "</" + tag + ">";
  }

  /** Text between backticks is an order or an id, word for word. */
  static String marked(String text) {
    String[] parts = text.split("`", -1);
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < parts.length; i++) {
      boolean isCode = i % 2 == 1 && i < parts.length - 1;
      out.append(
          isCode
              ? "<code>" + text(parts[i]) + "</code>"
              : (i % 2 == 1 ? "`" : "") + text(parts[i]));
    }
    return out.toString();
  }
}
