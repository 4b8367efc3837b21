package handwheel.reader;

import handwheel.diagnostics.NearestWords;
import handwheel.units.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** Says what is wrong with the unit of a figure. */
final class UnitFault {
  /** What people write, and what is meant. Words they are read by nowhere else. */
  private static final Map<String, String> OTHER_NAMES = otherNames();

  private final YamlNode.Scalar scalar;
  private final Wanted wanted;
  private final Findings findings;

  UnitFault(YamlNode.Scalar scalar, Wanted wanted, Findings findings) {
    this.scalar = scalar;
    this.wanted = wanted;
    this.findings = findings;
  }

  void missing() {
    findings.add(
        FindingId.MISSING_UNIT,
        scalar.spot(),
        Say.quoted(scalar.text()) + " has no unit; " + wanted.words() + " was expected",
        "Write the unit behind the figure: " + wanted.offer() + ".");
  }

  void unknown(String symbol, int index) {
    String meant = OTHER_NAMES.getOrDefault(symbol.toLowerCase(Locale.ROOT), "");
    List<String> near = near(symbol);
    String nearest = near.isEmpty() ? wanted.offer() : Say.quoted(near);
    boolean isWanted = wanted.symbols().stream().anyMatch(w -> meant.contains("`" + w + "`"));
    String offer = isWanted ? meant : nearest;
    findings.add(
        FindingId.UNKNOWN_UNIT,
        scalar.spotAt(index),
        Say.quoted(symbol) + " is no unit; " + wanted.words() + " was expected",
        "Write " + offer + ".");
  }

  void wrong(Unit unit) {
    boolean isMinute = unit == Unit.METRE && wanted.equals(Wanted.TIME);
    findings.add(
        FindingId.WRONG_UNIT,
        scalar.spot(),
        Say.quoted(scalar.text())
            + " is "
            + Say.a(unit.dimension().words())
            + " where "
            + wanted.words()
            + " was expected",
        isMinute
            ? "`m` is the metre; minutes are written `min`."
            : "Units that fit: " + Say.quoted(wanted.symbols()) + ".");
  }

  private List<String> near(String symbol) {
    List<String> sameLetters =
        Arrays.stream(Unit.values())
            .map(Unit::symbol)
            .filter(s -> s.equalsIgnoreCase(symbol))
            .toList();
    return sameLetters.isEmpty()
        ? NearestWords.to(Say.shown(symbol), wanted.symbols())
        : sameLetters;
  }

  private static Map<String, String> otherNames() {
    Map<String, String> names = new TreeMap<>();
    put(names, "`s`", "sec", "secs", "second", "seconds");
    put(names, "`min`", "mins", "minute", "minutes");
    put(names, "`h`", "hr", "hrs", "hour", "hours");
    put(names, "`in`", "inch", "inches", "\"", "in.");
    put(names, "`ft`", "feet", "foot", "'", "ft.");
    put(names, "`m`", "metre", "metres", "meter", "meters");
    put(names, "`psig` above the atmosphere or `psia` absolute", "psi", "lb/in2");
    put(names, "`lb`", "lbs", "pound", "pounds");
    put(names, "`F`", "°f", "degf", "deg f", "degrees f", "fahrenheit");
    put(names, "`C`", "°c", "degc", "deg c", "degrees c", "celsius");
    put(names, "`%`", "percent", "per cent", "pct");
    put(names, "`lb/h`", "lb/hr", "lbs/hr", "lbs/h", "pph");
    put(names, "`klb/h`", "klb/hr", "klbs/hr", "klbs/h");
    put(names, "`inWG`", "inh2o", "in wg", "iwg", "in. wg", "in h2o");
    put(names, "`Pa`, in full figures", "kpa", "mpa", "bar");
    return names;
  }

  private static void put(Map<String, String> names, String meant, String... written) {
    for (String w : written) {
      names.put(w, meant);
    }
  }
}
