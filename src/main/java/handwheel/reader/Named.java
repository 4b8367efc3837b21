package handwheel.reader;

/** Kinds of things that have ids and are named elsewhere by them. */
enum Named {
  PHASE("a phase", FindingId.UNKNOWN_PHASE),
  STEP("a step", FindingId.UNKNOWN_STEP),
  CUE("a cue", FindingId.UNKNOWN_CUE),
  FAULT("a fault", FindingId.UNKNOWN_FAULT),
  LEAK("a leak", FindingId.UNKNOWN_FAULT),
  REPORT("a report", FindingId.UNKNOWN_REPORT),
  VARIATION("a variation", FindingId.UNKNOWN_VARIATION),
  FITTING("a fitting", FindingId.UNKNOWN_FITTING),
  GAUGE("a gauge", FindingId.UNKNOWN_GAUGE),
  PLACE("a place", FindingId.UNKNOWN_PLACE),
  WATCHSTANDER("a watchstander", FindingId.UNKNOWN_WATCHSTANDER),
  CONDITION("an initial condition", FindingId.UNKNOWN_CONDITION);

  private final String words;
  private final FindingId unknown;

  Named(String words, FindingId unknown) {
    this.words = words;
    this.unknown = unknown;
  }

  /** Returns what it is, for people, with its article. */
  String words() {
    return words;
  }

  /** Returns the finding for a name nothing bears. */
  FindingId unknown() {
    return unknown;
  }
}
