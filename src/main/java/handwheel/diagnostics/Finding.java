package handwheel.diagnostics;

/**
 * One thing wrong with a person's input.
 *
 * @param id stable dotted id, lower-kebab parts, such as {@code script.unknown-key}
 * @param severity how much it matters
 * @param spot where it is
 * @param message what was found and what was expected, one or two sentences
 * @param mend how to put it right, one sentence; may be empty
 */
public record Finding(String id, Severity severity, SourceSpot spot, String message, String mend) {
  /**
   * Returns whether a script with this finding may not be run.
   *
   * @return true for {@link Severity#SAFETY} and {@link Severity#ERROR}
   */
  public boolean stopsTheDrill() {
    return severity == Severity.SAFETY || severity == Severity.ERROR;
  }

  /**
   * Prints the finding for a person, one to two lines.
   *
   * @return text such as {@code a.yaml:3:5: error: ... [script.unknown-key]}
   */
  public String text() {
    String head =
        spot
            + ": "
            + severity.name().toLowerCase(java.util.Locale.ROOT)
            + ": "
            + message
            + " ["
            + id
            + "]";
    return mend.isEmpty() ? head : head + "\n" + "    " + mend;
  }
}
