package handwheel.plant;

import handwheel.units.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * An input of the plant: a valve, switch, setting or fault. Nothing behind a port moves by itself;
 * whoever works the fitting sets the position. Positions are SI figures; that of a choice is the
 * index of its word.
 */
public enum Port {
  /** Sprayer plate of burner S1, No. 1 to 5; 0 is plugged. */
  PLATE_S1("plate.s1", List.of("0", "1", "2", "3", "4", "5")),
  /** Sprayer plate of burner S2, No. 1 to 5; 0 is plugged. */
  PLATE_S2("plate.s2", List.of("0", "1", "2", "3", "4", "5")),
  /** Sprayer plate of burner S3, No. 1 to 5; 0 is plugged. */
  PLATE_S3("plate.s3", List.of("0", "1", "2", "3", "4", "5")),
  /** Sprayer plate of burner S4, No. 1 to 5; 0 is plugged. */
  PLATE_S4("plate.s4", List.of("0", "1", "2", "3", "4", "5")),
  /** Sprayer plate of burner S5, No. 1 to 5; 0 is plugged. */
  PLATE_S5("plate.s5", List.of("0", "1", "2", "3", "4", "5")),
  /** Sprayer plate of burner H1, No. 1 to 5; 0 is plugged. */
  PLATE_H1("plate.h1", List.of("0", "1", "2", "3", "4", "5")),
  /** Sprayer plate of burner H2, No. 1 to 5; 0 is plugged. */
  PLATE_H2("plate.h2", List.of("0", "1", "2", "3", "4", "5")),
  /** Sprayer plate of burner H3, No. 1 to 5; 0 is plugged. */
  PLATE_H3("plate.h3", List.of("0", "1", "2", "3", "4", "5")),
  /** Oil root valve of burner S1. */
  ROOT_S1("root.s1", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Oil root valve of burner S2. */
  ROOT_S2("root.s2", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Oil root valve of burner S3. */
  ROOT_S3("root.s3", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Oil root valve of burner S4. */
  ROOT_S4("root.s4", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Oil root valve of burner S5. */
  ROOT_S5("root.s5", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Oil root valve of burner H1. */
  ROOT_H1("root.h1", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Oil root valve of burner H2. */
  ROOT_H2("root.h2", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Oil root valve of burner H3. */
  ROOT_H3("root.h3", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Air register of burner S1. */
  REGISTER_S1("register.s1", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Air register of burner S2. */
  REGISTER_S2("register.s2", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Air register of burner S3. */
  REGISTER_S3("register.s3", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Air register of burner S4. */
  REGISTER_S4("register.s4", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Air register of burner S5. */
  REGISTER_S5("register.s5", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Air register of burner H1. */
  REGISTER_H1("register.h1", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Air register of burner H2. */
  REGISTER_H2("register.h2", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Air register of burner H3. */
  REGISTER_H3("register.h3", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Lighted torch in burner S1. */
  TORCH_S1("torch.s1", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Lighted torch in burner S2. */
  TORCH_S2("torch.s2", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Lighted torch in burner S3. */
  TORCH_S3("torch.s3", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Lighted torch in burner S4. */
  TORCH_S4("torch.s4", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Lighted torch in burner S5. */
  TORCH_S5("torch.s5", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Lighted torch in burner H1. */
  TORCH_H1("torch.h1", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Lighted torch in burner H2. */
  TORCH_H2("torch.h2", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Lighted torch in burner H3. */
  TORCH_H3("torch.h3", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Quick-closing valve of the saturated furnace; 1 is open. */
  FUEL_TRIP_SATURATED("fuel-trip.saturated", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Quick-closing valve of the superheater furnace; 1 is open. */
  FUEL_TRIP_SUPERHEATER("fuel-trip.superheater", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Header throttle valve of the saturated furnace; above 1 stands for larger plates. */
  HEADER_VALVE_SATURATED("header-valve.saturated", Kind.FRACTION, Unit.ONE, 0, 1.5),
  /** Header throttle valve of the superheater furnace; above 1 stands for larger plates. */
  HEADER_VALVE_SUPERHEATER("header-valve.superheater", Kind.FRACTION, Unit.ONE, 0, 1.5),
  /** Set pressure of the fuel pump's own governor. */
  FUEL_GOVERNOR("fuel-governor", Kind.SETTING, Unit.PA_GAUGE, 0, 2.6e6),
  /** Fuel service pump in use. */
  FUEL_PUMP("fuel-pump", List.of("steam", "electric", "hand", "off")),
  /** Service tank the suction stands on. */
  FUEL_SUCTION("fuel-suction", List.of("tank-1", "tank-2")),
  /** Suction valve of service tank 1. */
  TANK_VALVE_1("tank-valve.1", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Suction valve of service tank 2. */
  TANK_VALVE_2("tank-valve.2", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Open share of the fuel strainer; a fouled one is below 1. */
  STRAINER("strainer", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Fault: water share of the oil drawn from tank 1. */
  WATER_IN_TANK_1("water-in-tank.1", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Fault: water share of the oil drawn from tank 2. */
  WATER_IN_TANK_2("water-in-tank.2", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Steam on the fuel heater. */
  FUEL_HEATER("fuel-heater", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Set temperature of the fuel heater. */
  FUEL_HEATER_THERMOSTAT("fuel-heater.thermostat", Kind.SETTING, Unit.KELVIN, 280, 400),
  /** Hand steam valve of blower 1. */
  BLOWER_1_STEAM("blower.1.steam", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Stop valve of blower 1; 0 is shut. */
  BLOWER_1_STOP("blower.1.stop", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Trip reset of blower 1; acts while its stop valve is shut. */
  BLOWER_1_RESET("blower.1.reset", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Fault: sea water at the intake of blower 1. */
  BLOWER_1_SEA_WATER("blower.1.sea-water", Kind.SETTING, Unit.KG_PER_S, 0, 50),
  /** Intake flap of blower 1. */
  BLOWER_1_INTAKE_FLAP("blower.1.intake-flap", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Fault: how far the discharge flap of blower 1 is stuck open; 0 is free. */
  BLOWER_1_FLAP_STUCK("blower.1.flap-stuck", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Scroll drain of blower 1. */
  BLOWER_1_SCROLL_DRAIN("blower.1.scroll-drain", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Hand steam valve of blower 2. */
  BLOWER_2_STEAM("blower.2.steam", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Stop valve of blower 2; 0 is shut. */
  BLOWER_2_STOP("blower.2.stop", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Trip reset of blower 2; acts while its stop valve is shut. */
  BLOWER_2_RESET("blower.2.reset", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Fault: sea water at the intake of blower 2. */
  BLOWER_2_SEA_WATER("blower.2.sea-water", Kind.SETTING, Unit.KG_PER_S, 0, 50),
  /** Intake flap of blower 2. */
  BLOWER_2_INTAKE_FLAP("blower.2.intake-flap", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Fault: how far the discharge flap of blower 2 is stuck open; 0 is free. */
  BLOWER_2_FLAP_STUCK("blower.2.flap-stuck", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Scroll drain of blower 2. */
  BLOWER_2_SCROLL_DRAIN("blower.2.scroll-drain", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Main steam stop; its last third bites. */
  MAIN_STOP("main-stop", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Throttle opening ordered in the engine room. */
  THROTTLE_ORDERED("throttle", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Share of the turbo-generator's load. */
  GENERATOR_LOAD("generator-load", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Bulkhead stop on the cross-connection to the other fire room. */
  BULKHEAD_STOP("bulkhead-stop", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Drum pressure of the other fire room. */
  OTHER_ROOM_PRESSURE("other-room.pressure", Kind.SETTING, Unit.PA, 101325, 6e6),
  /** Main steam the other fire room's own engine takes. */
  OTHER_ROOM_STEAM("other-room.steam", Kind.SETTING, Unit.KG_PER_S, 0, 20),
  /** Auxiliary steam stop. */
  AUXILIARY_STOP("auxiliary-stop", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Auxiliary steam from elsewhere, as a share of 600 psig. */
  OTHER_AUXILIARY_STEAM("other-auxiliary-steam", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Hotel steam on. */
  HOTEL_STEAM("hotel-steam", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Superheater drains. */
  SUPERHEATER_DRAINS("superheater-drains", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Air cock, or a drum safety valve eased by hand. */
  DRUM_VENT("drum-vent", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Surface blow valve. */
  SURFACE_BLOW("surface-blow", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Bottom blow valve. */
  BOTTOM_BLOW("bottom-blow", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Feed check valve. */
  FEED_CHECK("feed-check", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Main feed pump on. */
  MAIN_FEED_PUMP("main-feed-pump", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Feed booster pump on. */
  BOOSTER_PUMP("booster-pump", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Emergency feed pump on. */
  EMERGENCY_FEED_PUMP("emergency-feed-pump", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Suction of the emergency feed pump. */
  EMERGENCY_FEED_SUCTION("emergency-feed-suction", List.of("deaerating-tank", "reserve-tank")),
  /** Fault: chloride in the feed; 0.05 ppm is clean. */
  FEED_CHLORIDE("feed-chloride", Kind.SETTING, Unit.PPM, 0, 1e-3),
  /** Fault: hole between superheater and main stop. */
  LEAK_BEFORE_STOP("leak.before-stop", Kind.SETTING, Unit.SQUARE_METRE, 0, 0.01),
  /** Fault: hole in the main steam line after the stop. */
  LEAK_MAIN_RUN("leak.main-run", Kind.SETTING, Unit.SQUARE_METRE, 0, 0.01),
  /** Fault: hole in saturated steam piping. */
  LEAK_SATURATED("leak.saturated", Kind.SETTING, Unit.SQUARE_METRE, 0, 0.01),
  /** Fault: open area of a ruptured generating tube, both ends. */
  TUBE_RUPTURE("tube-rupture", Kind.SETTING, Unit.SQUARE_METRE, 0, 0.01),
  /** Supply ventilation of the fire room. */
  SUPPLY_FAN("supply-fan", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Exhaust ventilation of the fire room. */
  EXHAUST_FAN("exhaust-fan", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Door of the upper level. */
  UPPER_DOOR("upper-door", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Fault: sea water flowing into the bilge. */
  FLOODING("flooding", Kind.SETTING, Unit.M3_PER_S, 0, 2),
  /** Eductors running. */
  EDUCTORS("eductors", List.of("0", "1", "2")),
  /** Fault: hole spraying fuel oil. */
  OIL_SPRAY("oil-spray", Kind.SETTING, Unit.SQUARE_METRE, 0, 0.001),
  /** Fault: which line the oil spray comes from. */
  OIL_SPRAY_PLACE("oil-spray.place", List.of("saturated-line", "superheater-line", "header")),
  /** Fault: something hot enough to light sprayed oil. */
  IGNITION_SOURCE("ignition-source", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Foam cover on the oil fire. */
  FOAM("foam", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Fault: share of burner S1's sprayer plate that is plugged. */
  FOULING_S1("fouling.s1", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Fault: share of burner S2's sprayer plate that is plugged. */
  FOULING_S2("fouling.s2", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Fault: share of burner S3's sprayer plate that is plugged. */
  FOULING_S3("fouling.s3", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Fault: share of burner S4's sprayer plate that is plugged. */
  FOULING_S4("fouling.s4", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Fault: share of burner S5's sprayer plate that is plugged. */
  FOULING_S5("fouling.s5", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Fault: share of burner H1's sprayer plate that is plugged. */
  FOULING_H1("fouling.h1", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Fault: share of burner H2's sprayer plate that is plugged. */
  FOULING_H2("fouling.h2", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Fault: share of burner H3's sprayer plate that is plugged. */
  FOULING_H3("fouling.h3", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Fault: share of tank 1's outlet that is blocked. */
  TANK_OUTLET_BLOCKED_1("tank-outlet-blocked.1", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Fault: share of tank 2's outlet that is blocked. */
  TANK_OUTLET_BLOCKED_2("tank-outlet-blocked.2", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Fault: something trips blower 1, such as its overspeed gear. */
  BLOWER_1_TRIP("blower.1.trip", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Fault: something trips blower 2, such as its overspeed gear. */
  BLOWER_2_TRIP("blower.2.trip", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Fault: the superheater safety valve is stuck. */
  SAFETY_SUPERHEATER_STUCK("safety.superheater.stuck", List.of("free", "open", "shut")),
  /** Fault: drum safety valve 1 is stuck. */
  SAFETY_DRUM_1_STUCK("safety.drum-1.stuck", List.of("free", "open", "shut")),
  /** Fault: drum safety valve 2 is stuck. */
  SAFETY_DRUM_2_STUCK("safety.drum-2.stuck", List.of("free", "open", "shut")),
  /** Fault: electric power to the space is lost. */
  POWER_LOST("power-lost", Kind.SWITCH, Unit.ONE, 0, 1),
  /** Fault: share of the saturated furnace's brick that has fallen. */
  BRICK_FALLEN_SATURATED("brick-fallen.saturated", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Fault: share of the superheater furnace's brick that has fallen. */
  BRICK_FALLEN_SUPERHEATER("brick-fallen.superheater", Kind.FRACTION, Unit.ONE, 0, 1),
  /** Fault: hole in the economizer. */
  ECONOMIZER_LEAK("economizer-leak", Kind.SETTING, Unit.SQUARE_METRE, 0, 0.001),
  /** Fault: water lost from the deaerating tank. */
  DEAERATING_TANK_LOSS("deaerating-tank.loss", Kind.SETTING, Unit.KG_PER_S, 0, 50),
  /** Fault: soot burning in the uptake. */
  UPTAKE_FIRE("uptake-fire", Kind.SETTING, Unit.KG_PER_S, 0, 0.5),
  /** Fault: oil running onto the deck plates without pressure. */
  DECK_OIL("deck-oil", Kind.SETTING, Unit.KG_PER_S, 0, 5),
  /** Easing gear: lifts the superheater's and the first drum safety valve by hand. */
  EASING_GEAR("easing-gear", Kind.SWITCH, Unit.ONE, 0, 1);

  /** What a port's position means. */
  public enum Kind {
    /** An opening or share, 0 is shut. */
    FRACTION,
    /** 0 is off, 1 is on. */
    SWITCH,
    /** One of a few words; the position is the word's index. */
    CHOICE,
    /** A figure with a unit; the position is its SI value. */
    SETTING
  }

  private static final List<Port> ALL = List.of(values());

  private final String id;
  private final Kind kind;
  private final Unit unit;
  private final double min;
  private final double max;

  @SuppressWarnings("ImmutableEnumChecker") // made by List.of
  private final List<String> words;

  Port(String id, Kind kind, Unit unit, double min, double max) {
    this.id = id;
    this.kind = kind;
    this.unit = unit;
    this.min = min;
    this.max = max;
    this.words = List.of();
  }

  Port(String id, List<String> words) {
    this.id = id;
    this.kind = Kind.CHOICE;
    this.unit = Unit.ONE;
    this.min = 0;
    this.max = words.size() - 1;
    this.words = words;
  }

  /** Index of this one in arrays inside the package; never leaves it. */
  @SuppressWarnings("EnumOrdinal")
  int index() {
    return ordinal();
  }

  /**
   * Returns the port's name in ship files.
   *
   * @return lower-kebab words joined by dots, such as {@code root.s1}
   */
  public String id() {
    return id;
  }

  /**
   * Returns what a position means.
   *
   * @return the kind
   */
  public Kind kind() {
    return kind;
  }

  /**
   * Returns the SI unit of a position.
   *
   * @return {@link Unit#ONE} unless the kind is a setting; {@link Unit#PPM} positions are fractions
   */
  public Unit unit() {
    return unit;
  }

  /**
   * Returns the lowest position.
   *
   * @return SI figure
   */
  public double min() {
    return min;
  }

  /**
   * Returns the highest position.
   *
   * @return SI figure
   */
  public double max() {
    return max;
  }

  /**
   * Returns the words of a choice in the order of their positions.
   *
   * @return empty unless the kind is a choice
   */
  public List<String> words() {
    return words;
  }

  /**
   * Tells whether the port can stand in a position.
   *
   * @param position SI figure
   * @return true if it lies in the range and, for a choice or switch, is a whole number
   */
  public boolean accepts(double position) {
    boolean isWhole = kind == Kind.FRACTION || kind == Kind.SETTING || position == (int) position;
    return position >= min && position <= max && isWhole;
  }

  /**
   * Returns the port as element {@code index} of one port for each burner, S1 to H3.
   *
   * @param first the port of burner S1
   * @param burner the burner wanted
   * @return the port of that burner
   */
  static Port of(Port first, Burner burner) {
    return ALL.get(first.index() + burner.index());
  }

  /**
   * Finds a port by its name in ship files.
   *
   * @param id such as {@code main-stop}
   * @return the port, or empty
   */
  public static Optional<Port> ofId(String id) {
    return Arrays.stream(values()).filter(p -> p.id.equals(id)).findFirst();
  }
}
