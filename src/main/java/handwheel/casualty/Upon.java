package handwheel.casualty;

/** What a witness waits for. */
public sealed interface Upon {
  /**
   * A cue.
   *
   * @param cue id of the cue
   */
  record CueNoticed(String cue) implements Upon {}

  /** The line before was said. */
  record Said() implements Upon {}

  /**
   * A fitting's work was reported done.
   *
   * @param fitting id of the fitting
   */
  record Done(String fitting) implements Upon {}

  /**
   * Work on a fitting was refused.
   *
   * @param fitting id of the fitting
   */
  record Refused(String fitting) implements Upon {}

  /**
   * A reading was taken or heard.
   *
   * @param gauge id of the gauge
   * @param bound what it must keep, SI
   */
  record ReadingIs(String gauge, Bound bound) implements Upon {}

  /**
   * Somebody arrived.
   *
   * @param who station id
   * @param place id of the place
   */
  record Arrived(String who, String place) implements Upon {}

  /**
   * Somebody repeated something else than he was told; the line is used every time.
   *
   * @param who station id
   */
  record Wrong(String who) implements Upon {}

  /** The watch was counted. */
  record Counted() implements Upon {}

  /**
   * A report was passed.
   *
   * @param message id of the report
   */
  record Passed(String message) implements Upon {}
}
