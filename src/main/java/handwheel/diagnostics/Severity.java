package handwheel.diagnostics;

/** How much a finding matters. */
public enum Severity {
  /** Worth knowing; nothing is wrong. */
  NOTE,
  /** Probably not meant; the drill can run. */
  WARNING,
  /** Would teach an unsafe order or lacks a caution; never suppressed, the drill does not run. */
  SAFETY,
  /** Cannot be understood or cannot work; the drill does not run. */
  ERROR
}
