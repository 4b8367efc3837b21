package handwheel.casualty;

/** How well the watch is drilled. */
public enum CrewState {
  /** Nothing happens unordered. */
  GREEN,
  /** The ship file's standing acts happen unordered after their delay. */
  DRILLED
}
