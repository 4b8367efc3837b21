package handwheel.debrief;

/**
 * Where the time of one step went. Spans are ticks; {@link #NONE} where there is none.
 *
 * @param step id of the step
 * @param lookedTicks from its cue to the last look taken before its order was begun
 * @param decidedTicks from there to the first key of its order
 * @param typedTicks from the first key to Enter
 * @param crewTicks from Enter until a hand is on it, or the man speaks
 * @param gearTicks from there until it has got where it was going
 * @param plantTicks from there to the first thing that happened in the plant
 * @param verdict what kind of delay or mistake it was
 */
record Delay(
    String step,
    long lookedTicks,
    long decidedTicks,
    long typedTicks,
    long crewTicks,
    long gearTicks,
    long plantTicks,
    String verdict) {
  /** No such span in the record. */
  static final long NONE = -1;
}
