package handwheel.scoring;

/**
 * Something told beside the score that costs nothing.
 *
 * @param tick when, in ticks of 0.05 s
 * @param kind what sort of thing
 * @param step id of the step or rule whose charge came last before it; may be empty
 * @param text for people
 */
public record Note(long tick, Kind kind, String step, String text) {
  /** What sort of thing is noted. */
  public enum Kind {
    /** A person was hurt and stayed on his feet; one note a person. */
    HURT,
    /** A person went down; one note a person. */
    DOWN,
    /** Something happened in the plant. */
    PLANT,
    /** Crew or gear failed. */
    CREW_OR_GEAR,
    /** A remark on how a step was judged. */
    REMARK
  }
}
