package handwheel.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A figure with its unit, such as {@code 600 psig}.
 *
 * @param figure the figure in {@code unit}
 * @param unit its unit
 */
public record Measure(double figure, Unit unit) {
  private static final Pattern TEXT =
      Pattern.compile("([+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+))(?: ?)(\\S+)");

  /**
   * Reads a figure with its unit; a blank between the two may be left out.
   *
   * @param text such as {@code 12 min} or {@code 60%}
   * @return the measure, or empty if the text is none
   */
  public static Optional<Measure> parse(String text) {
    Matcher m = TEXT.matcher(text.strip());
    if (!m.matches()) {
      return Optional.empty();
    }
    return Unit.ofSymbol(m.group(2)).map(u -> new Measure(Double.parseDouble(m.group(1)), u));
  }

  /**
   * Makes a measure from an SI value.
   *
   * @param si SI value of the unit's dimension
   * @param unit the unit to show it in
   * @return the measure
   */
  public static Measure ofSi(double si, Unit unit) {
    return new Measure(unit.fromSi(si), unit);
  }

  /**
   * Returns the SI value of the unit's dimension.
   *
   * @return SI value
   */
  public double si() {
    return unit.toSi(figure);
  }

  /**
   * Prints the figure with the unit's decimals, half up, and the unit.
   *
   * @return text such as {@code 600 psig}
   */
  public String text() {
    return figureText() + " " + unit.symbol();
  }

  /**
   * Prints the figure alone with the unit's decimals, half up.
   *
   * @return text such as {@code 600}
   */
  public String figureText() {
    if (Double.isNaN(figure) || Double.isInfinite(figure)) {
      return "?";
    }
    String s =
        new BigDecimal(figure).setScale(unit.decimals(), RoundingMode.HALF_UP).toPlainString();
    return isMinusZero(s) ? s.substring(1) : s;
  }

  private static boolean isMinusZero(String s) {
    return s.startsWith("-") && s.chars().skip(1).allMatch(c -> c == '0' || c == '.');
  }
}
