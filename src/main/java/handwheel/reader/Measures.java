package handwheel.reader;

import handwheel.plant.Plant;
import handwheel.units.Measure;
import handwheel.units.Unit;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads figures with their units. A figure without one is never guessed at. */
final class Measures {
  /** A figure, no more. */
  static final String FIGURE = "[+-]?(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)";

  private static final Pattern FIGURE_AND_UNIT =
      Pattern.compile("(" + FIGURE + ") ?((?:[\\p{L}%°\"']|(?<= )1/).*)");
  private static final Pattern CLOCK = Pattern.compile("([0-9]{1,3}):([0-5][0-9])");
  private static final Pattern COMMA = Pattern.compile("[+-]?[0-9]+,[0-9]+.*");
  private static final double ROUNDING = 1e-6;

  private Measures() {}

  /** Reads a figure of a wanted kind. */
  static NodeReader<Measure> measure(Wanted wanted) {
    return (node, findings) ->
        Scalars.scalar(node, wanted.words(), findings).flatMap(s -> measure(s, wanted, findings));
  }

  /** Reads a figure of a wanted kind as SI value. */
  static NodeReader<Double> si(Wanted wanted) {
    return (node, findings) -> measure(wanted).read(node, findings).map(Measure::si);
  }

  /** Reads a figure of a wanted kind between two ends, as SI value. */
  static NodeReader<Double> si(Wanted wanted, double least, double most) {
    return (node, findings) ->
        Scalars.scalar(node, wanted.words(), findings)
            .flatMap(
                s ->
                    measure(s, wanted, findings)
                        .filter(m -> isInside(m, least, most, s, findings))
                        .map(Measure::si));
  }

  private static boolean isInside(
      Measure measure, double least, double most, YamlNode.Scalar scalar, Findings findings) {
    boolean isInside = measure.si() >= least && measure.si() <= most;
    if (!isInside) {
      Unit unit = measure.unit();
      findings.add(
          FindingId.OUT_OF_RANGE,
          scalar.spot(),
          Say.quoted(scalar.text())
              + " is outside "
              + Say.figure(unit.fromSi(least))
              + " to "
              + Say.figure(unit.fromSi(most))
              + (unit == Unit.ONE ? "" : " " + unit.symbol()),
          "");
    }
    return isInside;
  }

  /** Reads a time as ticks, at least so many. */
  static NodeReader<Long> ticks(long least) {
    return (node, findings) ->
        Scalars.scalar(node, Wanted.TIME.words(), findings).flatMap(s -> ticks(s, least, findings));
  }

  /** Reads a time that is a whole number of ticks, as seconds. */
  static NodeReader<Double> wholeTicksS(long least) {
    return (node, findings) -> ticks(least).read(node, findings).map(t -> t * Plant.TICK_S);
  }

  /** Reads a text as a time in ticks, at least so many. */
  static Optional<Long> ticks(YamlNode.Scalar scalar, long least, Findings findings) {
    return measure(scalar, Wanted.TIME, findings).flatMap(m -> ticks(m, scalar, least, findings));
  }

  private static Optional<Long> ticks(
      Measure time, YamlNode.Scalar at, long least, Findings findings) {
    double ticks = time.si() / Plant.TICK_S;
    long whole = Math.round(ticks);
    boolean isInside = whole >= least && time.si() <= Limits.TIME_S;
    if (!isInside) {
      findings.add(
          FindingId.OUT_OF_RANGE,
          at.spot(),
          Say.quoted(at.text())
              + " is outside "
              + Say.figure(least * Plant.TICK_S)
              + " s to "
              + Limits.TIME_S
              + " s",
          "");
    } else if (Math.abs(ticks - whole) > ROUNDING) {
      findings.add(
          FindingId.NOT_WHOLE_TICKS,
          at.spot(),
          Say.quoted(at.text())
              + " is no whole number of ticks of "
              + Say.figure(Plant.TICK_S)
              + " s",
          "The nearest is " + Say.figure(Math.max(1, whole) * Plant.TICK_S) + " s.");
      return Optional.empty();
    }
    return isInside ? Optional.of(whole) : Optional.empty();
  }

  /** Reads a text as a figure of a wanted kind. */
  static Optional<Measure> measure(YamlNode.Scalar scalar, Wanted wanted, Findings findings) {
    String text = scalar.text().strip();
    Matcher split = FIGURE_AND_UNIT.matcher(text);
    if (text.length() <= Limits.NAME_CHARS && Scalars.isNumber(text)) {
      return bare(scalar, text, wanted, findings);
    }
    if (text.length() > Limits.NAME_CHARS || COMMA.matcher(text).matches() || !split.matches()) {
      notAQuantity(scalar, wanted, findings);
      return Optional.empty();
    }
    Optional<Unit> unit = Unit.ofSymbol(split.group(2));
    if (unit.isEmpty()) {
      new UnitFault(scalar, wanted, findings)
          .unknown(split.group(2), scalar.text().indexOf(split.group(2)));
    } else if (!wanted.units().contains(unit.get())) {
      new UnitFault(scalar, wanted, findings).wrong(unit.get());
      return Optional.empty();
    }
    return unit.map(u -> new Measure(Double.parseDouble(split.group(1)), u))
        .filter(m -> isFinite(m, scalar, findings));
  }

  private static Optional<Measure> bare(
      YamlNode.Scalar scalar, String text, Wanted wanted, Findings findings) {
    if (!wanted.mayBeBare()) {
      new UnitFault(scalar, wanted, findings).missing();
      return Optional.empty();
    }
    Measure measure = new Measure(Double.parseDouble(text), Unit.ONE);
    return isFinite(measure, scalar, findings) ? Optional.of(measure) : Optional.empty();
  }

  private static boolean isFinite(Measure measure, YamlNode.Scalar scalar, Findings findings) {
    boolean isFinite = Math.abs(measure.si()) <= Limits.FIGURE;
    if (!isFinite) {
      findings.add(
          FindingId.OUT_OF_RANGE,
          scalar.spot(),
          Say.quoted(scalar.text()) + " is larger than any figure here",
          "");
    }
    return isFinite;
  }

  private static void notAQuantity(YamlNode.Scalar scalar, Wanted wanted, Findings findings) {
    findings.add(
        FindingId.NOT_A_QUANTITY,
        scalar.spot(),
        Say.quoted(scalar.text()) + " stands here where " + wanted.words() + " was expected",
        mend(scalar.text().strip(), wanted));
  }

  private static String mend(String text, Wanted wanted) {
    Matcher clock = CLOCK.matcher(text);
    if (clock.matches() && wanted.units().contains(Unit.SECOND)) {
      int seconds = 60 * Integer.parseInt(clock.group(1)) + Integer.parseInt(clock.group(2));
      return "Minutes and seconds are not written with a colon; write `" + seconds + " s`.";
    }
    if (COMMA.matcher(text).matches()) {
      return "Decimals are written with a point, thousands without a sign.";
    }
    return wanted.mayBeBare()
        ? "Write a number, such as `0.5`."
        : "Write a figure and its unit, such as " + wanted.example() + ".";
  }
}
