package handwheel.plant;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Book-keeping of what is conserved: what flowed across a boundary, summed over the ticks of a run,
 * against what is stored inside it (first law of thermodynamics, conservation of mass).
 */
public final class Balances {
  private static final Side[] SIDES = Side.values();

  private final Account boilerWater =
      new Account("boiler water and steam", p -> p.drum.massKg(), Balances::boilerKgPerS)
          .through(p -> p.feed.flowKgPerS + boilerOutKgPerS(p))
          .andStored();
  private final Account boilerHeat =
      new Account("boiler heat", p -> p.drum.energyJ(), Balances::boilerW)
          .through(p -> boilerOutKgPerS(p) * p.drum.sat.steamEnthalpyJPerKg + boilerInW(p))
          .andStored();
  private final Account fuel =
      new Account("fuel", p -> tanksKg(p) + furnaceOilKg(p), p -> -fuelGoneKgPerS(p))
          .through(p -> p.fuel.burnersKgPerS + p.fuel.sprayKgPerS);
  private final Account feedTanks =
      new Account("feed tanks", Balances::feedTanksKg, Balances::feedTanksKgPerS)
          .through(p -> p.feed.flowKgPerS + p.feed.condensateKgPerS.x);
  private final Account allWater =
      new Account("all water", Balances::allWaterKg, p -> p.line.engineKgPerS - lostKgPerS(p))
          .through(p -> p.feed.flowKgPerS + boilerOutKgPerS(p))
          .andStored();
  private final Account mainLine =
      new Account("main line", Balances::lineKg, Balances::lineKgPerS)
          .through(p -> p.line.mainStopKgPerS + p.line.otherRoomKgPerS)
          .inKg();
  private final Account seaWater =
      new Account("sea water", Balances::scrollsKg, Balances::seaKgPerS).through(Balances::seaIn);

  private final List<Account> accounts =
      List.of(boilerWater, boilerHeat, fuel, feedTanks, allWater, mainLine, seaWater);
  private double oilBeforeKg;
  private double burnedAtOnceKg;
  private boolean isOpen;

  /** One balance. */
  public static final class Account {
    private final String name;
    private final ToDoubleFunction<Plant> stored;
    private final ToDoubleFunction<Plant> in;
    private ToDoubleFunction<Plant> through = p -> 0;
    private double opening;
    private double flowed;
    private double passed;
    private double closing;
    private boolean isOfStored;
    private boolean isInKg;

    private Account(String name, ToDoubleFunction<Plant> stored, ToDoubleFunction<Plant> in) {
      this.name = name;
      this.stored = stored;
      this.in = in;
    }

    private Account through(ToDoubleFunction<Plant> flow) {
      through = flow;
      return this;
    }

    /** What was there in the beginning counts with what passed. */
    private Account andStored() {
      isOfStored = true;
      return this;
    }

    private Account inKg() {
      isInKg = true;
      return this;
    }

    private void book(Plant plant) {
      flowed += in.applyAsDouble(plant) * Plant.TICK_S;
      passed += through.applyAsDouble(plant) * Plant.TICK_S;
    }

    /** Returns what it is about. */
    public String name() {
      return name;
    }

    /** Returns whether anything flowed at all. */
    public boolean isUsed() {
      return passed > 1e-6;
    }

    /** Returns what is stored and did not flow in, as a share of all that passed, or in kg. */
    public double residual() {
      double missing = closing - opening - flowed;
      return isInKg ? missing : missing / (isOfStored ? opening + passed : passed);
    }
  }

  /** Books a tick after its evaluation and before its rules. */
  public void evaluated(Plant plant) {
    if (!isOpen) {
      isOpen = true;
      accounts.forEach(a -> a.opening = a.stored.applyAsDouble(plant));
    }
    accounts.forEach(a -> a.book(plant));
    oilBeforeKg = furnaceOilKg(plant);
  }

  /** Books what an explosion burned at once. */
  public void ruled(Plant plant) {
    burnedAtOnceKg += oilBeforeKg - furnaceOilKg(plant);
  }

  /** Closes the books on an evaluated plant. */
  public List<Account> close(Plant plant) {
    accounts.forEach(a -> a.closing = a.stored.applyAsDouble(plant));
    fuel.flowed -= burnedAtOnceKg;
    return accounts;
  }

  private static double boilerOutKgPerS(Plant p) {
    return p.drum.steamKgPerS + p.drum.blowKgPerS + p.drum.tubeKgPerS;
  }

  private static double boilerKgPerS(Plant p) {
    return p.feed.toDrumKgPerS - boilerOutKgPerS(p);
  }

  private static double boilerInW(Plant p) {
    return p.gas.evaporationW + p.gas.economizerW + p.feed.toDrumKgPerS * p.feed.enthalpyJPerKg;
  }

  /** Steam leaves dry, except what water the superheater's share carries over; blow as water. */
  private static double boilerW(Plant p) {
    SteamDrum d = p.drum;
    double wetJ = d.carryOver * d.evaporationJPerKg * p.line.superheaterKgPerS;
    return boilerInW(p)
        - d.steamKgPerS * d.sat.steamEnthalpyJPerKg
        + wetJ
        - (d.blowKgPerS + d.tubeKgPerS) * d.sat.waterEnthalpyJPerKg;
  }

  private static double tanksKg(Plant p) {
    return p.fuel.tank1Kg.x + p.fuel.tank2Kg.x;
  }

  private static Furnace furnace(Plant p, Side side) {
    return side == Side.SATURATED ? p.saturated : p.superheated;
  }

  private static double furnaceOilKg(Plant p) {
    double kg = 0;
    for (Side side : SIDES) {
      kg += furnace(p, side).vapourKg.x + furnace(p, side).poolKg.x;
    }
    return kg;
  }

  /** Burned, sprayed, up the stack unburned, water drawn with the oil. */
  private static double fuelGoneKgPerS(Plant p) {
    double gone = p.fuel.sprayKgPerS + p.fuel.burnersKgPerS * p.fuel.waterHeader.x;
    for (Side side : SIDES) {
      gone += furnace(p, side).releasedW / Physics.OIL_HEAT_J_PER_KG;
      gone += furnace(p, side).vapourOutKgPerS + sootKgPerS(p, side);
    }
    return gone;
  }

  /** Three quarters of what a lit burner leaves unburned go up as soot and gas at once. */
  private static double sootKgPerS(Plant p, Side side) {
    SideFire fire = p.front.fire(side);
    double oil = 0;
    for (Burner burner : Burner.values()) {
      double kgPerS = p.front.combustibleKgPerS(burner);
      oil += burner.side() == side && kgPerS > BurnerFront.NO_OIL_KG_PER_S ? kgPerS : 0;
    }
    return oil - fire.burnedKgPerS - fire.unburnedKgPerS;
  }

  private static double feedTanksKg(Plant p) {
    return p.feed.deaeratingTankKg.x + p.feed.reserveTankKg.x;
  }

  private static double feedTanksKgPerS(Plant p) {
    return 0.97 * p.feed.condensateKgPerS.x - p.feed.flowKgPerS - tankLossKgPerS(p);
  }

  private static double tankLossKgPerS(Plant p) {
    double full = Curve.smoothStep(p.feed.deaeratingTankKg.x / 50);
    return p.position(Port.DEAERATING_TANK_LOSS) * full;
  }

  /** Boiler, tanks, and condensate on its way back, 20 s of it. */
  private static double allWaterKg(Plant p) {
    return p.drum.massKg() + feedTanksKg(p) + 20 * p.feed.condensateKgPerS.x;
  }

  private static double lineKg(Plant p) {
    return PlantNumber.MAIN_LINE_CAPACITY.usual() * p.line.pressurePa.x;
  }

  /** All that leaves the boiler but to the auxiliaries, three per cent of the condensate, holes. */
  private static double lostKgPerS(Plant p) {
    return boilerOutKgPerS(p)
        - p.auxiliary.flowKgPerS
        + 0.03 * p.feed.condensateKgPerS.x
        + p.feed.economizerLeakKgPerS
        + tankLossKgPerS(p);
  }

  private static double lineKgPerS(Plant p) {
    MainSteamLine line = p.line;
    return line.mainStopKgPerS + line.otherRoomKgPerS - line.engineKgPerS - line.leakMainRunKgPerS;
  }

  private static double scrollsKg(Plant p) {
    return p.blower1.scrollWaterKg.x + p.blower2.scrollWaterKg.x;
  }

  private static double seaIn(Plant p) {
    return p.position(Port.BLOWER_1_SEA_WATER) * p.position(Port.BLOWER_1_INTAKE_FLAP)
        + p.position(Port.BLOWER_2_SEA_WATER) * p.position(Port.BLOWER_2_INTAKE_FLAP);
  }

  private static double seaKgPerS(Plant p) {
    return seaIn(p) - p.air.waterToFurnacesKgPerS - p.air.waterToBilgeKgPerS;
  }
}
