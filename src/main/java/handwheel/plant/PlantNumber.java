package handwheel.plant;

import java.util.Arrays;
import java.util.Optional;

/**
 * A size of the ship's plant that a ship file may change. Physical coefficients are no ship's
 * matter and stay in the machines.
 */
public enum PlantNumber {
  /** Volume of drum, risers and downcomers. */
  DRUM_TOTAL_VOLUME("drum.total-volume", "m3", 9.9, "Volume of drum, risers and downcomers."),
  /** Volume of the risers. */
  DRUM_RISER_VOLUME("drum.riser-volume", "m3", 2.6, "Volume of the risers."),
  /** Volume of the downcomers. */
  DRUM_DOWNCOMER_VOLUME("drum.downcomer-volume", "m3", 1.0, "Volume of the downcomers."),
  /** Drum water volume at the middle of the gauge glass. */
  DRUM_GLASS_VOLUME(
      "drum.glass-volume", "m3", 3.15, "Drum water volume at the middle of the gauge glass."),
  /** Water surface in the drum. */
  DRUM_WATER_AREA("drum.water-area", "m2", 5.9, "Water surface in the drum."),
  /** Steel that follows the saturation temperature. */
  DRUM_STEEL("drum.steel", "kg", 26_000, "Steel that follows the saturation temperature."),
  /** Flow area of the downcomers. */
  DRUM_DOWNCOMER_AREA("drum.downcomer-area", "m2", 0.12, "Flow area of the downcomers."),
  /** Steam through the open air cock at one atmosphere. */
  DRUM_VENT_FLOW(
      "drum.vent-flow", "kg/s", 0.05, "Steam through the open air cock at one atmosphere."),
  /** Set pressure of the superheater safety valve. */
  SAFETY_SUPERHEATER_SET(
      "safety.superheater.set",
      "Pa-g",
      640 * Plant.PSI,
      "Set pressure of the superheater safety valve."),
  /** Set pressure of drum safety valve 1. */
  SAFETY_DRUM_1_SET(
      "safety.drum-1.set", "Pa-g", 660 * Plant.PSI, "Set pressure of drum safety valve 1."),
  /** Set pressure of drum safety valve 2. */
  SAFETY_DRUM_2_SET(
      "safety.drum-2.set", "Pa-g", 670 * Plant.PSI, "Set pressure of drum safety valve 2."),
  /** Capacity of the superheater safety valve at 600 psig. */
  SAFETY_SUPERHEATER_FLOW(
      "safety.superheater.flow",
      "kg/s",
      35_000 * Plant.LB_PER_H,
      "Capacity of the superheater safety valve at 600 psig."),
  /** Capacity of drum safety valve 1 at 600 psig. */
  SAFETY_DRUM_1_FLOW(
      "safety.drum-1.flow",
      "kg/s",
      55_000 * Plant.LB_PER_H,
      "Capacity of drum safety valve 1 at 600 psig."),
  /** Capacity of drum safety valve 2 at 600 psig. */
  SAFETY_DRUM_2_FLOW(
      "safety.drum-2.flow",
      "kg/s",
      55_000 * Plant.LB_PER_H,
      "Capacity of drum safety valve 2 at 600 psig."),
  /** Share of the set pressure at which a safety valve reseats. */
  SAFETY_RESEAT(
      "safety.reseat", "1", 0.96, "Share of the set pressure at which a safety valve reseats."),
  /** Alloy of the superheater. */
  SUPERHEATER_METAL("superheater.metal", "kg", 2_600, "Alloy of the superheater."),
  /** Gas-side conductance at 7 kg/s of gas. */
  SUPERHEATER_GAS_CONDUCTANCE(
      "superheater.gas-conductance", "W/K", 15_500, "Gas-side conductance at 7 kg/s of gas."),
  /** Steam-side conductance at 12.1 kg/s of steam. */
  SUPERHEATER_STEAM_CONDUCTANCE(
      "superheater.steam-conductance",
      "W/K",
      56_000,
      "Steam-side conductance at 12.1 kg/s of steam."),
  /** Flow factor squared of the superheater tubes. */
  SUPERHEATER_FLOW_FACTOR(
      "superheater.flow-factor",
      "m2 kg0.5",
      4.83e-5,
      "Flow factor squared of the superheater tubes."),
  /** Conductance of the open main stop. */
  MAIN_STOP_CONDUCTANCE(
      "main-stop.conductance", "kg/s/Pa", 6.0e-4, "Conductance of the open main stop."),
  /** Steam stored in the main line for each pascal. */
  MAIN_LINE_CAPACITY(
      "main-line.capacity", "kg/Pa", 8.0e-6, "Steam stored in the main line for each pascal."),
  /** Steam of the engine at full throttle and 600 psig. */
  ENGINE_STEAM("engine.steam", "kg/s", 12.26, "Steam of the engine at full throttle and 600 psig."),
  /** Steam of the generator at full load. */
  GENERATOR_STEAM("generator.steam", "kg/s", 0.8, "Steam of the generator at full load."),
  /** Most steam the other fire room can give. */
  BULKHEAD_STOP_FLOW("bulkhead-stop.flow", "kg/s", 5.0, "Most steam the other fire room can give."),
  /** Emissivity times water-cooled area of the saturated furnace. */
  FURNACE_SATURATED_WALL_AREA(
      "furnace.saturated.wall-area",
      "m2",
      27,
      "Emissivity times water-cooled area of the saturated furnace."),
  /** Emissivity times brick area of the saturated furnace. */
  FURNACE_SATURATED_BRICK_AREA(
      "furnace.saturated.brick-area",
      "m2",
      9,
      "Emissivity times brick area of the saturated furnace."),
  /** Heat capacity of the brick face of the saturated furnace. */
  FURNACE_SATURATED_FACE_CAPACITY(
      "furnace.saturated.face-capacity",
      "J/K",
      1.2e6,
      "Heat capacity of the brick face of the saturated furnace."),
  /** Heat capacity of the brick core of the saturated furnace. */
  FURNACE_SATURATED_CORE_CAPACITY(
      "furnace.saturated.core-capacity",
      "J/K",
      4.5e6,
      "Heat capacity of the brick core of the saturated furnace."),
  /** Conductance from brick face to core of the saturated furnace. */
  FURNACE_SATURATED_BRICK_CONDUCTANCE(
      "furnace.saturated.brick-conductance",
      "W/K",
      500,
      "Conductance from brick face to core of the saturated furnace."),
  /** Gas volume of the saturated furnace. */
  FURNACE_SATURATED_VOLUME(
      "furnace.saturated.volume", "m3", 22, "Gas volume of the saturated furnace."),
  /** Emissivity times water-cooled area of the superheater furnace. */
  FURNACE_SUPERHEATER_WALL_AREA(
      "furnace.superheater.wall-area",
      "m2",
      5.5,
      "Emissivity times water-cooled area of the superheater furnace."),
  /** Emissivity times brick area of the superheater furnace. */
  FURNACE_SUPERHEATER_BRICK_AREA(
      "furnace.superheater.brick-area",
      "m2",
      6,
      "Emissivity times brick area of the superheater furnace."),
  /** Heat capacity of the brick face of the superheater furnace. */
  FURNACE_SUPERHEATER_FACE_CAPACITY(
      "furnace.superheater.face-capacity",
      "J/K",
      0.8e6,
      "Heat capacity of the brick face of the superheater furnace."),
  /** Heat capacity of the brick core of the superheater furnace. */
  FURNACE_SUPERHEATER_CORE_CAPACITY(
      "furnace.superheater.core-capacity",
      "J/K",
      3.0e6,
      "Heat capacity of the brick core of the superheater furnace."),
  /** Conductance from brick face to core of the superheater furnace. */
  FURNACE_SUPERHEATER_BRICK_CONDUCTANCE(
      "furnace.superheater.brick-conductance",
      "W/K",
      330,
      "Conductance from brick face to core of the superheater furnace."),
  /** Gas volume of the superheater furnace. */
  FURNACE_SUPERHEATER_VOLUME(
      "furnace.superheater.volume", "m3", 14, "Gas volume of the superheater furnace."),
  /** Oil through sprayer plate No. 1 at 300 psig. */
  PLATE_1_FLOW(
      "plate.1.flow", "kg/s", 350 * Plant.LB_PER_H, "Oil through sprayer plate No. 1 at 300 psig."),
  /** Oil through sprayer plate No. 2 at 300 psig. */
  PLATE_2_FLOW(
      "plate.2.flow", "kg/s", 600 * Plant.LB_PER_H, "Oil through sprayer plate No. 2 at 300 psig."),
  /** Oil through sprayer plate No. 3 at 300 psig. */
  PLATE_3_FLOW(
      "plate.3.flow", "kg/s", 850 * Plant.LB_PER_H, "Oil through sprayer plate No. 3 at 300 psig."),
  /** Oil through sprayer plate No. 4 at 300 psig. */
  PLATE_4_FLOW(
      "plate.4.flow",
      "kg/s",
      1_100 * Plant.LB_PER_H,
      "Oil through sprayer plate No. 4 at 300 psig."),
  /** Oil through sprayer plate No. 5 at 300 psig. */
  PLATE_5_FLOW(
      "plate.5.flow",
      "kg/s",
      1_450 * Plant.LB_PER_H,
      "Oil through sprayer plate No. 5 at 300 psig."),
  /** Air conductance of one open register. */
  REGISTER_CONDUCTANCE(
      "register.conductance", "kg/s/Pa0.5", 0.0273, "Air conductance of one open register."),
  /** Resistance from furnace to stack at 1,700 K. */
  GAS_PATH_RESISTANCE(
      "gas-path.resistance", "Pa s2/kg2", 13.2, "Resistance from furnace to stack at 1,700 K."),
  /** Height of the stack above the furnaces; 0 is a stack without draft. */
  STACK_HEIGHT(
      "stack.height",
      "m",
      0,
      "Height of the stack above the furnaces; 0 is a stack without draft."),
  /** Air stored in the air box for each pascal. */
  AIR_BOX_CAPACITY(
      "air-box.capacity", "kg/Pa", 1.5e-3, "Air stored in the air box for each pascal."),
  /** Air scale of one blower. */
  BLOWER_AIR("blower.air", "kg/s", 8.8, "Air scale of one blower."),
  /** Shut-off pressure of a blower at rated speed. */
  BLOWER_SHUT_OFF("blower.shut-off", "Pa", 14_500, "Shut-off pressure of a blower at rated speed."),
  /** Water a blower scroll holds before it spills. */
  BLOWER_SCROLL("blower.scroll", "kg", 200, "Water a blower scroll holds before it spills."),
  /** Steam of one blower with its valve open. */
  BLOWER_STEAM("blower.steam", "kg/s", 0.39, "Steam of one blower with its valve open."),
  /** Oil stored in the header for each pascal. */
  FUEL_HEADER_CAPACITY(
      "fuel.header-capacity", "kg/Pa", 1e-6, "Oil stored in the header for each pascal."),
  /** Capacity of the steam fuel pump. */
  FUEL_STEAM_PUMP("fuel.steam-pump", "kg/s", 1.75, "Capacity of the steam fuel pump."),
  /** Capacity of the electric fuel pump. */
  FUEL_ELECTRIC_PUMP("fuel.electric-pump", "kg/s", 0.9, "Capacity of the electric fuel pump."),
  /** Capacity of the hand fuel pump. */
  FUEL_HAND_PUMP("fuel.hand-pump", "kg/s", 0.10, "Capacity of the hand fuel pump."),
  /** Oil in the suction line. */
  FUEL_SUCTION_LINE("fuel.suction-line", "kg", 8, "Oil in the suction line."),
  /** Oil in strainer and pump. */
  FUEL_STRAINER_HOLD_UP("fuel.strainer-hold-up", "kg", 25, "Oil in strainer and pump."),
  /** Oil in the heater. */
  FUEL_HEATER_HOLD_UP("fuel.heater-hold-up", "kg", 20, "Oil in the heater."),
  /** Oil in the header. */
  FUEL_HEADER_HOLD_UP("fuel.header-hold-up", "kg", 15, "Oil in the header."),
  /** Shut-off head of the main feed pump at rated speed. */
  FEED_MAIN_PUMP_HEAD(
      "feed.main-pump-head", "Pa", 6.5e6, "Shut-off head of the main feed pump at rated speed."),
  /** Loss coefficient of the main feed pump and line. */
  FEED_MAIN_PUMP_LOSS(
      "feed.main-pump-loss",
      "Pa s2/kg2",
      4_592,
      "Loss coefficient of the main feed pump and line."),
  /** Run-out flow of the main feed pump. */
  FEED_MAIN_PUMP_FLOW("feed.main-pump-flow", "kg/s", 17, "Run-out flow of the main feed pump."),
  /** Loss of the main feed pump beyond its rated flow; 0 leaves the fixed run-out flow. */
  FEED_MAIN_PUMP_SHOCK_LOSS(
      "feed.main-pump-shock-loss",
      "Pa s2/kg2",
      0,
      "Loss of the main feed pump beyond its rated flow; 0 leaves the fixed run-out flow."),
  /** Shut-off head of the emergency feed pump. */
  FEED_EMERGENCY_PUMP_HEAD(
      "feed.emergency-pump-head", "Pa", 6.6e6, "Shut-off head of the emergency feed pump."),
  /** Loss coefficient of the emergency feed pump and line. */
  FEED_EMERGENCY_PUMP_LOSS(
      "feed.emergency-pump-loss",
      "Pa s2/kg2",
      28_570,
      "Loss coefficient of the emergency feed pump and line."),
  /** Head of the booster pump. */
  FEED_BOOSTER_HEAD("feed.booster-head", "Pa", 0.45e6, "Head of the booster pump."),
  /** Conductance of the open feed check. */
  FEED_CHECK_CONDUCTANCE(
      "feed.check-conductance", "kg/s/Pa0.5", 0.022, "Conductance of the open feed check."),
  /** Free volume of the upper level. */
  SPACE_UPPER_VOLUME("space.upper.volume", "m3", 220, "Free volume of the upper level."),
  /** Free volume of the lower level. */
  SPACE_LOWER_VOLUME("space.lower.volume", "m3", 240, "Free volume of the lower level."),
  /** Steel area around each level. */
  SPACE_WALL_AREA("space.wall-area", "m2", 360, "Steel area around each level."),
  /** Heat capacity of the steel around each level. */
  SPACE_WALL_CAPACITY(
      "space.wall-capacity", "J/K", 1.2e7, "Heat capacity of the steel around each level."),
  /** Air of the supply fan. */
  SPACE_SUPPLY("space.supply", "kg/s", 9.12, "Air of the supply fan."),
  /** Volume flow of the exhaust fan. */
  SPACE_EXHAUST("space.exhaust", "m3/s", 8.0, "Volume flow of the exhaust fan."),
  /** Area of the bilge. */
  BILGE_AREA("bilge.area", "m2", 75, "Area of the bilge."),
  /** Capacity of one eductor. */
  BILGE_EDUCTOR("bilge.eductor", "m3/s", 0.030, "Capacity of one eductor.");

  private final String id;
  private final String unitText;
  private final double usual;
  private final String meaning;

  PlantNumber(String id, String unitText, double usual, String meaning) {
    this.id = id;
    this.unitText = unitText;
    this.usual = usual;
    this.meaning = meaning;
  }

  /** Index of this one in arrays inside the package; never leaves it. */
  @SuppressWarnings("EnumOrdinal")
  int index() {
    return ordinal();
  }

  /**
   * Returns the number's name in ship files.
   *
   * @return lower-kebab words joined by dots
   */
  public String id() {
    return id;
  }

  /**
   * Returns the unit of the number as text.
   *
   * @return SI unit, {@code 1} for a bare number
   */
  public String unitText() {
    return unitText;
  }

  /**
   * Returns the value when a ship file says nothing.
   *
   * @return SI figure
   */
  public double usual() {
    return usual;
  }

  /**
   * Returns what the number is, for people.
   *
   * @return one sentence
   */
  public String meaning() {
    return meaning;
  }

  /**
   * Returns how far the usual value can be trusted.
   *
   * @return words for a reader
   */
  public String confidence() {
    return "invented for this plant; no ship was measured";
  }

  /**
   * Finds a number by its name in ship files.
   *
   * @param id such as {@code drum.water-area}
   * @return the number, or empty
   */
  public static Optional<PlantNumber> ofId(String id) {
    return Arrays.stream(values()).filter(n -> n.id.equals(id)).findFirst();
  }
}
