package handwheel.plant;

import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;

/** Plants set up for a check: one size altered, some states put where the check wants them. */
final class Rig {
  private Rig() {}

  static Plant with(String start, PlantNumber altered, double factor) {
    SortedMap<String, Double> changes = new TreeMap<>();
    changes.put(altered.id(), altered.usual() * factor);
    return Starts.plant(start, PlantNumbers.usual().with(changes));
  }

  /** Puts a state to a value. */
  static Plant put(Plant plant, String state, double value) {
    boolean[] isFound = new boolean[1];
    plant.walk(
        (name, x) -> {
          isFound[0] |= name.equals(state);
          return name.equals(state) ? value : x;
        });
    if (!isFound[0]) {
      throw new IllegalArgumentException(state);
    }
    return plant;
  }

  static double read(Plant plant, Quantity quantity) {
    plant.evaluate();
    return plant.value(quantity);
  }

  /** Finds where a rising function crosses a value. */
  static double where(DoubleUnaryOperator rising, double value, double low, double high) {
    double a = low;
    double b = high;
    for (int i = 0; i < 60; i++) {
      double middle = (a + b) / 2;
      if (rising.applyAsDouble(middle) < value) {
        a = middle;
      } else {
        b = middle;
      }
    }
    return (a + b) / 2;
  }
}
