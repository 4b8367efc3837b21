package handwheel.reader;

import handwheel.diagnostics.Severity;

/**
 * Everything that can be found in a script or a ship file. The page docs/findings.md has a section
 * for each; a test holds the two together. Ids never change their meaning.
 */
enum FindingId {
  // What is wrong with the text before it means anything.

  TOO_LARGE("yaml.too-large", Severity.ERROR, "The file is larger than what is read."),
  NOT_UTF_8("yaml.not-utf-8", Severity.ERROR, "The file is not written in UTF-8."),
  CONTROL_CHARACTER(
      "yaml.control-character",
      Severity.ERROR,
      "A control character stands in the file, or an escape makes one."),
  HIDDEN_CHARACTER(
      "yaml.hidden-character",
      Severity.ERROR,
      "A character stands in the file that nobody can see."),
  ODD_BLANK("yaml.odd-blank", Severity.ERROR, "A character looks like a blank and is none."),
  TAB("yaml.tab", Severity.ERROR, "A tab stands where blanks belong."),
  EMPTY_FILE("yaml.empty-file", Severity.ERROR, "The file holds nothing but blanks and comments."),
  SECOND_DOCUMENT("yaml.second-document", Severity.ERROR, "The file holds more than one document."),
  TOO_DEEP("yaml.too-deep", Severity.ERROR, "Lists and mappings lie too deep within each other."),
  ANCHOR(
      "yaml.anchor",
      Severity.ERROR,
      "An anchor or alias stands in the file, or a text starts like one."),
  TAG("yaml.tag", Severity.ERROR, "A tag stands in the file, or a text starts like one."),
  KEY_NOT_TEXT(
      "yaml.key-not-text", Severity.ERROR, "A list or a mapping stands where a key belongs."),
  DUPLICATE_KEY("yaml.duplicate-key", Severity.ERROR, "A key stands twice in one mapping."),
  CURLY_QUOTE(
      "yaml.curly-quote", Severity.ERROR, "Typeset quotes stand where straight ones belong."),
  OPEN_QUOTE("yaml.open-quote", Severity.ERROR, "A quote is opened and not closed."),
  TEXT_AFTER_QUOTE(
      "yaml.text-after-quote", Severity.ERROR, "Something stands behind a closing quote."),
  OPEN_BRACKET(
      "yaml.open-bracket",
      Severity.ERROR,
      "A bracket or brace is opened and not closed, or a comma is missing inside."),
  RESERVED_SIGN(
      "yaml.reserved-sign", Severity.ERROR, "A text starts with a sign YAML keeps for itself."),
  COLON_IN_TEXT(
      "yaml.colon-in-text",
      Severity.ERROR,
      "A text without quotes holds a colon with a blank behind it."),
  COMMA_IN_TEXT(
      "yaml.comma-in-text", Severity.ERROR, "A text without quotes holds a comma inside braces."),
  NO_BLANK_AFTER_COLON(
      "yaml.no-blank-after-colon", Severity.ERROR, "The blank behind a key's colon is missing."),
  NO_COLON(
      "yaml.no-colon", Severity.ERROR, "A line has no colon where a key with its value belongs."),
  INDENT("yaml.indent", Severity.ERROR, "A line's indent fits no line above."),
  BLOCK_TEXT(
      "yaml.block-text",
      Severity.ERROR,
      "Something stands behind the sign that announces a text below."),
  ESCAPE("yaml.escape", Severity.ERROR, "A backslash in double quotes starts no known sign."),
  SYNTAX("yaml.syntax", Severity.ERROR, "The text is no YAML for another reason."),

  // Forms of values; in scripts and ship files alike.

  MORE_FINDINGS(
      "script.more-findings", Severity.NOTE, "There are more findings than are told at once."),
  WRONG_HEADER(
      "script.wrong-header",
      Severity.ERROR,
      "The first key does not say what kind of file this is."),
  UNKNOWN_VERSION(
      "script.unknown-version",
      Severity.ERROR,
      "The file is written for another version of the language."),
  WRONG_FORM(
      "script.wrong-form",
      Severity.ERROR,
      "A text, a list or a mapping stands where another of them belongs."),
  UNKNOWN_KEY("script.unknown-key", Severity.ERROR, "A key does not belong here."),
  MISSING_KEY("script.missing-key", Severity.ERROR, "A key that must be there is not."),
  CONFLICTING_KEYS(
      "script.conflicting-keys", Severity.ERROR, "Keys stand together that exclude each other."),
  MISSING_VALUE("script.missing-value", Severity.ERROR, "A key or an item of a list has no value."),
  EMPTY_TEXT("script.empty-text", Severity.ERROR, "A text for people is empty."),
  TEXT_TOO_LONG(
      "script.text-too-long",
      Severity.ERROR,
      "A text for people is longer than a screen can show."),
  EMPTY_LIST(
      "script.empty-list", Severity.ERROR, "A list has no items where at least one is needed."),
  TOO_MANY("script.too-many", Severity.ERROR, "A list has more items than are read."),
  COMMA_LIST(
      "script.comma-list",
      Severity.ERROR,
      "Several ids stand in one text, with commas between them."),
  BAD_ID(
      "script.bad-id",
      Severity.ERROR,
      "An id is not written in lower-case words joined by hyphens."),
  DUPLICATE_ID("script.duplicate-id", Severity.ERROR, "Two parts of one kind have the same id."),
  RESERVED_ID("script.reserved-id", Severity.ERROR, "An id has a meaning of its own."),
  UNKNOWN_WORD(
      "script.unknown-word", Severity.ERROR, "A word is none of the few that belong here."),
  NOT_TRUE_OR_FALSE(
      "script.not-true-or-false",
      Severity.ERROR,
      "Something else than true or false stands there."),
  NOT_A_WHOLE_NUMBER(
      "script.not-a-whole-number",
      Severity.ERROR,
      "Something else than a whole number stands there."),
  NOT_A_NUMBER("script.not-a-number", Severity.ERROR, "Something else than a number stands there."),
  OUT_OF_RANGE("script.out-of-range", Severity.ERROR, "A figure is too small or too large."),
  NOT_A_QUANTITY(
      "script.not-a-quantity",
      Severity.ERROR,
      "Something else than a figure with its unit stands there."),
  MISSING_UNIT("script.missing-unit", Severity.ERROR, "A figure has no unit."),
  UNKNOWN_UNIT("script.unknown-unit", Severity.ERROR, "A unit is not known."),
  WRONG_UNIT(
      "script.wrong-unit", Severity.ERROR, "A unit measures something else than what is wanted."),
  NOT_WHOLE_TICKS(
      "script.not-whole-ticks", Severity.ERROR, "A time is no whole number of the plant's steps."),
  BAD_RANGE(
      "script.bad-range", Severity.ERROR, "A range does not run from a lower to a higher end."),
  NOT_POINTS(
      "script.not-points", Severity.ERROR, "The points needed to pass are not written as points."),
  NOT_A_WINDOW("script.not-a-window", Severity.ERROR, "A time allowed does not say from what on."),
  NOT_A_RULE(
      "script.not-a-rule",
      Severity.ERROR,
      "Something else than the number of a trade rule stands there."),

  // Names of things that do not exist.

  UNKNOWN_PHASE("script.unknown-phase", Severity.ERROR, "No phase has this id."),
  UNKNOWN_STEP("script.unknown-step", Severity.ERROR, "No step of the response has this id."),
  UNKNOWN_CUE("script.unknown-cue", Severity.ERROR, "No phase gives this cue."),
  UNKNOWN_FAULT("script.unknown-fault", Severity.ERROR, "No phase makes this fault."),
  UNKNOWN_REPORT(
      "script.unknown-report", Severity.ERROR, "No step and no phase knows this report."),
  UNKNOWN_VARIATION("script.unknown-variation", Severity.ERROR, "Nothing of this name is drawn."),
  UNKNOWN_FITTING("script.unknown-fitting", Severity.ERROR, "The ship has no fitting of this id."),
  UNKNOWN_GAUGE("script.unknown-gauge", Severity.ERROR, "The ship has no gauge of this id."),
  UNKNOWN_PLACE("script.unknown-place", Severity.ERROR, "The ship has no place of this id."),
  UNKNOWN_WATCHSTANDER(
      "script.unknown-watchstander",
      Severity.ERROR,
      "The ship has nobody of this station on watch."),
  UNKNOWN_CONDITION(
      "script.unknown-condition", Severity.ERROR, "The ship has no initial condition of this id."),
  UNKNOWN_QUANTITY(
      "script.unknown-quantity", Severity.ERROR, "The plant has no true value of this id."),

  // Scripts that can be read and make no sense, or no safe one.

  OTHER_SHIP("script.other-ship", Severity.ERROR, "The script is written for another ship."),
  ORDER_NOT_UNDERSTOOD("script.order-not-understood", Severity.ERROR, "A text is no order."),
  UPON_NOT_UNDERSTOOD(
      "script.upon-not-understood", Severity.ERROR, "A text is nothing a witness can wait for."),
  NOTHING_SAID(
      "script.nothing-said",
      Severity.ERROR,
      "The witness waits for a line said before, and there is none."),
  NO_WITNESS(
      "script.no-witness",
      Severity.WARNING,
      "No witness proves that the script can be done right."),
  NO_LEAK_PORT("script.no-leak-port", Severity.ERROR, "Nothing can break at this place."),
  NO_SUCH_MOVE("script.no-such-move", Severity.ERROR, "A fitting cannot be brought to this state."),
  NO_SUCH_CONTROL(
      "script.no-such-control",
      Severity.ERROR,
      "A fitting has no control on this side of the bulkhead."),
  OFF_SCALE("script.off-scale", Severity.WARNING, "A bound lies outside the gauge's scale."),
  CONDITION_FORM(
      "script.condition-form",
      Severity.ERROR,
      "A condition has a key that does not belong to its kind."),
  NO_CAUSE(
      "script.no-cause",
      Severity.ERROR,
      "A way out of a phase says neither when nor after what time."),
  END_GOES_ON("script.end-goes-on", Severity.ERROR, "An end phase has ways out."),
  NO_END("script.no-end", Severity.ERROR, "No phase is the end."),
  DEAD_END("script.dead-end", Severity.ERROR, "No way leads from a phase to an end."),
  UNREACHABLE_PHASE("script.unreachable-phase", Severity.WARNING, "No way leads to a phase."),
  SHADOWED_WAY(
      "script.shadowed-way",
      Severity.WARNING,
      "A way out of a phase is never taken, an earlier one always comes first."),
  BOTH_WAYS(
      "script.both-ways", Severity.NOTE, "Two ways out of a phase can be open in the same tick."),
  LIVELOCK(
      "script.livelock",
      Severity.ERROR,
      "Phases can follow each other in a circle without any time going by."),
  TOO_LATE_EVER(
      "script.too-late-ever",
      Severity.WARNING,
      "A phase cannot be reached before the drill's limit."),
  AFTER_CYCLE("script.after-cycle", Severity.ERROR, "Steps wait for each other in a circle."),
  REDUNDANT_AFTER(
      "script.redundant-after",
      Severity.NOTE,
      "A step waits for another that it waits for already by way of a third."),
  TIMES_CONTRADICT(
      "script.times-contradict", Severity.ERROR, "Times and order of steps cannot all be kept."),
  SAME_STEP(
      "script.same-step", Severity.WARNING, "Two steps ask for the same; one act earns both."),
  NO_POINTS("script.no-points", Severity.NOTE, "A step is worth nothing."),
  POINTS_SUM(
      "script.points-sum", Severity.ERROR, "The points of the response do not add up to 100."),
  WINDOW_PAST_LIMIT(
      "script.window-past-limit",
      Severity.WARNING,
      "A step's time runs on past the end of the drill."),
  DONE_BEFORE_WITHIN(
      "script.done-before-within", Severity.WARNING, "A step's effect is due before its order."),
  CRITICAL_WITHOUT_WHY(
      "script.critical-without-why", Severity.ERROR, "A critical step or rule gives no reason."),
  NO_CAUTION("script.no-caution", Severity.SAFETY, "A script with critical steps has no caution."),
  CAUTION_WITHOUT_AVOID(
      "script.caution-without-avoid", Severity.SAFETY, "A caution does not say how to stay clear."),
  MODEL_ONLY_CRITICAL(
      "script.model-only-critical",
      Severity.SAFETY,
      "A run would fail on a figure of the model alone."),
  STEP_WITHOUT_CAUTION(
      "script.step-without-caution",
      Severity.SAFETY,
      "A step moves what is deadly to move at the wrong time, and no caution stands before it."),
  BRIEF_GIVES_AWAY("script.brief-gives-away", Severity.WARNING, "The brief names the casualty."),
  TITLE_GIVES_AWAY("script.title-gives-away", Severity.WARNING, "The title names the casualty."),
  REPORT_NOT_GRADED(
      "script.report-not-graded",
      Severity.WARNING,
      "A phase waits for a report that no step asks for."),
  WRONG_DRAW(
      "script.wrong-draw",
      Severity.ERROR,
      "A variation draws words where a figure is needed, or the other way round."),
  ONE_WORD("script.one-word", Severity.ERROR, "A variation of words has less than two of them."),
  UNUSED_VARIATION(
      "script.unused-variation", Severity.WARNING, "Something is drawn and used nowhere."),

  // Ship files.

  MISSING_FILE("ship.missing-file", Severity.ERROR, "A file of the ship is not there."),
  BAD_FILE_NAME(
      "ship.bad-file-name", Severity.ERROR, "A file's name is none that a ship file may give."),
  UNKNOWN_NUMBER("ship.unknown-number", Severity.ERROR, "The plant has no size of this name."),
  UNKNOWN_PORT("ship.unknown-port", Severity.ERROR, "The plant has no port of this name."),
  WRONG_PORT("ship.wrong-port", Severity.ERROR, "A port is of another kind than is needed here."),
  PORT_REFUSES("ship.port-refuses", Severity.ERROR, "A port cannot stand in this position."),
  NO_ACTS("ship.no-acts", Severity.ERROR, "A fitting does not say what can be done to it."),
  NO_CONTROL("ship.no-control", Severity.ERROR, "A fitting can be worked nowhere."),
  TWO_CONTROLS("ship.two-controls", Severity.ERROR, "A fitting has two controls at one place."),
  NO_SUPERVISOR(
      "ship.no-supervisor", Severity.ERROR, "The watch does not start with the supervisor."),
  CUT_OFF_PLACE("ship.cut-off-place", Severity.WARNING, "No way leads to a place."),
  NO_LENGTH("ship.no-length", Severity.ERROR, "A way has no length."),
  OTHER_CONDITION("ship.other-condition", Severity.ERROR, "A condition's file bears another id."),
  UNKNOWN_STATE("ship.unknown-state", Severity.ERROR, "The plant has no state of this name."),
  MISSING_STATE(
      "ship.missing-state", Severity.ERROR, "A condition leaves out a state of the plant."),
  MISSING_PORT(
      "ship.missing-port",
      Severity.ERROR,
      "A condition leaves out a port that cannot stand at nought.");

  private final String id;
  private final Severity severity;
  private final String meaning;

  FindingId(String id, Severity severity, String meaning) {
    this.id = id;
    this.severity = severity;
    this.meaning = meaning;
  }

  /** Returns the stable dotted id. */
  String id() {
    return id;
  }

  Severity severity() {
    return severity;
  }

  /** Returns what it means, one sentence. */
  String meaning() {
    return meaning;
  }
}
