package handwheel.plant;

import handwheel.water.SaturationTable;

/** The plant's steam drum taken out of the plant: any size, any heat, steam and feed. */
public final class DrumBench {
  private final SteamDrum drum;
  private final MainSteamLine line;
  private final AuxiliarySteam auxiliary;
  private final FeedSystem feed;
  private final GasPath gas;
  private final SafetyValves safeties;

  /** Sets up a drum of the given sizes. */
  public DrumBench(PlantNumbers numbers) {
    SaturationTable table = SaturationTable.standard();
    Positions ports = new Positions();
    drum = new SteamDrum(numbers, table, ports);
    line = new MainSteamLine(numbers, ports);
    auxiliary = new AuxiliarySteam(ports);
    feed = new FeedSystem(numbers, table, ports);
    safeties = new SafetyValves(numbers, ports);
    gas =
        new GasPath(
            numbers,
            ports,
            new Furnace(Side.SATURATED, numbers),
            new Furnace(Side.SUPERHEATER, numbers));
  }

  /** Fills the drum: saturation temperature K, water m3, steam in risers and below the line m3. */
  public void fill(double saturationK, double waterM3, double riserSteamM3, double bubblesM3) {
    drum.saturationTemperatureK.x = saturationK;
    drum.waterM3.x = waterM3;
    drum.riserSteamM3.x = riserSteamM3;
    drum.bubblesM3.x = bubblesM3;
  }

  /** Works out the rates. */
  public void evaluate(DrumInputs inputs) {
    auxiliary.flowKgPerS = inputs.steamKgPerS();
    gas.evaporationW = inputs.heatW();
    feed.flowKgPerS = inputs.feedKgPerS();
    feed.toDrumKgPerS = inputs.feedKgPerS();
    feed.enthalpyJPerKg = inputs.feedJPerKg();
    drum.look();
    drum.evaluate(line, auxiliary, feed, gas, safeties);
  }

  /** Works out the rates and moves on by one tick of the plant. */
  public void step(DrumInputs inputs) {
    evaluate(inputs);
    drum.states().forEach(State::advance);
    drum.look();
  }

  /** Drum pressure, Pa absolute. */
  public double pressurePa() {
    return drum.pressurePa;
  }

  /** Rate of the drum pressure, Pa/s. */
  public double pressurePaPerS() {
    return drum.sat.pressureSlopePaPerK * drum.saturationTemperatureK.dx;
  }

  /** Level above the middle of the glass, m. */
  public double levelM() {
    return drum.levelM;
  }

  /** Water in the boiler, m3. */
  public double waterM3() {
    return drum.waterM3.x;
  }
}
