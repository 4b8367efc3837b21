package handwheel.casualty;

import java.util.Locale;

/** What an outcome costs, whoever brought it about. */
public sealed interface OutcomeRule {
  /**
   * Returns what it is called on a score sheet.
   *
   * @return lower-kebab id
   */
  String id();

  /**
   * Returns what it costs.
   *
   * @return points, basis and reason
   */
  Grade grade();

  /**
   * People come to harm.
   *
   * @param harm how badly
   * @param above charged when more people than this are
   * @param grade what it costs
   */
  record People(Harm harm, int above, Grade grade) implements OutcomeRule {
    @Override
    public String id() {
      return "people-" + harm.word();
    }
  }

  /**
   * Something comes to pass, such as a tube that fails or water that goes out of sight. It is
   * charged once, when its condition has first held for its time.
   *
   * @param id lower-kebab id
   * @param when the condition
   * @param grade what it costs
   */
  record Came(String id, When when, Grade grade) implements OutcomeRule {}

  /** How badly a person is hurt. */
  enum Harm {
    /** Hurt, on his feet. */
    HURT,
    /** Down. */
    DOWN;

    /**
     * Returns the word of a script and a record.
     *
     * @return lower-case word
     */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
