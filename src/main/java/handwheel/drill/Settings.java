package handwheel.drill;

import handwheel.plant.Port;
import handwheel.ship.Setting;
import handwheel.units.Measure;
import handwheel.units.Unit;
import java.util.Optional;
import java.util.OptionalDouble;

/** Turns what was said into a port's position. */
final class Settings {
  private Settings() {}

  /** Returns the position, SI or index of the word; empty if the setting does not fit the port. */
  static OptionalDouble of(Optional<Setting> setting, Port port) {
    if (setting.isEmpty()) {
      return OptionalDouble.empty();
    }
    int word = port.words().indexOf(setting.get().text());
    if (word >= 0) {
      return OptionalDouble.of(word);
    }
    Optional<Measure> measure = setting.get().measure();
    return measure.isPresent() && fits(measure.get().unit(), port)
        ? OptionalDouble.of(measure.get().si())
        : OptionalDouble.empty();
  }

  private static boolean fits(Unit unit, Port port) {
    return port.kind() != Port.Kind.CHOICE && unit.dimension() == port.unit().dimension();
  }
}
