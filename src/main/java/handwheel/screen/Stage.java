package handwheel.screen;

/** Where the face is. */
enum Stage {
  /** A caution stands there to be acknowledged. */
  CAUTION,
  /** The brief stands there. */
  BRIEF,
  /** The drill runs. */
  RUNNING,
  /** Help covers the drill, which runs on. */
  HELP,
  /** The drill stands still in sight, in a mode that does not count. */
  FROZEN,
  /** The drill is stopped and the screen blank. */
  STOPPED,
  /** The drill is over, the score sheet stands there. */
  OVER
}
