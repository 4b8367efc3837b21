package handwheel.casualty;

/**
 * What an outcome costs.
 *
 * @param harm how badly people are hurt
 * @param above charged when more people than this are
 * @param grade what it costs
 */
public record OutcomeRule(Harm harm, int above, Grade grade) {
  /** How badly a person is hurt. */
  public enum Harm {
    /** Hurt, on his feet. */
    HURT,
    /** Down. */
    DOWN
  }
}
