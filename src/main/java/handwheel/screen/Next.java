package handwheel.screen;

import java.util.List;

/**
 * What follows from an event.
 *
 * @param state the next state
 * @param deeds what is to be done, in order
 */
record Next(State state, List<Deed> deeds) {
  Next {
    deeds = List.copyOf(deeds);
  }

  static Next only(State state) {
    return new Next(state, List.of());
  }

  static Next with(State state, Deed... deeds) {
    return new Next(state, List.of(deeds));
  }
}
