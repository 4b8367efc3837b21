package handwheel.casualty;

import handwheel.plant.Quantity;

/** A true value a phase or a never may depend on. */
public sealed interface Truth {
  /**
   * Returns the id as a script writes it.
   *
   * @return dotted id
   */
  String id();

  /**
   * A value of the plant.
   *
   * @param quantity the value
   */
  record Of(Quantity quantity) implements Truth {
    @Override
    public String id() {
      return quantity.id();
    }
  }

  /**
   * The flow out of one leak, kg/s.
   *
   * @param fault id of the leak
   */
  record LeakFlow(String fault) implements Truth {
    @Override
    public String id() {
      return "leak." + fault + ".flow";
    }
  }
}
