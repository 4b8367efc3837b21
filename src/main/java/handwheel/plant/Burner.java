package handwheel.plant;

/** A burner by its place on the boiler front. */
public enum Burner {
  /** First burner of the saturated furnace. */
  S1(Side.SATURATED),
  /** Second burner of the saturated furnace. */
  S2(Side.SATURATED),
  /** Third burner of the saturated furnace. */
  S3(Side.SATURATED),
  /** Fourth burner of the saturated furnace. */
  S4(Side.SATURATED),
  /** Fifth burner of the saturated furnace. */
  S5(Side.SATURATED),
  /** First burner of the superheater furnace. */
  H1(Side.SUPERHEATER),
  /** Second burner of the superheater furnace. */
  H2(Side.SUPERHEATER),
  /** Third burner of the superheater furnace. */
  H3(Side.SUPERHEATER);

  private final Side side;

  Burner(Side side) {
    this.side = side;
  }

  /** Index of this one in arrays inside the package; never leaves it. */
  @SuppressWarnings("EnumOrdinal")
  int index() {
    return ordinal();
  }

  /**
   * Returns the furnace this burner fires.
   *
   * @return the furnace
   */
  public Side side() {
    return side;
  }
}
