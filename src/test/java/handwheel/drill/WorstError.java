package handwheel.drill;

import handwheel.plant.Plant;
import handwheel.plant.Quantity;
import handwheel.units.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** The largest difference between two plants in one quantity, and where it was. */
final class WorstError {
  private final Quantity quantity;
  private final Unit unit;
  private double worst;
  private String run = "-";
  private double atS;

  WorstError(Quantity quantity, Unit unit) {
    this.quantity = quantity;
    this.unit = unit;
  }

  void look(Plant one, Plant other, String name, double timeS) {
    double error =
        quantity.in(unit, one.value(quantity)) - quantity.in(unit, other.value(quantity));
    if (!(Math.abs(error) <= worst)) {
      worst = Math.abs(error);
      run = name;
      atS = timeS;
    }
  }

  double worst() {
    return worst;
  }

  /**
   * Two figures, rounded up, so that the page never claims less than was found; 0 stands for less
   * than a millionth.
   */
  String rounded() {
    return worst < 1e-6
        ? "0"
        : new BigDecimal(worst).round(new MathContext(2, RoundingMode.UP)).toPlainString();
  }

  /** A difference of gauge pressures is in psi, and a share has no unit. */
  static String word(Unit unit) {
    return unit == Unit.PSIG ? "psi" : unit == Unit.ONE ? "" : unit.symbol();
  }

  String line() {
    String at = BigDecimal.valueOf(Math.round(atS * 20) * 5L, 2).toPlainString();
    return "| `"
        + quantity.id()
        + "` | "
        + rounded()
        + " "
        + word(unit)
        + " | "
        + run
        + " | "
        + at
        + " s |";
  }
}
