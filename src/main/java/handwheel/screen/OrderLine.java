package handwheel.screen;

/**
 * The line an order is typed on.
 *
 * @param typed what stands there
 * @param firstKeyTick tick of its first key: the instant of the order, since typing is not graded
 * @param expansion what it stands for
 * @param last the line given last
 * @param caution id of the caution that stands between it and Enter; may be empty
 */
record OrderLine(
    String typed, long firstKeyTick, Expansion expansion, String last, String caution) {
  /** No order is as long. */
  private static final int MOST_LETTERS = 200;

  static final OrderLine EMPTY = new OrderLine("", 0, Expansion.NOTHING, "", "");

  boolean isEmpty() {
    return typed.isEmpty();
  }

  /**
   * Returns the line with another text in it; the first key is the one that fills an empty line.
   */
  OrderLine typing(String text, long tick, Expander expander) {
    if (text.length() > MOST_LETTERS) {
      return this;
    }
    long first = typed.isBlank() ? tick : firstKeyTick;
    Expansion means = text.isBlank() ? Expansion.NOTHING : expander.expand(text);
    return new OrderLine(text, first, means, last, "");
  }

  OrderLine cleared() {
    return new OrderLine("", 0, Expansion.NOTHING, last, "");
  }

  OrderLine given() {
    return new OrderLine("", 0, Expansion.NOTHING, typed, "");
  }

  OrderLine cautioned(String id) {
    return new OrderLine(typed, firstKeyTick, expansion, last, id);
  }
}
