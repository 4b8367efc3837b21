package handwheel.reader;

import handwheel.diagnostics.NearestWords;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** The small words of a finding's message. */
final class Say {
  private static final int SHOWN_CHARS = 60;
  private static final MathContext SIX_DIGITS = new MathContext(6, RoundingMode.HALF_UP);

  private Say() {}

  /** Returns a text in back-quotes, on one line, its end left out if it is long. */
  static String quoted(String text) {
    return "`" + shown(text).replace('\n', ' ') + "`";
  }

  /** Returns words in back-quotes with commas between them. */
  static String quoted(Collection<String> words) {
    return words.stream().map(Say::quoted).collect(Collectors.joining(", "));
  }

  /** Returns words with the right article, such as {@code an area}. */
  static String a(String words) {
    return ("aeio".indexOf(words.charAt(0)) >= 0 ? "an " : "a ") + words;
  }

  /** Returns a figure with at most six digits, without an exponent. */
  static String figure(double value) {
    return Double.isFinite(value)
        ? new BigDecimal(value).round(SIX_DIGITS).stripTrailingZeros().toPlainString()
        : "?";
  }

  /** Returns a sentence that offers the valid words nearest to one; may be empty. */
  static String offer(String word, Collection<String> valid) {
    List<String> sameLetters = valid.stream().filter(v -> v.equalsIgnoreCase(word)).toList();
    return sameLetters.isEmpty()
        ? NearestWords.offer(shown(word), valid)
        : "Did you mean " + quoted(sameLetters) + "?";
  }

  /** Returns a text, its end left out if it is long. */
  static String shown(String text) {
    return text.codePointCount(0, text.length()) <= SHOWN_CHARS
        ? text
        : text.substring(0, text.offsetByCodePoints(0, SHOWN_CHARS)) + "…";
  }
}
