package handwheel.reader;

import handwheel.plant.Quantity;
import handwheel.units.Dimension;
import handwheel.units.Unit;
import java.util.Arrays;
import java.util.List;

/**
 * What kind of figure is wanted.
 *
 * @param words the kind with its article, such as {@code a time}
 * @param units the units it may carry; with {@link Unit#ONE} among them it may be a bare number
 */
record Wanted(String words, List<Unit> units) {
  private static final int MANY = 10;

  static final Wanted TIME = of(Dimension.TIME);
  static final Wanted LENGTH = of(Dimension.LENGTH);
  static final Wanted NUMBER = new Wanted("a number", List.of(Unit.ONE));

  Wanted {
    units = List.copyOf(units);
  }

  /** Wants a figure of one dimension. */
  static Wanted of(Dimension dimension) {
    return new Wanted(Say.a(dimension.words()), Unit.of(dimension));
  }

  /** Wants a figure that can be compared with a true value. */
  static Wanted of(Quantity quantity) {
    List<Unit> units = Arrays.stream(Unit.values()).filter(quantity::shows).toList();
    boolean isPressure = units.contains(Unit.PSIG);
    String words = isPressure ? "a pressure" : Say.a(quantity.unit().dimension().words());
    return new Wanted(words, units);
  }

  /** Returns a figure of the kind in quotes, as an example. */
  String example() {
    return units.contains(Unit.SECOND) ? "`5 s`" : "`5 " + units.get(0).symbol() + "`";
  }

  /** Returns the units in quotes, or examples if they are many. */
  String offer() {
    return units.size() > MANY ? "such as `5 s`, `0.5 in` or `600 psig`" : Say.quoted(symbols());
  }

  boolean mayBeBare() {
    return units.contains(Unit.ONE);
  }

  /** Returns the symbols of the units, for people. */
  List<String> symbols() {
    return units.stream().filter(u -> u != Unit.ONE).map(Unit::symbol).toList();
  }
}
