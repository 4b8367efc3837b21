package handwheel.proof;

import java.util.List;

/** What becomes of an order that the witness means to say. */
@FunctionalInterface
interface Alteration {
  /**
   * Returns what is said instead.
   *
   * @param index how many orders the witness has meant to say before
   * @param say the order meant
   */
  List<Saying> of(int index, String say);

  /** Something said some ticks later than it was meant. */
  record Saying(long laterTicks, String say) {}
}
