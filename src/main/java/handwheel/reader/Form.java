package handwheel.reader;

/** What the value of a key looks like. */
enum Form {
  /** The file's kind and version. */
  HEADER,
  /** Lower-case words joined by hyphens. */
  ID,
  /** One id or a list of them. */
  IDS,
  /** Words joined by dots: a quantity or port of the plant, or a leak's flow. */
  DOTTED_ID,
  /** A text for people. */
  TEXT,
  /** One of a few words. */
  WORD,
  /** {@code true} or {@code false}. */
  TRUE_FALSE,
  /** A whole number. */
  WHOLE,
  /** A bare number. */
  NUMBER,
  /** A figure with its unit. */
  QUANTITY,
  /** A time with its unit, a whole number of ticks. */
  TIME,
  /** A quantity or {@code vary NAME}. */
  AMOUNT,
  /** A position of a port: a number, a quantity, a word, or {@code setting}. */
  POSITION,
  /** {@code LOW..HIGH}. */
  RANGE,
  /** Whole points with the word: {@code 80 points}. */
  POINTS,
  /** {@code TIME of cue ID}. */
  WINDOW,
  /** A trade rule's number, such as {@code O2}. */
  RULE,
  /** An order in its canonical form. */
  ORDER,
  /** What a witness waits for. */
  UPON,
  /** A file's name in the ship's folder. */
  FILE,
  /** A mapping of fixed keys. */
  MAPPING,
  /** A list of mappings of fixed keys. */
  LIST,
  /** A mapping whose keys are names. */
  NAMED,
  /** A condition. */
  CONDITION,
  /** A list of conditions. */
  CONDITIONS
}
