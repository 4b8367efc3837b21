package handwheel.plant.outside;

import handwheel.plant.DrumInputs;
import handwheel.water.Saturation;
import handwheel.water.SaturationTable;

/**
 * Start-up of a drum boiler in two states, water and steam in equilibrium: the published example
 * with a linear steam valve, a level controller on the feed and a ramp of heat.
 *
 * <p>Source: R. Franke, M. Rode, K. Krueger, On-line optimization of drum boiler startup, Modelica
 * Conference 2003; equations and figures read in the Modelica Standard Library,
 * Modelica.Fluid.Examples.DrumBoiler. The two balances are kept as mass and inner energy, and
 * temperature and volume are found from them by Newton's method, so that nothing of the plant's own
 * solution is used again.
 */
final class EquilibriumDrum {
  static final double VOLUME_M3 = 100;
  static final double STEEL_KG = 300_000;
  static final double STEEL_J_PER_KGK = 500;
  static final double WATER_M3 = 67;
  static final double FEED_J_PER_KG = 500e3;
  static final double START_PA = 1e5;

  private final SaturationTable table = SaturationTable.standard();
  private final Saturation s = new Saturation();
  private double temperatureK;
  private double waterM3 = WATER_M3;
  private double massKg;
  private double energyJ;
  private double integral;
  private double timeS;

  EquilibriumDrum() {
    temperatureK = boilingK(START_PA);
    table.at(temperatureK, s);
    massKg = massOf(waterM3);
    energyJ = energyOf(waterM3);
  }

  private double boilingK(double pressurePa) {
    double low = 300;
    double high = 590;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (table.pressurePa(middle) < pressurePa) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private double massOf(double water) {
    return s.waterDensityKgPerM3 * water + s.steamDensityKgPerM3 * (VOLUME_M3 - water);
  }

  private double energyOf(double water) {
    return s.waterDensityKgPerM3 * water * s.waterEnthalpyJPerKg
        + s.steamDensityKgPerM3 * (VOLUME_M3 - water) * s.steamEnthalpyJPerKg
        - s.pressurePa * VOLUME_M3
        + STEEL_KG * STEEL_J_PER_KGK * temperatureK;
  }

  /** What the drum is given now: ramps of heat and valve, level controller. */
  DrumInputs inputs() {
    double heatW = 400e6 * Math.min(timeS / 3600, 1);
    double valve = Math.min(timeS / 900, 1);
    double steam = Math.max(180 * valve * (s.pressurePa - 0.5e5) / 90e5, 0);
    double wanted = 10 * (WATER_M3 - waterM3 + integral);
    return new DrumInputs(heatW, steam, Math.min(Math.max(wanted, 0), 500), FEED_J_PER_KG);
  }

  /** Moves on; the inputs are those of the middle of the step. */
  void step(double stepS) {
    DrumInputs now = inputs();
    double mass = massKg;
    double energy = energyJ;
    double memory = integral;
    move(now, stepS / 2, mass, energy, memory);
    timeS += stepS / 2;
    DrumInputs middle = inputs();
    move(middle, stepS, mass, energy, memory);
    timeS += stepS / 2;
  }

  private void move(DrumInputs in, double dt, double mass, double energy, double memory) {
    double error = WATER_M3 - waterM3;
    massKg = mass + dt * (in.feedKgPerS() - in.steamKgPerS());
    energyJ =
        energy
            + dt
                * (in.heatW()
                    + in.feedKgPerS() * in.feedJPerKg()
                    - in.steamKgPerS() * s.steamEnthalpyJPerKg);
    integral = memory + dt * error / 120;
    solve();
  }

  /** Finds the temperature at which the mass, filled in as water and steam, has the energy. */
  private void solve() {
    for (int i = 0; i < 30; i++) {
      double low = excess(temperatureK - 0.01);
      double high = excess(temperatureK + 0.01);
      double correction = excess(temperatureK) / ((high - low) / 0.02);
      temperatureK -= correction;
      if (Math.abs(correction) < 1e-11 * temperatureK) {
        break;
      }
    }
    excess(temperatureK);
  }

  private double excess(double kelvin) {
    table.at(kelvin, s);
    double rf = s.waterDensityKgPerM3;
    double rg = s.steamDensityKgPerM3;
    waterM3 = (massKg - rg * VOLUME_M3) / (rf - rg);
    double steel = STEEL_KG * STEEL_J_PER_KGK * (kelvin - temperatureK);
    return energyOf(waterM3) + steel - energyJ;
  }

  double pressurePa() {
    return s.pressurePa;
  }

  double waterM3() {
    return waterM3;
  }

  double temperatureK() {
    return temperatureK;
  }
}
