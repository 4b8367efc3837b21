package handwheel.plant;

import java.util.List;

/**
 * Oil sprayed over the deck plates, and its fire.
 *
 * <p>States: oil on the plates kg, heat release W; flag: burning. Oil sprayed in is positive.
 * Inputs: spray, oxygen of the upper level, ignition source, foam.
 *
 * <p>Assumes at most 12 m2 of burning pool, a fire that grows in 12 s and falls in 5 s and starves
 * below 19 per cent oxygen by mass. Left out: spread to other things, re-ignition under foam, and
 * the air a fire drives out as it grows: the room is taken as open at one atmosphere.
 *
 * <p>Source: pool burning rate 0.045 kg/(m2 s) (value from memory); the rest engineering estimate.
 */
final class OilFire implements Machine {
  private static final double POOL_KG_PER_M2S = 0.045;
  private static final double HEAT_J_PER_KG = 38e6;

  final State deckOilKg = State.dying("fire.oil.mass");
  final State heatW = State.dying("fire.heat");

  private final Flag burning = new Flag("fire.burning");
  private final Positions ports;

  OilFire(Positions ports) {
    this.ports = ports;
  }

  @Override
  public List<State> states() {
    return List.of(deckOilKg, heatW);
  }

  @Override
  public void walkFlags(StateWalker walker) {
    burning.walk(walker);
  }

  boolean isBurning() {
    return burning.isSet();
  }

  /** Oil burning, kg/s. */
  double burnsKgPerS() {
    return heatW.x / HEAT_J_PER_KG;
  }

  void evaluate(double sprayKgPerS, double oxygen) {
    double poolM2 = Math.min(deckOilKg.x / 2, 12);
    double uncovered = 1 - ports.at(Port.FOAM);
    double target = 0;
    double running = ports.at(Port.DECK_OIL);
    deckOilKg.dx = sprayKgPerS + running;
    if (isBurning()) {
      double oil = Math.min(sprayKgPerS, 0.35) + POOL_KG_PER_M2S * poolM2;
      target = oil * HEAT_J_PER_KG * Curve.clip((oxygen - 0.13) / 0.06, 0, 1) * uncovered;
      deckOilKg.dx = 0.4 * sprayKgPerS + running - POOL_KG_PER_M2S * poolM2 * uncovered;
    }
    heatW.dx = (target - heatW.x) / (target > heatW.x ? 12 : 5);
  }

  void applyRules(PlantEvents events) {
    double foam = ports.at(Port.FOAM);
    if (!isBurning()) {
      if (ports.isOn(Port.IGNITION_SOURCE) && foam < 0.5 && deckOilKg.x > 0.05) {
        burning.set(true);
        events.oilFireStarts();
      }
    } else if (foam > 0.9 && heatW.x < 20e3) {
      burning.set(false);
      events.oilFireOut();
    }
  }
}
