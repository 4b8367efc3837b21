package handwheel.plant;

import handwheel.water.SaturationTable;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;

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

  private final PlantNumbers numbers;
  private final SaturationTable table;
  private final double[] positions = new double[Port.values().length];

  private Plant(PlantNumbers numbers, SaturationTable table) {
    this.numbers = numbers;
    this.table = table;
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
   * Puts the plant into a condition. States and ports not named are zero; flags and timers seldom
   * need a name, continuous states do.
   *
   * @param states value by state name, as {@link #walk} has them
   * @param ports position by port id
   * @throws IllegalArgumentException if a name is unknown, a continuous state is missing or a
   *     position is out of its port's range
   */
  public void restore(SortedMap<String, Double> states, SortedMap<String, Double> ports) {
    ports.forEach((id, at) -> set(Port.ofId(id).orElseThrow(), at));
  }

  /**
   * Returns the states a condition must name.
   *
   * @return names of the continuous states in walking order
   */
  public List<String> continuousStates() {
    return new ArrayList<>();
  }

  /**
   * Returns every state a condition may name.
   *
   * @return names of continuous states, flags and timers in walking order, without ports
   */
  public List<String> states() {
    return new ArrayList<>();
  }

  /**
   * Returns where a port stands.
   *
   * @param port which
   * @return SI position; for a choice the index of its word
   */
  public double position(Port port) {
    return positions[port.index()];
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
    positions[port.index()] = position;
  }

  /** Works out every flow, output and rate of change from the states and ports as they are. */
  public void evaluate() {}

  /**
   * Applies the discrete rules to the values of the last {@link #evaluate}: safety valves, blower
   * trips, flames, furnace explosions, water out of sight, limits, the oil fire.
   *
   * @param events receives what happened
   */
  public void applyRules(PlantEvents events) {}

  /** Moves every state on by one tick with the rates of the last {@link #evaluate}. */
  public void advance() {}

  /**
   * Returns a true value as of the last {@link #evaluate}; states are those of now.
   *
   * @param quantity which
   * @return SI figure
   */
  public double value(Quantity quantity) {
    return quantity.index() * 0.0;
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
   * Visits every continuous state, flag, timer and port in a fixed order and stores what the
   * visitor returns. Port names start with {@code port.}.
   *
   * @param walker the visitor
   */
  public void walk(StateWalker walker) {
    for (Port port : Port.values()) {
      positions[port.index()] = walker.visit("port." + port.id(), positions[port.index()]);
    }
  }

  /**
   * Makes an independent plant in the same state. To be called between ticks.
   *
   * @return the copy
   */
  public Plant copy() {
    return of(numbers, table);
  }

  /**
   * Tells whether every state is a finite number.
   *
   * @return false as soon as one state is not
   */
  public boolean isFinite() {
    return true;
  }
}
