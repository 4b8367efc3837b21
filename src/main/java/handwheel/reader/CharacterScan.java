package handwheel.reader;

import handwheel.diagnostics.SourceSpot;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;

/**
 * Looks at every character of a text once. The printable ones are those of YAML 1.2.2 section 5.1;
 * beyond that, characters are refused that nobody can see or that look like a blank and are none.
 */
final class CharacterScan {
  private final String file;
  private final String text;
  private final Findings findings;
  private final StringBuilder cleaned = new StringBuilder();
  private final EnumSet<FindingId> onThisLine = EnumSet.noneOf(FindingId.class);
  private int line = 1;
  private int column = 1;
  private boolean isIndent = true;
  private boolean isTrusted = true;

  CharacterScan(String file, String text, Findings findings) {
    this.file = file;
    this.text = text;
    this.findings = findings;
  }

  /** Returns the text with plain blanks for odd ones; empty if its structure cannot be trusted. */
  Optional<String> cleaned() {
    int i = 0;
    while (i < text.length()) {
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      boolean isLineEnd = c == '\n' || (c == '\r' && !text.startsWith("\n", i));
      cleaned.appendCodePoint(c == '\n' || c == '\r' ? c : seen(c, i));
      advance(c, isLineEnd);
    }
    return isTrusted ? Optional.of(cleaned.toString()) : Optional.empty();
  }

  private void advance(int c, boolean isLineEnd) {
    if (isLineEnd) {
      line++;
      column = 1;
      isIndent = true;
      onThisLine.clear();
    } else {
      column++;
      isIndent &= c == ' ' || c == '\t' || isOddBlank(c);
    }
  }

  private int seen(int c, int next) {
    if (c == '\t') {
      return tab(next);
    }
    if (isOddBlank(c)) {
      report(FindingId.ODD_BLANK, name(c) + " stands here; it looks like a blank and is none");
      return ' ';
    }
    if (isHidden(c)) {
      isTrusted = false;
      report(FindingId.HIDDEN_CHARACTER, name(c) + " stands here; nobody can see it");
    } else if (!isPrintable(c)) {
      isTrusted = false;
      report(FindingId.CONTROL_CHARACTER, "control character " + name(c) + " stands here");
    }
    return c;
  }

  private int tab(int next) {
    if (isIndent && isBlankOrComment(next)) {
      return ' ';
    }
    report(FindingId.TAB, isIndent ? "a tab indents this line" : "a tab stands here");
    isTrusted &= !isIndent;
    return ' ';
  }

  private boolean isBlankOrComment(int from) {
    int i = from;
    while (i < text.length() && (text.charAt(i) == ' ' || text.charAt(i) == '\t')) {
      i++;
    }
    return i == text.length() || "\r\n#".indexOf(text.charAt(i)) >= 0;
  }

  private void report(FindingId id, String message) {
    if (onThisLine.add(id)) {
      findings.add(id, new SourceSpot(file, line, column), message, mend(id));
    }
  }

  private static String mend(FindingId id) {
    return id == FindingId.TAB || id == FindingId.ODD_BLANK
        ? "Put plain blanks in its place."
        : "Delete it; writing the line anew is the surest way.";
  }

  private static boolean isOddBlank(int c) {
    return c != ' ' && Character.getType(c) == Character.SPACE_SEPARATOR;
  }

  /** Formatting characters, and the line ends that only YAML 1.1 knows. */
  private static boolean isHidden(int c) {
    return Character.getType(c) == Character.FORMAT || c == 0x85 || c == 0x2028 || c == 0x2029;
  }

  private static boolean isPrintable(int c) {
    return (c >= 0x20 && c <= 0x7E)
        || (c >= 0xA0 && c <= 0xD7FF)
        || (c >= 0xE000 && c <= 0xFFFD)
        || c >= 0x10000;
  }

  /** Returns whether a text must not hold this character. */
  static boolean isRefused(int c) {
    return isHidden(c) || !isPrintable(c);
  }

  /** Returns the character's number as standards write it. */
  static String name(int c) {
    return String.format(Locale.ROOT, "U+%04X", c);
  }
}
