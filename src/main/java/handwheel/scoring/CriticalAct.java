package handwheel.scoring;

/**
 * How a critical step, rule or outcome came out.
 *
 * @param id id of the step or rule; {@code people-hurt} or {@code people-down} for an outcome
 * @param standing how it came out
 * @param tick when, in ticks of 0.05 s; {@link StepResult#NEVER} where nothing happened
 * @param why what decided it, for people
 */
public record CriticalAct(String id, Standing standing, long tick, String why) {
  /** How a critical act came out. */
  public enum Standing {
    /** Done as it should be, or the rule kept. */
    MET("met"),
    /** Not done as it should be, or the rule broken: the run is failed. */
    NOT_MET("not met"),
    /** Not done through crew or gear: the run is not failed by it. */
    NO_FAULT("no fault");

    private final String words;

    Standing(String words) {
      this.words = words;
    }

    /**
     * Returns the words for people.
     *
     * @return lower-case words
     */
    public String words() {
      return words;
    }
  }

  /**
   * Returns whether this fails the run.
   *
   * @return true when it was not met
   */
  public boolean isFailure() {
    return standing == Standing.NOT_MET;
  }
}
