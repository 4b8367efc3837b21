package handwheel.plant;

/**
 * The eight burners at the boiler front: what oil, air and water reaches each and how well it
 * burns. No continuous state; a flame and a timer for each burner, and whether steam from a
 * ruptured tube drowns the saturated furnace.
 *
 * <p>Oil and air into the furnace are positive. The order of all arrays is S1 to H3.
 *
 * <p>Assumes straight mechanical atomizers (flow with the root of header pressure), equal air to
 * equally open registers, combustion that falls off smoothly short of air. Left out: swirl, flame
 * shape, one burner heating its neighbour's oil.
 *
 * <p>Source: engineering estimate.
 */
final class BurnerFront {
  private static final Burner[] ALL = Burner.values();

  /** Oil below this is none, kg/s. */
  static final double NO_OIL_KG_PER_S = 1e-5;

  private final double[] oilKgPerS = new double[ALL.length];
  private final double[] combustibleKgPerS = new double[ALL.length];
  private final double[] airRatio = new double[ALL.length];
  private final double[] waterKgPerS = new double[ALL.length];
  private final Flag[] lit = new Flag[ALL.length];
  private final Flag[] flameTicks = new Flag[ALL.length];
  private final Flag steamWet = new Flag("furnace.steam-wet");
  private final SideFire saturated = new SideFire();
  private final SideFire superheater = new SideFire();

  double totalKgPerS;
  double blackKgPerS;
  double whiteKgPerS;

  private double atomizing;
  private double wetOil;

  private final double[] plateKgPerS;
  private final Positions ports;

  BurnerFront(PlantNumbers numbers, Positions ports) {
    this.ports = ports;
    plateKgPerS =
        new double[] {
          0,
          numbers.get(PlantNumber.PLATE_1_FLOW),
          numbers.get(PlantNumber.PLATE_2_FLOW),
          numbers.get(PlantNumber.PLATE_3_FLOW),
          numbers.get(PlantNumber.PLATE_4_FLOW),
          numbers.get(PlantNumber.PLATE_5_FLOW)
        };
    for (Burner burner : ALL) {
      String name = "burner." + (burner.side() == Side.SATURATED ? "s" : "h");
      String number = burner.name().substring(1);
      lit[burner.index()] = new Flag(name + number + ".lit");
      flameTicks[burner.index()] = new Flag(name + number + ".flame-ticks");
    }
  }

  void evaluate(FuelSystem fuel, AirPath air) {
    oil(fuel);
    atomizing =
        (0.55 + 0.45 * Curve.smoothStep((fuel.headerPa.x / Plant.PSI - 20) / 100))
            * (1 - 0.25 * Curve.clip((330 - fuel.temperatureK.x) / 60, 0, 1));
    wetOil = Curve.smoothStep((fuel.waterHeader.x - 0.05) / 0.3);
    saturated.clear();
    superheater.clear();
    blackKgPerS = 0;
    whiteKgPerS = 0;
    for (Burner burner : ALL) {
      burn(burner, air);
    }
  }

  private void oil(FuelSystem fuel) {
    double head =
        fuel.headerPa.x <= 0 ? 0 : Curve.signedRoot(fuel.headerPa.x / (300 * Plant.PSI), 0.01);
    double saturatedOpen =
        ports.at(Port.HEADER_VALVE_SATURATED) * ports.at(Port.FUEL_TRIP_SATURATED);
    double superheaterOpen =
        ports.at(Port.HEADER_VALVE_SUPERHEATER) * ports.at(Port.FUEL_TRIP_SUPERHEATER);
    totalKgPerS = 0;
    for (Burner burner : ALL) {
      int i = burner.index();
      double plate = plateKgPerS[(int) ports.at(Port.PLATE_S1, burner)];
      double open = burner.side() == Side.SATURATED ? saturatedOpen : superheaterOpen;
      double clean = 1 - ports.at(Port.FOULING_S1, burner);
      oilKgPerS[i] = plate * head * ports.at(Port.ROOT_S1, burner) * open * clean;
      combustibleKgPerS[i] = oilKgPerS[i] * (1 - fuel.waterHeader.x);
      totalKgPerS += oilKgPerS[i];
    }
  }

  private void burn(Burner burner, AirPath air) {
    int i = burner.index();
    double oil = combustibleKgPerS[i];
    double airKgPerS = air.burnerKgPerS(burner);
    airRatio[i] = oil > 1e-6 ? airKgPerS / (Physics.AIR_FOR_OIL * oil) : 0;
    waterKgPerS[i] = air.burnerWaterKgPerS(burner);
    SideFire fire = fire(burner.side());
    fire.isRootOpen |= ports.at(Port.ROOT_S1, burner) > 0;
    fire.waterKgPerS += waterKgPerS[i];
    if (oil <= NO_OIL_KG_PER_S) {
      return;
    }
    if (!lit[i].isSet()) {
      fire.unburnedKgPerS += oil;
      whiteKgPerS += 1.5 * oil;
      return;
    }
    fire.firing++;
    fire.firingOilKgPerS += oil;
    fire.firingAirKgPerS += airKgPerS;
    flame(i, oil, fire);
  }

  private void flame(int i, double oil, SideFire fire) {
    double lambda = airRatio[i];
    double quenched = Curve.smoothStep((waterKgPerS[i] / oil - 0.3) / 0.7);
    double lack = 1 - lambda;
    double enough = Math.max(1 - (lack + Math.sqrt(lack * lack + 0.01)) / 2, 0);
    double excess = 1 - 0.25 * Curve.smoothStep((lambda - 2.2) / 2.5);
    double burned = enough * atomizing * excess * (1 - 0.3 * wetOil) * (1 - 0.4 * quenched);
    fire.burnedKgPerS += oil * burned;
    fire.unburnedKgPerS += 0.25 * oil * (1 - burned);
    blackKgPerS += oil * (Curve.smoothStep((1.12 - lambda) / 0.30) + 0.35 * (1 - atomizing));
    whiteKgPerS += oil * (Curve.smoothStep((lambda - 1.40) / 0.80) + 0.5 * wetOil + 0.5 * quenched);
  }

  SideFire fire(Side side) {
    return side == Side.SATURATED ? saturated : superheater;
  }

  boolean isLit(Burner burner) {
    return lit[burner.index()].isSet();
  }

  void setLit(Burner burner, boolean isLit) {
    lit[burner.index()].set(isLit);
  }

  /** Timer of a burner's flame, ticks; negative while it is locked out after an explosion. */
  Flag flameTicks(Burner burner) {
    return flameTicks[burner.index()];
  }

  double fuelKgPerS(Burner burner) {
    return oilKgPerS[burner.index()];
  }

  /** Oil without its water, kg/s. */
  double combustibleKgPerS(Burner burner) {
    return combustibleKgPerS[burner.index()];
  }

  double airRatio(Burner burner) {
    return airRatio[burner.index()];
  }

  double waterKgPerS(Burner burner) {
    return waterKgPerS[burner.index()];
  }

  double sideAirRatio(Side side) {
    return fire(side).airRatio();
  }

  double sideWaterKgPerS(Side side) {
    return fire(side).waterKgPerS;
  }

  int litCount() {
    return litCount(Side.SATURATED) + litCount(Side.SUPERHEATER);
  }

  int litCount(Side side) {
    int n = 0;
    for (Burner burner : ALL) {
      n += burner.side() == side ? lit[burner.index()].n : 0;
    }
    return n;
  }

  boolean isSteamWet() {
    return steamWet.isSet();
  }

  /** Steam drowns the furnace above 0.45 kg of it a kilogram of air, until below 0.30. */
  void applySteamRule(double tubeKgPerS, double saturatedAirKgPerS) {
    double ratio = tubeKgPerS / Math.max(saturatedAirKgPerS, 0.1);
    if (ratio > 0.45) {
      steamWet.set(true);
    } else if (ratio < 0.30) {
      steamWet.set(false);
    }
  }

  void walkFlags(StateWalker walker) {
    for (int i = 0; i < ALL.length; i++) {
      lit[i].walk(walker);
      flameTicks[i].walk(walker);
    }
    steamWet.walk(walker);
  }
}
