package handwheel.plant;

import java.util.List;

/**
 * A steam-driven forced-draft blower with a hand steam valve and no governor.
 *
 * <p>States: speed (1 is rated), water in the scroll kg; flags: tripped, ticks of low speed. Air
 * into the box is positive; through a discharge flap stuck open the box blows back through the idle
 * fan, and that is negative. Water to the box goes on to the furnaces, the rest to the bilge.
 *
 * <p>Assumes fan laws, a flap that shuts by itself, a trip for low speed with the valve well open.
 * Left out: an idle fan turning backwards, water stored in the box.
 *
 * <p>Source: fan laws; the ingestion figures are invented.
 */
final class ForcedDraftBlower implements Machine {
  private static final int TRIP_TICKS = 101;

  final State speed;
  final State scrollWaterKg;

  double airKgPerS;
  double waterToBoxKgPerS;
  double waterToBilgeKgPerS;
  double steamKgPerS;

  private final Flag tripped;
  private final Flag lowSpeedTicks;
  private final BlowerPorts at;
  private final Positions ports;
  private final double airScale;
  private final double shutOffPa;
  private final double scrollKg;
  private final double steamScale;

  ForcedDraftBlower(BlowerPorts at, PlantNumbers numbers, Positions ports) {
    this.at = at;
    this.ports = ports;
    String name = "blower." + at.number();
    speed = State.atLeast(0, name + ".speed");
    scrollWaterKg = State.dying(name + ".water.mass");
    tripped = new Flag(name + ".tripped");
    lowSpeedTicks = new Flag(name + ".low-speed-ticks");
    airScale = numbers.get(PlantNumber.BLOWER_AIR);
    shutOffPa = numbers.get(PlantNumber.BLOWER_SHUT_OFF);
    scrollKg = numbers.get(PlantNumber.BLOWER_SCROLL);
    steamScale = numbers.get(PlantNumber.BLOWER_STEAM);
  }

  @Override
  public List<State> states() {
    return List.of(speed, scrollWaterKg);
  }

  @Override
  public void walkFlags(StateWalker walker) {
    tripped.walk(walker);
    lowSpeedTicks.walk(walker);
  }

  boolean isRunning() {
    return ports.isOn(at.stop()) && !tripped.isSet();
  }

  boolean isTripped() {
    return tripped.isSet();
  }

  void evaluate(double boxPa, double auxiliaryShare) {
    air(boxPa);
    water();
    double n = speed.x;
    double drive = 0;
    steamKgPerS = 0;
    if (isRunning()) {
      double valve = ports.at(at.steam()) * auxiliaryShare;
      drive = 1.35 * valve * (1.6 - 0.6 * n);
      steamKgPerS = steamScale * valve;
    }
    double load = 0.40 + 0.60 * (Math.max(airKgPerS, 0) / airScale) / Math.max(n, 0.15);
    speed.dx = (drive - n * n * load - scrollWaterKg.x / 25 * n * n - 0.02 * n) / 6;
  }

  private void air(double boxPa) {
    double head = shutOffPa * speed.x * speed.x - boxPa;
    if (head > 0) {
      airKgPerS =
          airScale
              * Math.max(1 - scrollWaterKg.x / 80, 0.1)
              * ports.at(at.intakeFlap())
              * Curve.signedRoot(head / 4000, 0.03);
    } else {
      double stuck = ports.at(at.flapStuck());
      airKgPerS = stuck > 0 ? -0.6 * airScale * stuck * Curve.signedRoot(-head / 4000, 0.03) : 0;
    }
  }

  private void water() {
    double kg = scrollWaterKg.x;
    double thrown = 0.012 * speed.x * speed.x * kg;
    double spills = Math.max(kg - scrollKg, 0);
    double drained = 0.10 * ports.at(at.scrollDrain()) * kg;
    boolean isOpenToBox = airKgPerS != 0 || ports.at(at.flapStuck()) > 0;
    double spillToBox = isOpenToBox ? spills : 0.35 * spills;
    waterToBoxKgPerS = thrown + spillToBox;
    waterToBilgeKgPerS = spills - spillToBox + drained;
    scrollWaterKg.dx =
        ports.at(at.seaWater()) * ports.at(at.intakeFlap()) - thrown - spills - drained;
  }

  /** Slope of the air flow against box pressure, kg/(s Pa), for the box's decay rate. */
  double airSlope() {
    double scale = airScale * airScale / 8000;
    if (airKgPerS > 0) {
      return scale / Math.max(airKgPerS, 1.5);
    }
    return airKgPerS < 0 ? 0.36 * scale / Math.max(-airKgPerS, 1.5) : 0;
  }

  void applyRules(PlantEvents events) {
    if (tripped.isSet() && ports.isOn(at.reset()) && !ports.isOn(at.stop())) {
      tripped.set(false);
      lowSpeedTicks.n = 0;
    }
    if (!isRunning()) {
      return;
    }
    boolean isLow = speed.x < 0.35 && ports.at(at.steam()) > 0.5;
    lowSpeedTicks.n = isLow ? lowSpeedTicks.n + 1 : 0;
    if (lowSpeedTicks.n >= TRIP_TICKS || ports.isOn(at.trip())) {
      tripped.set(true);
      events.blowerTrips(at.number());
    }
  }
}
