package handwheel.reader;

import handwheel.diagnostics.Severity;

/** Everything that can be found wrong with a script or a ship, by its stable id. */
enum FindingId {
  /** Anchors and aliases are not read here: each thing is written out where it is used. */
  ANCHOR(
      "yaml.anchor",
      Severity.ERROR,
      "Anchors and aliases are not read here: each thing is written out where it is used."),
  /** A block of text is not marked as it must be. */
  BLOCK_TEXT("yaml.block-text", Severity.ERROR, "A block of text is not marked as it must be."),
  /** A colon with a blank behind it stands in a text without quotes. */
  COLON_IN_TEXT(
      "yaml.colon-in-text",
      Severity.ERROR,
      "A colon with a blank behind it stands in a text without quotes."),
  /** A comma stands in a text without quotes, inside braces. */
  COMMA_IN_TEXT(
      "yaml.comma-in-text",
      Severity.ERROR,
      "A comma stands in a text without quotes, inside braces."),
  /** Several ids stand where one is read; a list has brackets. */
  COMMA_LIST(
      "script.comma-list",
      Severity.ERROR,
      "Several ids stand where one is read; a list has brackets."),
  /** A character that is no text stands in the file. */
  CONTROL_CHARACTER(
      "yaml.control-character", Severity.ERROR, "A character that is no text stands in the file."),
  /** A curly quotation mark stands where a straight one is meant. */
  CURLY_QUOTE(
      "yaml.curly-quote",
      Severity.ERROR,
      "A curly quotation mark stands where a straight one is meant."),
  /** A key stands twice in one mapping. */
  DUPLICATE_KEY("yaml.duplicate-key", Severity.ERROR, "A key stands twice in one mapping."),
  /** There is nothing in the file. */
  EMPTY_FILE("yaml.empty-file", Severity.ERROR, "There is nothing in the file."),
  /** A backslash in double quotes is followed by what it cannot stand before. */
  ESCAPE(
      "yaml.escape",
      Severity.ERROR,
      "A backslash in double quotes is followed by what it cannot stand before."),
  /** A character nobody can see stands in the file. */
  HIDDEN_CHARACTER(
      "yaml.hidden-character", Severity.ERROR, "A character nobody can see stands in the file."),
  /** A line is indented otherwise than its neighbours. */
  INDENT("yaml.indent", Severity.ERROR, "A line is indented otherwise than its neighbours."),
  /** A key must be a single word. */
  KEY_NOT_TEXT("yaml.key-not-text", Severity.ERROR, "A key must be a single word."),
  /** The file is not written in UTF-8. */
  NOT_UTF_8("yaml.not-utf-8", Severity.ERROR, "The file is not written in UTF-8."),
  /** A blank is missing behind a colon. */
  NO_BLANK_AFTER_COLON(
      "yaml.no-blank-after-colon", Severity.ERROR, "A blank is missing behind a colon."),
  /** A colon is missing behind a key. */
  NO_COLON("yaml.no-colon", Severity.ERROR, "A colon is missing behind a key."),
  /** A blank that is no ordinary one stands in the file. */
  ODD_BLANK(
      "yaml.odd-blank", Severity.ERROR, "A blank that is no ordinary one stands in the file."),
  /** A bracket or brace is opened and not closed. */
  OPEN_BRACKET("yaml.open-bracket", Severity.ERROR, "A bracket or brace is opened and not closed."),
  /** A quotation is opened and not closed. */
  OPEN_QUOTE("yaml.open-quote", Severity.ERROR, "A quotation is opened and not closed."),
  /** A text starts with a sign that means something to YAML. */
  RESERVED_SIGN(
      "yaml.reserved-sign",
      Severity.ERROR,
      "A text starts with a sign that means something to YAML."),
  /** A second document starts in the file. */
  SECOND_DOCUMENT("yaml.second-document", Severity.ERROR, "A second document starts in the file."),
  /** Something is no YAML. */
  SYNTAX("yaml.syntax", Severity.ERROR, "Something is no YAML."),
  /** A tab stands where blanks are meant. */
  TAB("yaml.tab", Severity.ERROR, "A tab stands where blanks are meant."),
  /** Tags are not read here. */
  TAG("yaml.tag", Severity.ERROR, "Tags are not read here."),
  /** Text stands behind a closed quotation. */
  TEXT_AFTER_QUOTE(
      "yaml.text-after-quote", Severity.ERROR, "Text stands behind a closed quotation."),
  /** Lists and mappings lie too deep within each other. */
  TOO_DEEP("yaml.too-deep", Severity.ERROR, "Lists and mappings lie too deep within each other."),
  /** The file is too large. */
  TOO_LARGE("yaml.too-large", Severity.ERROR, "The file is too large."),
  /** There are more findings than are told at once. */
  MORE_FINDINGS(
      "script.more-findings", Severity.NOTE, "There are more findings than are told at once."),
  /** The first key must say what file this is and in which version. */
  WRONG_HEADER(
      "script.wrong-header",
      Severity.ERROR,
      "The first key must say what file this is and in which version."),
  /** A key is not one of those that stand here. */
  UNKNOWN_KEY("script.unknown-key", Severity.ERROR, "A key is not one of those that stand here."),
  /** A key that must stand here is missing. */
  MISSING_KEY("script.missing-key", Severity.ERROR, "A key that must stand here is missing."),
  /** Keys that exclude each other stand together. */
  CONFLICTING_KEYS(
      "script.conflicting-keys", Severity.ERROR, "Keys that exclude each other stand together."),
  /** Nothing stands behind a key. */
  MISSING_VALUE("script.missing-value", Severity.ERROR, "Nothing stands behind a key."),
  /** A list, a mapping or a text stands where another of them is read. */
  WRONG_FORM(
      "script.wrong-form",
      Severity.ERROR,
      "A list, a mapping or a text stands where another of them is read."),
  /** An id has other characters than lower-case letters, figures and hyphens. */
  BAD_ID(
      "script.bad-id",
      Severity.ERROR,
      "An id has other characters than lower-case letters, figures and hyphens."),
  /** A list has no items. */
  EMPTY_LIST("script.empty-list", Severity.ERROR, "A list has no items."),
  /** A text is empty. */
  EMPTY_TEXT("script.empty-text", Severity.ERROR, "A text is empty."),
  /** A text is too long. */
  TEXT_TOO_LONG("script.text-too-long", Severity.ERROR, "A text is too long."),
  /** A list has too many items. */
  TOO_MANY("script.too-many", Severity.ERROR, "A list has too many items."),
  /** A word is not one of the few that are read here. */
  UNKNOWN_WORD(
      "script.unknown-word", Severity.ERROR, "A word is not one of the few that are read here."),
  /** Something else than `true` or `false` stands where one of them is read. */
  NOT_TRUE_OR_FALSE(
      "script.not-true-or-false",
      Severity.ERROR,
      "Something else than `true` or `false` stands where one of them is read."),
  /** Something else stands where a number is read. */
  NOT_A_NUMBER(
      "script.not-a-number", Severity.ERROR, "Something else stands where a number is read."),
  /** Something else stands where a whole number is read. */
  NOT_A_WHOLE_NUMBER(
      "script.not-a-whole-number",
      Severity.ERROR,
      "Something else stands where a whole number is read."),
  /** Something else stands where a figure with its unit is read. */
  NOT_A_QUANTITY(
      "script.not-a-quantity",
      Severity.ERROR,
      "Something else stands where a figure with its unit is read."),
  /** A figure has no unit. */
  MISSING_UNIT("script.missing-unit", Severity.ERROR, "A figure has no unit."),
  /** A unit is not one of those that are read. */
  UNKNOWN_UNIT("script.unknown-unit", Severity.ERROR, "A unit is not one of those that are read."),
  /** A unit measures something else than is wanted. */
  WRONG_UNIT("script.wrong-unit", Severity.ERROR, "A unit measures something else than is wanted."),
  /** A figure is outside its range. */
  OUT_OF_RANGE("script.out-of-range", Severity.ERROR, "A figure is outside its range."),
  /** A time is no whole number of ticks of 0.05 s. */
  NOT_WHOLE_TICKS(
      "script.not-whole-ticks", Severity.ERROR, "A time is no whole number of ticks of 0.05 s."),
  /** A range is not written LOW..HIGH, the lower first. */
  NOT_A_RANGE(
      "script.not-a-range", Severity.ERROR, "A range is not written LOW..HIGH, the lower first."),
  /** A time allowed is not written TIME of cue ID. */
  NOT_A_WINDOW(
      "script.not-a-window", Severity.ERROR, "A time allowed is not written TIME of cue ID."),
  /** A trade rule's number is not written as O2 or N3. */
  NOT_A_RULE(
      "script.not-a-rule", Severity.ERROR, "A trade rule's number is not written as O2 or N3."),
  /** An order is not understood. */
  BAD_ORDER("script.bad-order", Severity.ERROR, "An order is not understood."),
  /** What a witness waits for is not understood. */
  BAD_UPON("script.bad-upon", Severity.ERROR, "What a witness waits for is not understood."),
  /** A position does not fit its port. */
  BAD_POSITION("ship.bad-position", Severity.ERROR, "A position does not fit its port."),
  /** Something is named that is not there. */
  UNKNOWN_NAME("script.unknown-name", Severity.ERROR, "Something is named that is not there."),
  /** Two things have the same name. */
  DUPLICATE_NAME("script.duplicate-name", Severity.ERROR, "Two things have the same name."),
  /** A file of the ship is not there. */
  MISSING_FILE("ship.missing-file", Severity.ERROR, "A file of the ship is not there."),
  /** A condition leaves a state of the plant out. */
  MISSING_STATE(
      "ship.missing-state", Severity.ERROR, "A condition leaves a state of the plant out."),
  /** Nothing can leak at a place. */
  NO_LEAK_PLACE("script.no-leak-place", Severity.ERROR, "Nothing can leak at a place."),
  /** The points of the response do not add up to 100. */
  POINTS_SUM(
      "script.points-sum", Severity.ERROR, "The points of the response do not add up to 100."),
  /** Steps must come before each other in a circle. */
  PRECEDENCE_CYCLE(
      "script.precedence-cycle", Severity.ERROR, "Steps must come before each other in a circle."),
  /** No way leads to a phase. */
  UNREACHABLE_PHASE("script.unreachable-phase", Severity.ERROR, "No way leads to a phase."),
  /** No way leads out of a phase that is no end. */
  DEAD_END("script.dead-end", Severity.ERROR, "No way leads out of a phase that is no end."),
  /** No phase ends the drill. */
  NO_END("script.no-end", Severity.ERROR, "No phase ends the drill."),
  /** A time allowed is longer than the drill. */
  WINDOW_TOO_LONG(
      "script.window-too-long", Severity.WARNING, "A time allowed is longer than the drill."),
  /** The title gives the answer away. */
  TITLE_TELLS("script.title-tells", Severity.WARNING, "The title gives the answer away."),
  /** A script with critical acts has no caution. */
  NO_CAUTION("script.no-caution", Severity.SAFETY, "A script with critical acts has no caution."),
  /** A charge on a figure of the model alone is critical. */
  MODEL_ONLY_CRITICAL(
      "script.model-only-critical",
      Severity.SAFETY,
      "A charge on a figure of the model alone is critical.");

  private final String id;
  private final Severity severity;
  private final String meaning;

  FindingId(String id, Severity severity, String meaning) {
    this.id = id;
    this.severity = severity;
    this.meaning = meaning;
  }

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
