package handwheel.reader;

import handwheel.casualty.Bound;
import handwheel.plant.Quantity;
import handwheel.units.Measure;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads bounds on true values and on what gauges show. */
final class BoundReader {
  static final String BELOW = "below";
  static final String ABOVE = "above";
  static final List<String> SIDES = List.of(BELOW, ABOVE);

  private BoundReader() {}

  /** Reads a figure that can be compared with a true value, as that value's SI figure. */
  static NodeReader<Double> si(Quantity quantity) {
    return (node, findings) -> measure(quantity).read(node, findings).map(m -> si(quantity, m));
  }

  /** Reads a figure that can be compared with a true value. */
  static NodeReader<Measure> measure(Quantity quantity) {
    return Measures.measure(Wanted.of(quantity));
  }

  /** Reads the one bound of a mapping that may have {@code below} or {@code above}. */
  static Optional<Bound> bound(MapNode map, NodeReader<Double> figure) {
    return map.oneOf(SIDES)
        .flatMap(side -> map.get(side, figure).map(si -> new Bound(side.equals(BELOW), si)));
  }

  /** Returns a measure that fits as the quantity's SI figure. */
  static double si(Quantity quantity, Measure measure) {
    OptionalDouble si = quantity.si(measure);
    return si.orElseThrow(() -> new IllegalArgumentException(measure.unit() + " does not fit"));
  }
}
