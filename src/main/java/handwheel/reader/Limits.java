package handwheel.reader;

/** Limits on what is read. A file past one of them gives a finding. */
final class Limits {
  /** Size of a file, bytes. */
  static final int FILE_BYTES = 262_144;

  /** Depth of lists and mappings within each other. */
  static final int DEPTH = 20;

  /** Findings told at once. */
  static final int FINDINGS = 200;

  /** Length of an id, characters. */
  static final int ID_CHARS = 40;

  /** Length of a name, a title or a single figure, characters. */
  static final int NAME_CHARS = 60;

  /** Length of an order, characters. */
  static final int ORDER_CHARS = 200;

  /** Length of a text for people, characters. */
  static final int TEXT_CHARS = 600;

  /** Items of a list in a script. */
  static final int SCRIPT_ITEMS = 100;

  /** Items of a list in a ship file. */
  static final int SHIP_ITEMS = 400;

  /** Longest time, s: one day. */
  static final int TIME_S = 86_400;

  /** Largest figure in its SI unit. */
  static final double FIGURE = 1e12;

  private Limits() {}
}
