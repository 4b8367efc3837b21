package handwheel.plant;

import handwheel.water.Saturation;
import handwheel.water.SaturationTable;
import java.util.List;

/**
 * Steam drum with risers and downcomers: pressure, water, and the steam below the water line that
 * makes the glass swell and shrink.
 *
 * <p>States: saturation temperature K, water volume m3, steam in the risers m3, bubbles below the
 * drum's water line m3, chloride kg. Temperature and not pressure is the state, so that the same
 * equations hold from a cold boiler to a lifting safety.
 *
 * <p>Flows out of the drum are positive when leaving, feed when entering. Inputs: heat to the
 * tubes, economizer heat, feed and its enthalpy, steam taken. Outputs: pressure, level, uncovered
 * share, carry-over, tube leak, blow, vent.
 *
 * <p>Assumes saturated water, steam and steel at one temperature; two residence times, short for
 * steam leaving the risers, longer for bubbles flashing in bulk water. Range: 280 to 600 K, water
 * volume above 0.3 m3. Left out: pressure differences inside, moving water, dissolved gas.
 *
 * <p>Source: K. J. Astrom and R. D. Bell, Drum-boiler dynamics, Automatica 36 (2000) 363-378, mass
 * and energy balance and void average; the two lags replace its fourth state (engineering estimate,
 * about 70 per cent of its swell).
 */
final class SteamDrum implements Machine {
  private static final double STEEL_J_PER_KGK = 500;
  private static final double CIRCULATION_LOSS = 28;
  private static final double SLIP = 2.5;
  private static final double RISER_STEAM_S = 0.65;
  private static final double FLASHED_STEAM_S = 1.8;
  private static final double VOID_LAG_PER_S = 0.4;

  /** Depth of drum water below which risers begin to uncover, as a volume, m3. */
  private static final double UNCOVERS_M3 = 0.15;

  final State saturationTemperatureK = State.free("drum.temperature");
  final State waterM3 = State.atLeast(0.3, "drum.water-volume");
  final State riserSteamM3 = State.atLeast(0, "drum.riser-steam");
  final State bubblesM3 = State.atLeast(0, "drum.bubbles");
  final State chlorideKg = State.free("drum.chloride-mass");

  final Saturation sat = new Saturation();
  double pressurePa;
  double pressureShare;
  double chokeShare;
  double evaporationJPerKg;
  double drumWaterM3;
  double levelM;
  double dryFraction;
  double carryOver;
  double tubeKgPerS;
  double ventKgPerS;
  double blowKgPerS;
  double steamKgPerS;

  private final SaturationTable table;
  private final Positions ports;
  private final double totalM3;
  private final double riserM3;
  private final double downcomerM3;
  private final double glassM3;
  private final double waterAreaM2;
  private final double steelJPerK;
  private final double downcomerM2;
  private final double ventScaleKgPerS;

  SteamDrum(PlantNumbers numbers, SaturationTable table, Positions ports) {
    this.table = table;
    this.ports = ports;
    totalM3 = numbers.get(PlantNumber.DRUM_TOTAL_VOLUME);
    riserM3 = numbers.get(PlantNumber.DRUM_RISER_VOLUME);
    downcomerM3 = numbers.get(PlantNumber.DRUM_DOWNCOMER_VOLUME);
    glassM3 = numbers.get(PlantNumber.DRUM_GLASS_VOLUME);
    waterAreaM2 = numbers.get(PlantNumber.DRUM_WATER_AREA);
    steelJPerK = numbers.get(PlantNumber.DRUM_STEEL) * STEEL_J_PER_KGK;
    downcomerM2 = numbers.get(PlantNumber.DRUM_DOWNCOMER_AREA);
    ventScaleKgPerS = numbers.get(PlantNumber.DRUM_VENT_FLOW);
    riserSteamM3.decayPerS = VOID_LAG_PER_S;
    bubblesM3.decayPerS = 1;
  }

  @Override
  public List<State> states() {
    return List.of(saturationTemperatureK, waterM3, riserSteamM3, bubblesM3, chlorideKg);
  }

  /** First part of an evaluation: everything that follows from the drum's states alone. */
  void look() {
    table.at(saturationTemperatureK.x, sat);
    pressurePa = sat.pressurePa;
    pressureShare = Physics.share(pressurePa);
    chokeShare = Physics.chokeShare(pressurePa);
    evaporationJPerKg = sat.steamEnthalpyJPerKg - sat.waterEnthalpyJPerKg;
    drumWaterM3 = waterM3.x - downcomerM3 - (riserM3 - riserSteamM3.x);
    levelM = (drumWaterM3 + bubblesM3.x - glassM3) / waterAreaM2;
    dryFraction =
        drumWaterM3 < UNCOVERS_M3 ? Curve.smoothStep((UNCOVERS_M3 - drumWaterM3) / 2.4) : 0;
    carryOver = 0.0005 + 0.25 * Curve.smoothStep((levelM - 0.20) / 0.20);
    openings();
  }

  private void openings() {
    double above = Math.max(pressurePa - Physics.ATMOSPHERE_PA, 0);
    tubeKgPerS =
        0.28 * ports.at(Port.TUBE_RUPTURE) * Math.sqrt(2 * sat.waterDensityKgPerM3 * above);
    double p = pressurePa / Physics.ATMOSPHERE_PA;
    ventKgPerS = ventScaleKgPerS * ports.at(Port.DRUM_VENT) * p * Curve.clip((p - 0.9) / 0.2, 0, 1);
    double root = Math.sqrt(pressureShare);
    blowKgPerS = ports.at(Port.SURFACE_BLOW) * 0.6 * root + ports.at(Port.BOTTOM_BLOW) * 4 * root;
  }

  /** Second part: the balances, once every flow and heat is known. */
  void evaluate(
      MainSteamLine line,
      AuxiliarySteam auxiliary,
      FeedSystem feed,
      GasPath gas,
      SafetyValves safeties) {
    double safety = safeties.drumKgPerS(pressurePa, chokeShare);
    steamKgPerS =
        line.superheaterKgPerS
            + auxiliary.flowKgPerS
            + line.leakSaturatedKgPerS
            + safety
            + ventKgPerS;
    balance(line.superheaterKgPerS, feed, gas);
    swell(feed, gas);
    double out = blowKgPerS + tubeKgPerS + carryOver * line.superheaterKgPerS;
    chlorideKg.dx = feed.toDrumKgPerS * ports.at(Port.FEED_CHLORIDE) - out * chlorideFraction();
  }

  /** Solves mass and energy for the rates of water volume and temperature. */
  private void balance(double superheaterKgPerS, FeedSystem feed, GasPath gas) {
    double hf = sat.waterEnthalpyJPerKg;
    double hg = sat.steamEnthalpyJPerKg;
    double rf = sat.waterDensityKgPerM3;
    double rg = sat.steamDensityKgPerM3;
    double water = waterM3.x;
    double steam = totalM3 - water;
    double e11 = rf - rg;
    double e12 = water * sat.waterDensitySlopeKgPerM3K + steam * sat.steamDensitySlopeKgPerM3K;
    double e21 = rf * hf - rg * hg;
    double e22 =
        water * (hf * sat.waterDensitySlopeKgPerM3K + rf * sat.waterEnthalpySlopeJPerKgK)
            + steam * (hg * sat.steamDensitySlopeKgPerM3K + rg * sat.steamEnthalpySlopeJPerKgK)
            - totalM3 * sat.pressureSlopePaPerK
            + steelJPerK;
    double mass = feed.toDrumKgPerS - steamKgPerS - blowKgPerS - tubeKgPerS;
    double energy =
        gas.evaporationW
            + gas.economizerW
            + feed.toDrumKgPerS * feed.enthalpyJPerKg
            - superheaterKgPerS * (hg - carryOver * evaporationJPerKg)
            - (steamKgPerS - superheaterKgPerS) * hg
            - (blowKgPerS + tubeKgPerS) * hf;
    double det = e11 * e22 - e12 * e21;
    waterM3.dx = (mass * e22 - e12 * energy) / det;
    saturationTemperatureK.dx = (e11 * energy - e21 * mass) / det;
  }

  /** Steam in the risers and below the water line. */
  private void swell(FeedSystem feed, GasPath gas) {
    double rf = sat.waterDensityKgPerM3;
    double slope = rf * sat.waterEnthalpySlopeJPerKgK;
    double warming = saturationTemperatureK.dx;
    double boil =
        Curve.smoothStep(
            (pressurePa - 0.8 * Physics.ATMOSPHERE_PA) / (0.4 * Physics.ATMOSPHERE_PA));
    double riserWater = Math.max(riserM3 - riserSteamM3.x, 0.05);
    double riserKgPerS =
        Math.max(
            0,
            (gas.evaporationW - (riserWater * slope + 0.55 * steelJPerK) * warming)
                / evaporationJPerKg);
    riserSteamM3.dx = (voidFraction(riserKgPerS) * boil * riserM3 - riserSteamM3.x) / 2.5;
    double drumWater = Math.max(drumWaterM3, 0);
    double flashKgPerS = -(drumWater * slope + 0.25 * steelJPerK) * warming / evaporationJPerKg;
    double coldFeedW =
        feed.toDrumKgPerS * (sat.waterEnthalpyJPerKg - feed.enthalpyJPerKg) - gas.economizerW;
    double condensesKgPerS =
        Math.max(Math.min(coldFeedW, 5e5 * feed.toDrumKgPerS), 0) / evaporationJPerKg;
    double steamKg =
        Math.max((riserKgPerS - condensesKgPerS) * RISER_STEAM_S + flashKgPerS * FLASHED_STEAM_S, 0)
            * boil;
    double room = 0.6 * Math.max(drumWaterM3, 0.05);
    bubblesM3.dx = room * (1 - Decay.of(steamKg / sat.steamDensityKgPerM3 / room)) - bubblesM3.x;
  }

  /** Mean void of the risers for an amount of boiling, with slip between steam and water. */
  private double voidFraction(double riserKgPerS) {
    double rf = sat.waterDensityKgPerM3;
    double rg = sat.steamDensityKgPerM3;
    double lift = 2 * rf * downcomerM2 * (rf - rg) * Physics.GRAVITY_M_PER_S2;
    double circulation = Math.sqrt(lift * Math.max(riserSteamM3.x, 2.6e-4) / CIRCULATION_LOSS) + 2;
    double eta = Math.min(riserKgPerS / circulation, 1) / SLIP * (rf - rg) / rg;
    double average = eta < 1e-3 ? eta / 2 - eta * eta / 3 : 1 - StrictMath.log(1 + eta) / eta;
    return Math.min(rf / (rf - rg) * average, 0.9);
  }

  double waterKg() {
    return sat.waterDensityKgPerM3 * waterM3.x;
  }

  double chlorideFraction() {
    return chlorideKg.x / (sat.waterDensityKgPerM3 * waterM3.x);
  }

  double riserVoid() {
    return riserSteamM3.x / riserM3;
  }

  /** Water and steam in the boiler, kg. */
  double massKg() {
    return waterKg() + sat.steamDensityKgPerM3 * (totalM3 - waterM3.x);
  }

  /** Internal energy of water, steam and steel from 0 K of steel, J. */
  double energyJ() {
    return waterKg() * sat.waterEnthalpyJPerKg
        + sat.steamDensityKgPerM3 * (totalM3 - waterM3.x) * sat.steamEnthalpyJPerKg
        - totalM3 * sat.pressurePa
        + steelJPerK * saturationTemperatureK.x;
  }
}
