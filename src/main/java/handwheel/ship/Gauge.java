package handwheel.ship;

import handwheel.plant.Quantity;
import handwheel.units.Unit;
import java.util.List;

/**
 * An instrument: what it shows, not what is true.
 *
 * @param id lower-kebab id
 * @param name what people call it
 * @param of the true value behind it
 * @param at ids of the places where it can be read
 * @param unit of the scale
 * @param low lower end of the scale, in {@code unit}
 * @param high upper end of the scale, in {@code unit}
 * @param lagS first-order lag, s; 0 none
 */
public record Gauge(
    String id,
    String name,
    Quantity of,
    List<String> at,
    Unit unit,
    double low,
    double high,
    double lagS) {
  /**
   * Copies the list.
   *
   * @param id lower-kebab id
   * @param name what people call it
   * @param of the true value behind it
   * @param at ids of the places where it can be read
   * @param unit of the scale
   * @param low lower end of the scale, in {@code unit}
   * @param high upper end of the scale, in {@code unit}
   * @param lagS first-order lag, s; 0 none
   */
  public Gauge {
    at = List.copyOf(at);
  }
}
