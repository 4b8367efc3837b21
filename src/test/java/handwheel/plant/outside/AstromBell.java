package handwheel.plant.outside;

import handwheel.plant.DrumInputs;
import handwheel.water.Saturation;
import handwheel.water.SaturationTable;

/**
 * The four-state drum boiler of the literature: total water, pressure (here as the saturation
 * temperature), steam quality at the riser outlet, steam below the drum's surface.
 *
 * <p>Source: K. J. Astrom and R. D. Bell, Drum-boiler dynamics, Automatica 36 (2000) 363-378. The
 * balances and the sizes were read in a public library of models built on the paper; the way the
 * balances are solved for the four rates is worked out here. Steam properties from the project's
 * table, which another check holds to IAPWS-IF97.
 */
final class AstromBell {
  private static final double GRAVITY_M_PER_S2 = 9.81;
  private static final double STEP_S = 0.05;

  private final DrumSizes d;
  private final SaturationTable table = SaturationTable.standard();
  private final Saturation s = new Saturation();
  private double restSteamM3;

  /** Temperature K, water m3, quality, steam below the surface m3. */
  private double[] x = new double[4];

  private double meanVoid;
  private double voidByQuality;
  private double voidByTemperature;
  private double circulationKgPerS;
  private double condensationKgPerS;

  AstromBell(DrumSizes sizes) {
    d = sizes;
  }

  /** Puts the model at rest: quality from heat and circulation, V0 from the steam below. */
  void rest(double saturationK, double waterM3, double bubblesM3, DrumInputs inputs) {
    table.at(saturationK, s);
    double low = 1e-6;
    double high = 0.9;
    for (int i = 0; i < 100; i++) {
      double quality = (low + high) / 2;
      circulate(quality);
      if (quality * circulationKgPerS * evaporation() < inputs.heatW()) {
        low = quality;
      } else {
        high = quality;
      }
    }
    x = new double[] {saturationK, waterM3, low, bubblesM3};
    restSteamM3 = bubblesM3;
    rates(x, inputs);
    restSteamM3 = bubblesM3 + d.residenceS() / s.steamDensityKgPerM3 * condensationKgPerS;
    rates(x, inputs);
  }

  private double evaporation() {
    return s.steamEnthalpyJPerKg - s.waterEnthalpyJPerKg;
  }

  /** Mean void of the risers, its slopes, and the flow it drives down the downcomers. */
  private void circulate(double quality) {
    double rw = s.waterDensityKgPerM3;
    double rs = s.steamDensityKgPerM3;
    double q = quality / d.slip();
    double eta = q * (rw - rs) / rs;
    double log = StrictMath.log(1 + eta);
    double share = 1 - log / eta;
    double shareByEta = log / (eta * eta) - 1 / (eta * (1 + eta));
    double a = rw / (rw - rs);
    double mix = s.waterDensitySlopeKgPerM3K * rs - rw * s.steamDensitySlopeKgPerM3K;
    meanVoid = a * share;
    voidByQuality = a * shareByEta * (rw - rs) / rs / d.slip();
    voidByTemperature = -mix / ((rw - rs) * (rw - rs)) * share + a * shareByEta * q * mix / rs / rs;
    circulationKgPerS =
        Math.sqrt(
            2
                * rw
                * d.downcomerM2()
                * (rw - rs)
                * GRAVITY_M_PER_S2
                * meanVoid
                * d.riserM3()
                / d.loss());
  }

  private double[] rates(double[] y, DrumInputs in) {
    table.at(y[0], s);
    circulate(Math.max(y[2], 1e-6));
    double[] boiler = boiler(y[1], in);
    double warming = boiler[0];
    double quality = quality(warming, y[2], in.heatW());
    double riser = circulationKgPerS - riserMass(warming, quality);
    double bubbles = bubbles(y, in, warming, riser);
    return new double[] {warming, boiler[1], quality, bubbles};
  }

  /** Mass and energy of the whole boiler: rates of temperature and water. */
  private double[] boiler(double water, DrumInputs in) {
    double rw = s.waterDensityKgPerM3;
    double rs = s.steamDensityKgPerM3;
    double hw = s.waterEnthalpyJPerKg;
    double hs = s.steamEnthalpyJPerKg;
    double steam = d.totalM3() - water;
    double massByT = water * s.waterDensitySlopeKgPerM3K + steam * s.steamDensitySlopeKgPerM3K;
    double energyByT =
        water * waterEnergySlope()
            + steam * steamEnergySlope()
            - d.totalM3() * s.pressureSlopePaPerK
            + d.steelKg() * d.steelJPerKgK();
    double energyByWater = rw * hw - rs * hs;
    double mass = in.feedKgPerS() - in.steamKgPerS();
    double energy = in.heatW() + in.feedKgPerS() * in.feedJPerKg() - in.steamKgPerS() * hs;
    double det = (rw - rs) * energyByT - massByT * energyByWater;
    double warming = ((rw - rs) * energy - energyByWater * mass) / det;
    return new double[] {warming, (mass * energyByT - massByT * energy) / det};
  }

  /** Slope of density times enthalpy of the water, J/(m3 K). */
  private double waterEnergySlope() {
    return s.waterEnthalpyJPerKg * s.waterDensitySlopeKgPerM3K
        + s.waterDensityKgPerM3 * s.waterEnthalpySlopeJPerKgK;
  }

  private double steamEnergySlope() {
    return s.steamEnthalpyJPerKg * s.steamDensitySlopeKgPerM3K
        + s.steamDensityKgPerM3 * s.steamEnthalpySlopeJPerKgK;
  }

  /** Rate of the mass in the risers, kg/s. */
  private double riserMass(double warming, double quality) {
    double apart = s.waterDensityKgPerM3 - s.steamDensityKgPerM3;
    double byT =
        (1 - meanVoid) * s.waterDensitySlopeKgPerM3K
            + meanVoid * s.steamDensitySlopeKgPerM3K
            - apart * voidByTemperature;
    return d.riserM3() * (byT * warming - apart * voidByQuality * quality);
  }

  /** Riser energy less riser mass times outlet enthalpy, solved for the rate of the quality. */
  private double quality(double warming, double y, double heatW) {
    double hc = evaporation();
    double outlet = s.waterEnthalpyJPerKg + y * hc;
    double steamLessWater =
        s.steamDensityKgPerM3 * s.steamEnthalpyJPerKg
            - s.waterDensityKgPerM3 * s.waterEnthalpyJPerKg;
    double energyByT =
        d.riserM3()
                * ((1 - meanVoid) * waterEnergySlope()
                    + meanVoid * steamEnergySlope()
                    + steamLessWater * voidByTemperature
                    - s.pressureSlopePaPerK)
            + d.riserSteelKg() * d.steelJPerKgK();
    double energyByQuality = d.riserM3() * steamLessWater * voidByQuality;
    double byT = energyByT - outlet * riserMass(1, 0);
    double byQuality = energyByQuality - outlet * riserMass(0, 1);
    return (heatW - y * hc * circulationKgPerS - byT * warming) / byQuality;
  }

  private double bubbles(double[] y, DrumInputs in, double warming, double riserKgPerS) {
    double hc = evaporation();
    double rs = s.steamDensityKgPerM3;
    double water = drumWater(y);
    double stored =
        rs * y[3] * s.steamEnthalpySlopeJPerKgK
            + s.waterDensityKgPerM3 * water * s.waterEnthalpySlopeJPerKgK
            - (y[3] + water) * s.pressureSlopePaPerK
            + d.drumSteelKg() * d.steelJPerKgK();
    condensationKgPerS =
        (s.waterEnthalpyJPerKg - in.feedJPerKg()) / hc * in.feedKgPerS() + stored * warming / hc;
    double rises =
        rs / d.residenceS() * (y[3] - restSteamM3)
            + y[2] * circulationKgPerS
            + y[2] * d.beta() * (circulationKgPerS - riserKgPerS);
    double change = y[2] * riserKgPerS - rises - condensationKgPerS;
    return (change - y[3] * s.steamDensitySlopeKgPerM3K * warming) / rs;
  }

  private double drumWater(double[] y) {
    return y[1] - d.downcomerM3() - (1 - meanVoid) * d.riserM3();
  }

  /** Moves on by 0.05 s, Runge and Kutta's method of order 4. */
  void step(DrumInputs in) {
    double[] a = rates(x, in);
    double[] b = rates(ahead(a, STEP_S / 2), in);
    double[] c = rates(ahead(b, STEP_S / 2), in);
    double[] e = rates(ahead(c, STEP_S), in);
    for (int i = 0; i < x.length; i++) {
      x[i] += STEP_S / 6 * (a[i] + 2 * b[i] + 2 * c[i] + e[i]);
    }
    rates(x, in);
  }

  private double[] ahead(double[] rates, double s) {
    double[] y = x.clone();
    for (int i = 0; i < y.length; i++) {
      y[i] += s * rates[i];
    }
    return y;
  }

  double pressurePa() {
    return s.pressurePa;
  }

  double levelM() {
    return (drumWater(x) + x[3]) / d.areaM2();
  }

  double waterM3() {
    return x[1];
  }

  double quality() {
    return x[2];
  }

  double riserVoid() {
    return meanVoid;
  }

  double circulationKgPerS() {
    return circulationKgPerS;
  }

  double condensationKgPerS() {
    return condensationKgPerS;
  }

  double restSteamM3() {
    return restSteamM3;
  }
}
