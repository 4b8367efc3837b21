package handwheel.plant;

import handwheel.water.SaturationTable;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The whole fire room. One tick of {@value #TICK_S} s is {@link #evaluate}, {@link #applyRules} and
 * {@link #advance}, in that order; ports are set before, people act between the last two.
 */
public final class Plant {
  /** Length of one tick, s. */
  public static final double TICK_S = 0.05;

  /** One pound-force a square inch, Pa. */
  static final double PSI = 6894.757;

  /** One pound an hour, kg/s. */
  static final double LB_PER_H = 0.45359237 / 3600;

  final SteamDrum drum;
  final SafetyValves safeties;
  final MainSteamLine line;
  final Superheater superheater;
  final AuxiliarySteam auxiliary;
  final ForcedDraftBlower blower1;
  final ForcedDraftBlower blower2;
  final AirPath air;
  final FuelSystem fuel;
  final BurnerFront front;
  final Furnace saturated;
  final Furnace superheated;
  final GasPath gas;
  final GeneratingTubes tubes = new GeneratingTubes();
  final Smoke smoke = new Smoke();
  final FeedSystem feed;
  final FireRoom space;
  final OilFire fire;
  final FireGases gases = new FireGases();
  final Bilge bilge;

  private final FlameRules flames;
  private final GaugeGlass glass = new GaugeGlass();
  private final Latches latches = new Latches();

  private final PlantNumbers numbers;
  private final SaturationTable table;
  private final Positions ports = new Positions();
  private final List<Machine> machines;
  private final State[] states;

  /** Values a copy was born with, until its own first evaluation. */
  private double @Nullable [] inherited;

  private Plant(PlantNumbers numbers, SaturationTable table) {
    this.numbers = numbers;
    this.table = table;
    drum = new SteamDrum(numbers, table, ports);
    safeties = new SafetyValves(numbers, ports);
    line = new MainSteamLine(numbers, ports);
    superheater = new Superheater(numbers);
    auxiliary = new AuxiliarySteam(ports);
    blower1 = new ForcedDraftBlower(BlowerPorts.FIRST, numbers, ports);
    blower2 = new ForcedDraftBlower(BlowerPorts.SECOND, numbers, ports);
    air = new AirPath(numbers, ports);
    fuel = new FuelSystem(numbers, ports);
    front = new BurnerFront(numbers, ports);
    saturated = new Furnace(Side.SATURATED, numbers);
    superheated = new Furnace(Side.SUPERHEATER, numbers);
    gas = new GasPath(numbers, ports, saturated, superheated);
    flames = new FlameRules(front, fuel, ports);
    feed = new FeedSystem(numbers, table, ports);
    space = new FireRoom(numbers, table, ports);
    fire = new OilFire(ports);
    bilge = new Bilge(numbers, ports);
    machines =
        List.of(
            drum,
            superheater,
            line,
            saturated,
            superheated,
            tubes,
            blower1,
            blower2,
            air,
            fuel,
            feed,
            smoke,
            space,
            bilge,
            fire,
            gases);
    states = machines.stream().flatMap(m -> m.states().stream()).toArray(State[]::new);
  }

  /**
   * Builds a plant with every state zero; {@link #restore} gives it a condition.
   *
   * @param numbers the ship's sizes
   * @param table saturated water and steam
   * @return the plant
   */
  public static Plant of(PlantNumbers numbers, SaturationTable table) {
    return new Plant(numbers, table);
  }

  /**
   * Builds a plant on the standard table of saturated water and steam.
   *
   * @param numbers the ship's sizes
   * @return the plant
   */
  public static Plant of(PlantNumbers numbers) {
    return of(numbers, SaturationTable.standard());
  }

  /**
   * Puts the plant into a condition. Flags, timers and states of {@link #states} that need not be
   * named are zero then, ports not named stand at their lowest position.
   *
   * @param values value by state name, as {@link #walk} has them, all of {@link #continuousStates}
   *     among them
   * @param positions position by port id
   * @throws IllegalArgumentException if a name is unknown, a continuous state is missing or a
   *     position is out of its port's range
   */
  public void restore(SortedMap<String, Double> values, SortedMap<String, Double> positions) {
    requireNames(values);
    TreeSet<String> unknown = new TreeSet<>(positions.keySet());
    for (Port port : Port.values()) {
      unknown.remove(port.id());
      set(port, positions.getOrDefault(port.id(), port.min()));
    }
    if (!unknown.isEmpty()) {
      throw new IllegalArgumentException("no ports are called " + unknown);
    }
    walkStates((name, value) -> values.getOrDefault(name, 0.0));
    inherited = null;
  }

  private void requireNames(SortedMap<String, Double> values) {
    TreeSet<String> unknown = new TreeSet<>(values.keySet());
    unknown.removeAll(states());
    TreeSet<String> missing = new TreeSet<>(continuousStates());
    missing.removeAll(values.keySet());
    if (!unknown.isEmpty() || !missing.isEmpty()) {
      throw new IllegalArgumentException(
          "a condition with unknown states " + unknown + " and without " + missing);
    }
  }

  /**
   * Returns the states a condition must name. Those that are nothing until something burns, vents
   * or is purged need not be named.
   *
   * @return names of continuous states in walking order
   */
  public List<String> continuousStates() {
    List<String> names = new ArrayList<>();
    for (State state : states) {
      if (!state.mayBeAbsent) {
        names.add(state.name);
      }
    }
    return names;
  }

  /**
   * Returns every state a condition may name.
   *
   * @return names of continuous states, flags and timers in walking order, without ports
   */
  public List<String> states() {
    List<String> names = new ArrayList<>();
    walkStates(
        (name, value) -> {
          names.add(name);
          return value;
        });
    return names;
  }

  /**
   * Returns where a port stands.
   *
   * @param port which
   * @return SI position; for a choice the index of its word
   */
  public double position(Port port) {
    return ports.at(port);
  }

  /**
   * Moves a port.
   *
   * @param port which
   * @param position SI position; for a choice the index of its word
   * @throws IllegalArgumentException if the port does not accept the position
   */
  public void set(Port port, double position) {
    if (!port.accepts(position)) {
      throw new IllegalArgumentException(port.id() + " cannot stand at " + position);
    }
    ports.set(port, position);
  }

  /**
   * Works out every flow, output and rate of change from the states and ports as they are. The
   * order is fixed: steam, air, fire, superheater, feed, fuel, gas, drum, compartment.
   */
  public void evaluate() {
    inherited = null;
    drum.look();
    auxiliary.look(drum);
    line.evaluate(drum, superheater.outletK.x, safeties);
    blower1.evaluate(air.boxPa.x, auxiliary.share);
    blower2.evaluate(air.boxPa.x, auxiliary.share);
    air.evaluate(blower1, blower2, drum.tubeKgPerS, saturated.gasK.x, superheated.gasK.x);
    evaluateFire();
    evaluateWater();
    evaluateSpaces();
  }

  private void evaluateFire() {
    double oilK = fuel.temperatureK.x;
    front.evaluate(fuel, air);
    fuel.evaluate(front.totalKgPerS, auxiliary.share, space.lower.airK.x);
    saturated.evaluate(front.fire(Side.SATURATED), air.sideKgPerS(Side.SATURATED), drum, oilK);
    superheated.evaluate(
        front.fire(Side.SUPERHEATER), air.sideKgPerS(Side.SUPERHEATER), drum, oilK);
    superheater.evaluate(drum, line.superheaterKgPerS, superheated);
  }

  private void evaluateWater() {
    double blowersKgPerS = blower1.steamKgPerS + blower2.steamKgPerS;
    feed.evaluate(drum.pressurePa, auxiliary.share);
    auxiliary.evaluate(drum, blowersKgPerS, feed, fuel);
    feed.tanks(blowersKgPerS, line.engineKgPerS, auxiliary.flowKgPerS);
    gas.casing(drum.saturationTemperatureK.x, space.upper.airK.x);
    gas.evaluate(drum, superheater.gasBehindK, feed);
    smoke.evaluate(front, saturated, superheated, gas.sootKgPerS(), feed.economizerLeakKgPerS);
    air.draft(gas.stackK);
    drum.evaluate(line, auxiliary, feed, gas, safeties);
    tubes.evaluate(drum, saturated.gasK.x);
  }

  private void evaluateSpaces() {
    fire.evaluate(fuel.sprayKgPerS, space.oxygen.x);
    space.leaks(drum, line, superheater.outletK.x, air);
    space.evaluate(air, saturated.brickFaceK.x, gas.casingW, fire);
    gases.evaluate(space, fire.burnsKgPerS());
    bilge.evaluate(air.waterToBilgeKgPerS);
  }

  /**
   * Applies the discrete rules to the values of the last {@link #evaluate}: safety valves, blower
   * trips, flames, furnace explosions, water out of sight, limits, the oil fire. What they decide
   * acts from the next evaluation on, except that an explosion burns vapour and air at once.
   *
   * @param events receives what happened
   */
  public void applyRules(PlantEvents events) {
    front.applySteamRule(drum.tubeKgPerS, air.sideKgPerS(Side.SATURATED));
    saturated.applyPurgeRule(front.fire(Side.SATURATED));
    superheated.applyPurgeRule(front.fire(Side.SUPERHEATER));
    safeties.applyRules(line.superheaterOutletPa, drum.pressurePa, events);
    blower1.applyRules(events);
    blower2.applyRules(events);
    flames.loseFlames(events);
    flames.applyTo(saturated, events);
    flames.applyTo(superheated, events);
    glass.applyRules(drum.levelM, events);
    latches.applyRules(superheater, tubes, space, events);
    fire.applyRules(events);
  }

  /** Moves every state on by one tick with the rates of the last {@link #evaluate}. */
  public void advance() {
    for (State state : states) {
      state.advance();
    }
  }

  /**
   * Returns a true value: a flow or output as of the last {@link #evaluate}, a state as of now.
   *
   * @param quantity which
   * @return SI figure
   */
  public double value(Quantity quantity) {
    double[] born = inherited;
    return born == null ? quantity.read(this) : born[quantity.index()];
  }

  /**
   * Returns the heat dose a body takes up, as of the last {@link #evaluate}; 0.3 hurts, 1
   * incapacitates.
   *
   * @param zone where the body is
   * @return dose a second; 0 outside
   */
  public double doseRatePerS(Zone zone) {
    return switch (zone) {
      case LOWER -> value(Quantity.SPACE_LOWER_DOSE_RATE);
      case UPPER -> value(Quantity.SPACE_UPPER_DOSE_RATE);
      case OUTSIDE -> 0;
    };
  }

  /**
   * Returns the dose of asphyxiant gases a body takes up, as of the last {@link #evaluate}. It is
   * counted beside the heat dose, with the same limits, and not added to it.
   *
   * @param zone where the body is
   * @return dose a second; 0 outside
   */
  public double gasDoseRatePerS(Zone zone) {
    return switch (zone) {
      case LOWER -> value(Quantity.SPACE_LOWER_GAS_DOSE_RATE);
      case UPPER -> value(Quantity.SPACE_UPPER_GAS_DOSE_RATE);
      case OUTSIDE -> 0;
    };
  }

  /**
   * Returns the heat the oil fire radiates to a distance.
   *
   * @param distanceM from the middle of the fire, m
   * @return W/m2; 0 without a fire
   */
  public double fireFluxWPerM2(double distanceM) {
    return FireRadiation.wPerM2(value(Quantity.FIRE_HEAT), distanceM);
  }

  /**
   * Returns the heat dose a body takes up from the oil fire's radiation alone, to be added to that
   * of the air.
   *
   * @param distanceM from the middle of the fire, m
   * @return dose a second; 0 below 2.5 kW/m2
   */
  public double radiantDoseRatePerS(double distanceM) {
    return FireRadiation.dosePerS(fireFluxWPerM2(distanceM));
  }

  /**
   * Visits every continuous state, flag, timer and port in a fixed order and stores what the
   * visitor returns. Port names start with {@code port.}.
   *
   * @param walker the visitor
   */
  public void walk(StateWalker walker) {
    walkStates(walker);
    ports.walk(walker);
  }

  private void walkStates(StateWalker walker) {
    for (State state : states) {
      state.walk(walker);
    }
    safeties.walkFlags(walker);
    front.walkFlags(walker);
    for (Machine machine : machines) {
      machine.walkFlags(walker);
    }
    glass.walkFlags(walker);
    latches.walkFlags(walker);
  }

  /**
   * Makes an independent plant in the same state, showing the same values. To be called between
   * ticks: a copy has to be evaluated before its rules or states can go on.
   *
   * @return the copy
   */
  public Plant copy() {
    Plant copy = of(numbers, table);
    List<Double> values = new ArrayList<>();
    walk(
        (name, value) -> {
          values.add(value);
          return value;
        });
    var next = values.iterator();
    copy.walk((name, value) -> next.next());
    double[] born = new double[Quantity.values().length];
    for (Quantity quantity : Quantity.values()) {
      born[quantity.index()] = value(quantity);
    }
    copy.inherited = born;
    return copy;
  }

  /**
   * Tells whether every continuous state is a finite number.
   *
   * @return false as soon as one state is not
   */
  public boolean isFinite() {
    for (State state : states) {
      if (!Double.isFinite(state.x)) {
        return false;
      }
    }
    return true;
  }

  List<State> continuous() {
    return List.of(states);
  }
}
