package handwheel.plant;

/**
 * Flames lost, burners lit and furnace explosions. Timers count ticks; the limits are the whole
 * ticks after which a time has passed (0.3 s the 7th, 0.5 s the 11th, 0.6 s the 13th, 1.2 s the
 * 24th).
 *
 * <p>Source: common practice for the order of things; times and limits engineering estimate.
 */
final class FlameRules {
  private static final Burner[] ALL = Burner.values();
  private static final int OUT_WITHOUT_OIL = 7;
  private static final int OUT_WITH_OIL = 13;
  private static final int LIT_BY_TORCH = 11;
  private static final int LIT_BY_HEAT = 24;
  private static final int LOCK_OUT = -61;

  private final BurnerFront front;
  private final FuelSystem fuel;
  private final Positions ports;

  /** Vapour over what the air could burn, before anything of this tick burned. */
  private double ratio;

  /** Unused air in the furnace before anything of this tick burned, kg. */
  private double airKg;

  /** Whether a burner of the furnace is alight. */
  private boolean isAnyLit;

  FlameRules(BurnerFront front, FuelSystem fuel, Positions ports) {
    this.front = front;
    this.fuel = fuel;
    this.ports = ports;
  }

  void loseFlames(PlantEvents events) {
    for (Burner burner : ALL) {
      if (front.isLit(burner)) {
        loseFlame(burner, events);
      }
    }
  }

  private void loseFlame(Burner burner, PlantEvents events) {
    Flag ticks = front.flameTicks(burner);
    double oil = front.combustibleKgPerS(burner);
    boolean hasOil = oil > BurnerFront.NO_OIL_KG_PER_S;
    if (hasOil && holds(burner, oil)) {
      ticks.n = 0;
      return;
    }
    ticks.n++;
    if (ticks.n >= (hasOil ? OUT_WITH_OIL : OUT_WITHOUT_OIL)) {
      ticks.n = 0;
      front.setLit(burner, false);
      events.burnerOut(burner);
    }
  }

  private boolean holds(Burner burner, double oil) {
    double lambda = front.airRatio(burner);
    return fuel.headerPa.x > 30 * Plant.PSI
        && lambda > 0.35
        && lambda < 8
        && fuel.waterHeader.x < 0.35
        && !isWet(burner.side())
        && front.waterKgPerS(burner) < 0.8 * oil;
  }

  private boolean isWet(Side side) {
    return side == Side.SATURATED && front.isSteamWet();
  }

  void applyTo(Furnace furnace, PlantEvents events) {
    airKg = furnace.airKg();
    ratio = Physics.AIR_FOR_OIL * furnace.vapourKg.x / airKg;
    isAnyLit = front.litCount(furnace.side) > 0;
    for (Burner burner : ALL) {
      if (burner.side() == furnace.side && !front.isLit(burner)) {
        isAnyLit |= light(burner, furnace, events);
      }
    }
    boolean isWet = isWet(furnace.side);
    boolean hasSource = furnace.isHot() || hasTorch(furnace.side);
    boolean waits = !isAnyLit && !furnace.burnsAsFormed();
    if (furnace.ignites(ratio, waits && hasSource && !isWet)) {
      explode(furnace, events);
      furnace.startBurningAsFormed();
    }
    furnace.keepBurning(furnace.isHot() || hasTorch(furnace.side), isWet);
  }

  private boolean light(Burner burner, Furnace furnace, PlantEvents events) {
    Flag ticks = front.flameTicks(burner);
    if (ticks.n < 0) {
      ticks.n++;
      return false;
    }
    boolean hasTorch = ports.at(Port.TORCH_S1, burner) > 0;
    boolean hasSource = hasTorch || furnace.isHot() || isAnyLit;
    if (!hasSource || !takesFire(burner)) {
      ticks.n = 0;
      return false;
    }
    ticks.n++;
    if (ticks.n < (hasTorch ? LIT_BY_TORCH : LIT_BY_HEAT)) {
      return false;
    }
    if (!isAnyLit && !furnace.burnsAsFormed()) {
      explode(furnace, events);
    }
    if (ticks.n < 0) {
      return false;
    }
    ticks.n = 0;
    front.setLit(burner, true);
    events.burnerLit(burner, source(hasTorch, isAnyLit));
    return true;
  }

  private static LitBy source(boolean hasTorch, boolean isAnyLit) {
    if (hasTorch) {
      return LitBy.TORCH;
    }
    return isAnyLit ? LitBy.NEIGHBOUR : LitBy.HOT_BRICK;
  }

  private boolean takesFire(Burner burner) {
    double oil = front.combustibleKgPerS(burner);
    double lambda = front.airRatio(burner);
    return oil > BurnerFront.NO_OIL_KG_PER_S
        && fuel.headerPa.x > 50 * Plant.PSI
        && lambda > 0.35
        && lambda < 6
        && fuel.waterHeader.x < 0.30
        && !isWet(burner.side())
        && front.waterKgPerS(burner) < 0.5 * oil;
  }

  private boolean hasTorch(Side side) {
    for (Burner burner : ALL) {
      if (burner.side() == side && ports.at(Port.TORCH_S1, burner) > 0) {
        return true;
      }
    }
    return false;
  }

  private void explode(Furnace furnace, PlantEvents events) {
    double vapourKg = furnace.vapourKg.x;
    double pa = furnace.explode(ratio, airKg);
    if (pa < 300) {
      return;
    }
    FurnaceExplosion.Severity severity = FurnaceExplosion.Severity.of(pa);
    events.furnaceExplosion(new FurnaceExplosion(furnace.side, severity, pa, ratio, vapourKg));
    if (severity != FurnaceExplosion.Severity.PUFF) {
      furnace.startBurningAsFormed();
      blowOut(furnace.side);
    }
  }

  private void blowOut(Side side) {
    for (Burner burner : ALL) {
      if (burner.side() == side) {
        front.setLit(burner, false);
        front.flameTicks(burner).n = LOCK_OUT;
        ports.set(torch(burner), 0);
      }
    }
  }

  private static Port torch(Burner burner) {
    return Port.of(Port.TORCH_S1, burner);
  }
}
