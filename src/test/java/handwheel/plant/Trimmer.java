package handwheel.plant;

/**
 * A patient hand that trims a steaming plant until it is steady: the fuel governor to a drum
 * pressure, the check to the middle of the glass, the blowers to an air ratio, the superheater
 * header to an outlet temperature, the other room's load until nothing flows across. It knows true
 * values; it makes start conditions, not crews.
 */
final class Trimmer {
  private static final int TICKS_PER_S = 20;
  private static final double INCH_M = 0.0254;

  private final Plant plant;
  private final Aim aim;
  private double check;
  private double governorPa;

  /**
   * What is aimed at.
   *
   * @param drumPa drum pressure
   * @param airRatio air of the saturated furnace against what its oil needs
   * @param outletK superheater outlet; 0 leaves its header valve alone
   */
  record Aim(double drumPa, double airRatio, double outletK) {}

  Trimmer(Plant plant, Aim aim) {
    this.plant = plant;
    this.aim = aim;
    this.check = plant.position(Port.FEED_CHECK);
    this.governorPa = plant.position(Port.FUEL_GOVERNOR);
  }

  /** Trims for some hours; all fuel burned and water used up is put back at the end. */
  void settle(double hours) {
    double tankKg = plant.fuel.tank1Kg.x;
    double reserveKg = plant.feed.reserveTankKg.x;
    long seconds = (long) (hours * 3600);
    for (long s = 0; s < seconds; s++) {
      Run.ticks(plant, TICKS_PER_S);
      trim();
      plant.fuel.tank1Kg.x = tankKg;
      plant.feed.reserveTankKg.x = reserveKg;
    }
    plant.set(Port.FEED_CHECK, check);
    plant.set(Port.FUEL_GOVERNOR, governorPa);
  }

  private void trim() {
    double low = (aim.drumPa() - plant.value(Quantity.DRUM_PRESSURE)) / aim.drumPa();
    governorPa = clip(Port.FUEL_GOVERNOR, governorPa * (1 + low / 600));
    plant.set(Port.FUEL_GOVERNOR, clip(Port.FUEL_GOVERNOR, governorPa * (1 + 2 * low)));
    double highIn = plant.value(Quantity.DRUM_LEVEL) / INCH_M;
    check = clip(Port.FEED_CHECK, check - highIn * 0.01 / 1800);
    plant.set(Port.FEED_CHECK, clip(Port.FEED_CHECK, check - 0.01 * highIn));
    double lean = plant.value(Quantity.FURNACE_SATURATED_AIR_RATIO) - aim.airRatio();
    scale(Port.BLOWER_1_STEAM, 1 - lean / 200);
    scale(Port.BLOWER_2_STEAM, 1 - lean / 200);
    double acrossKgPerS = plant.value(Quantity.BULKHEAD_STOP_FLOW);
    double otherKgPerS = plant.position(Port.OTHER_ROOM_STEAM) + 0.1 * acrossKgPerS;
    plant.set(Port.OTHER_ROOM_STEAM, clip(Port.OTHER_ROOM_STEAM, otherKgPerS));
    if (aim.outletK() > 0) {
      double cold = aim.outletK() - plant.value(Quantity.SUPERHEATER_OUTLET_TEMPERATURE);
      scale(Port.HEADER_VALVE_SUPERHEATER, 1 + cold / 50 / 400);
    }
  }

  private void scale(Port port, double by) {
    plant.set(port, clip(port, plant.position(port) * by));
  }

  private static double clip(Port port, double position) {
    return Curve.clip(position, port.min(), port.max());
  }
}
