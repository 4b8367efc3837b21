package handwheel.app;

import handwheel.drill.Mode;

/** Reads the option {@code --pace}. */
final class Paces {
  private Paces() {}

  /**
   * Returns how much faster than real time a drill runs; 0 as fast as it goes.
   *
   * @throws Usage if the pace is none, or not one for this drill
   */
  static double of(Arguments args, Mode mode, boolean isAttended) throws Usage {
    boolean isZero = args.value("--pace").map("0"::equals).orElse(false);
    double pace = isZero ? 0 : args.decimal("--pace", 1);
    if (isZero && isAttended) {
      throw new Usage("`--pace 0` is for orders from a pipe; you could not keep up with it.");
    }
    if (mode.isScored() && pace != 1 && isAttended) {
      throw new Usage("`--pace`: a scored drill runs at the pace of the real thing, 1.");
    }
    return pace;
  }
}
