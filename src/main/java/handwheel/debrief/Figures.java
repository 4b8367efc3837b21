package handwheel.debrief;

import handwheel.plant.Quantity;
import handwheel.units.Measure;
import handwheel.units.Unit;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Puts the figures of a score sheet as people of the trade read them. */
final class Figures {
  private static final Pattern TRUTH =
      Pattern.compile("([a-z0-9-]+(?:\\.[a-z0-9-]+)+) (-?[0-9]+(?:\\.[0-9]+)?)(?: .*)?");
  private static final Pattern MEASURE = Pattern.compile("(-?[0-9]+\\.[0-9]+) ([A-Za-z%]+)");
  private static final Pattern YES_OR_NO = Pattern.compile(".*\\.(lit|running|tripped|burning)");

  private static final Pattern LEAK = Pattern.compile("leak\\.([a-z0-9-]+)\\.flow");

  private Figures() {}

  /** Returns a reading with its figures rounded as a gauge shows them, and without inner names. */
  static String text(String reading) {
    Matcher truth = TRUTH.matcher(reading);
    return truth.matches() ? truth(truth.group(1), truth.group(2)) : rounded(reading);
  }

  private static String truth(String id, String si) {
    double value = Double.parseDouble(si);
    return isYesOrNo(id) ? state(id, value > 0) : name(id) + " " + measure(id, value);
  }

  /** Returns an inner name in words. */
  static String name(String id) {
    Matcher leak = LEAK.matcher(id);
    return (leak.matches() ? "flow out of the " + leak.group(1) : id.replace('.', ' '))
        .replace('-', ' ');
  }

  /** Returns what is so or not so, such as {@code a furnace is lit}. */
  static String state(String id, boolean isSo) {
    String all = id.replaceFirst("([a-z]+)\\.any\\.", "a $1.");
    int last = all.lastIndexOf('.');
    String what = all.substring(0, last).replace('.', ' ').replace('-', ' ');
    return what + (isSo ? " is " : " is not ") + all.substring(last + 1);
  }

  /** Returns whether a value is so or not so. */
  static boolean isYesOrNo(String id) {
    return YES_OR_NO.matcher(id).matches();
  }

  /**
   * Returns an SI figure of an inner name in the units of the trade; what is no quantity is a leak.
   */
  static String measure(String id, double si) {
    Unit unit = Quantity.ofId(id).map(q -> trade(q.unit())).orElse(Unit.KG_PER_S);
    Measure measure = Measure.ofSi(si, unit);
    return unit == Unit.ONE ? measure.figureText() : measure.text();
  }

  private static Unit trade(Unit si) {
    return switch (si.dimension()) {
      case ABSOLUTE_PRESSURE -> Unit.PSIA;
      case GAUGE_PRESSURE -> Unit.PSIG;
      case TEMPERATURE -> Unit.FAHRENHEIT;
      case LENGTH -> Unit.INCH;
      case TIME,
          MASS,
          MASS_FLOW,
          VOLUME,
          VOLUME_FLOW,
          POWER,
          FRACTION,
          SPEED,
          AREA,
          RATE,
          DENSITY,
          HEATING_RATE ->
          si;
    };
  }

  private static String rounded(String text) {
    return MEASURE.matcher(text).replaceAll(m -> Matcher.quoteReplacement(rounded(m.group(1), m)));
  }

  private static String rounded(String figure, java.util.regex.MatchResult m) {
    Optional<Unit> unit = Unit.ofSymbol(m.group(2)).filter(u -> u != Unit.SECOND);
    return unit.map(u -> new Measure(Double.parseDouble(figure), u).text()).orElse(m.group());
  }
}
