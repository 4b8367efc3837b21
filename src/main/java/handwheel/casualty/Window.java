package handwheel.casualty;

/**
 * A time allowed from something on.
 *
 * @param ticks how long
 * @param since from what kind of thing
 * @param of id of the cue, phase or step
 */
public record Window(long ticks, Since since, String of) {
  /** From what a time runs. */
  public enum Since {
    /** From the first time a cue was given. */
    CUE,
    /** From the first time a phase was entered. */
    PHASE,
    /** From when another step was done. */
    STEP
  }
}
