package handwheel.screen;

import java.text.Normalizer;

/** Text for terminals that know nothing but ASCII; its width stays the same. */
public final class Ascii {
  private Ascii() {}

  /**
   * Returns the text in ASCII: plain letters for accented ones, strokes for lines.
   *
   * @param text text whose characters take one cell each
   * @return as many characters, all of them ASCII
   */
  public static String of(String text) {
    if (text.chars().allMatch(c -> c < 0x80)) {
      return text;
    }
    StringBuilder out = new StringBuilder(text.length());
    text.chars().forEach(c -> out.append(c < 0x80 ? (char) c : plain((char) c)));
    return out.toString();
  }

  private static char plain(char c) {
    return switch (c) {
      case '─', '━', '‐', '‑', '‒', '–', '—', '―' -> '-';
      case '│', '┃' -> '|';
      case '╵' -> ':';
      case '•' -> '*';
      case '‘', '’', '‚', '‛' -> '\'';
      case '“', '”', '„', '‟' -> '"';
      case '…' -> '.';
      case ' ' -> ' ';
      default -> c >= 0x2500 && c <= 0x257F ? '+' : letter(c);
    };
  }

  /** Returns the letter without its accents; a question mark if none is left. */
  private static char letter(char c) {
    char base = Normalizer.normalize(String.valueOf(c), Normalizer.Form.NFD).charAt(0);
    return base < 0x80 ? base : '?';
  }
}
