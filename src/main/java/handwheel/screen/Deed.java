package handwheel.screen;

import handwheel.drill.Input;

/** What the face wants done. */
sealed interface Deed {
  /** The cautions are acknowledged: the drill begins. */
  record Begin() implements Deed {}

  /** The session gets an input. */
  record Offer(Input input) implements Deed {}

  /** The face is left. */
  record Leave() implements Deed {}
}
