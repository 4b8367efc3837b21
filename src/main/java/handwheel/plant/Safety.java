package handwheel.plant;

/** A safety valve of the boiler, in the order in which they are tried. */
public enum Safety {
  /** On the superheater outlet; set lowest, so that steam flows through the superheater first. */
  SUPERHEATER,
  /** First valve on the drum. */
  DRUM_1,
  /** Second valve on the drum. */
  DRUM_2;

  /** Index of this one in arrays inside the package; never leaves it. */
  @SuppressWarnings("EnumOrdinal")
  int index() {
    return ordinal();
  }
}
