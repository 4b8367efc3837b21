package handwheel.casualty;

/** How well the watch is drilled. */
public enum CrewState {
  /** Nothing happens unordered. */
  GREEN,
  /** The ship file's standing acts happen unordered after their delay. */
  DRILLED,
  /** Green in half of the runs and drilled in the others, by their seed. */
  DRAWN
}
