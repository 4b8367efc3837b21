package handwheel.plant;

import java.util.List;

/** What every machine offers the plant besides its own evaluation. */
interface Machine {
  /** Returns the machine's continuous states in a fixed order. */
  List<State> states();

  /** Returns where the machine's equations hold; called once. */
  default List<ModelRange> ranges() {
    return List.of();
  }

  /** Visits the machine's flags and timers in a fixed order; most have none. */
  default void walkFlags(StateWalker walker) {}
}
