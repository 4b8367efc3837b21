package handwheel.plant;

/** A named whole number the discrete rules keep: a flag, 0 or 1, or a timer counted in ticks. */
final class Flag {
  private final String name;

  /** The value. */
  int n;

  Flag(String name) {
    this.name = name;
  }

  boolean isSet() {
    return n != 0;
  }

  void set(boolean on) {
    n = on ? 1 : 0;
  }

  void walk(StateWalker walker) {
    n = (int) walker.visit(name, n);
  }
}
