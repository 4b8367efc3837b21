package handwheel.board;

/** How far a number of runs carries. The bounds are common practice for small tests. */
public enum Enough {
  /** Under 10: no item figures, intervals only. */
  NO,
  /** 10 to 29: item figures with a warning. */
  BARELY,
  /** 30 and more. */
  YES;

  private static final int BARELY_RUNS = 10;
  private static final int YES_RUNS = 30;

  /**
   * Sorts a number of runs.
   *
   * @param runs 0 or more
   * @return how far they carry
   */
  public static Enough of(int runs) {
    if (runs < BARELY_RUNS) {
      return NO;
    }
    return runs < YES_RUNS ? BARELY : YES;
  }

  /**
   * Returns the words a report shows.
   *
   * @return empty where there are enough
   */
  public String words() {
    return switch (this) {
      case NO -> "too few runs (under 10): intervals only";
      case BARELY -> "too few runs (under 30): read with care";
      case YES -> "";
    };
  }
}
