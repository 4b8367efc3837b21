package handwheel.reader;

import handwheel.casualty.Variation;
import handwheel.units.Measure;
import handwheel.units.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads what is drawn anew for each run. */
final class Variations {
  private Variations() {}

  private static List<Unit> units() {
    return Arrays.stream(Unit.values()).filter(u -> u != Unit.ONE).toList();
  }

  static Optional<Variation> read(String name, MapNode map) {
    Wanted any = new Wanted("a figure with its unit", units());
    Optional<Measure> from = map.get("from", Measures.measure(any));
    Optional<Measure> to =
        from.flatMap(f -> map.get("to", Measures.measure(Wanted.of(f.unit().dimension()))));
    if (from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    if (from.get().si() > to.get().si()) {
      map.findings()
          .add(
              FindingId.NOT_A_RANGE,
              map.spot(),
              "`from` is above `to`",
              "Write the lower end first.");
      return Optional.empty();
    }
    return Optional.of(new Variation(name, from.get().si(), to.get().si(), from.get().unit()));
  }
}
