package handwheel.reader;

import handwheel.ship.Gauge;
import handwheel.units.Measure;
import java.util.Optional;

/** Reads a bound on what a gauge shows, as SI figure; one off the scale is never reached. */
final class ScaleBound implements NodeReader<Double> {
  private final Gauge gauge;

  ScaleBound(Gauge gauge) {
    this.gauge = gauge;
  }

  @Override
  public Optional<Double> read(YamlNode node, Findings findings) {
    Optional<Measure> measure = BoundReader.measure(gauge.of()).read(node, findings);
    Optional<Double> si = measure.map(m -> BoundReader.si(gauge.of(), m));
    si.ifPresent(s -> checkScale(gauge.of().in(gauge.unit(), s), node, findings));
    return si;
  }

  private void checkScale(double shown, YamlNode node, Findings findings) {
    if (shown < gauge.low() || shown > gauge.high()) {
      findings.add(
          FindingId.OFF_SCALE,
          node.spot(),
          "this is off the scale of "
              + Say.quoted(gauge.id())
              + ", which shows "
              + Say.figure(gauge.low())
              + " to "
              + Say.figure(gauge.high())
              + " "
              + gauge.unit().symbol(),
          "");
    }
  }
}
