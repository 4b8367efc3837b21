package handwheel.plant;

/** Where every port of one plant stands. */
final class Positions {
  private static final Port[] ALL = Port.values();
  private static final String[] NAMES = names();

  private final double[] at = new double[ALL.length];

  private static String[] names() {
    String[] names = new String[ALL.length];
    for (Port port : ALL) {
      names[port.index()] = "port." + port.id();
    }
    return names;
  }

  double at(Port port) {
    return at[port.index()];
  }

  double at(Port first, Burner burner) {
    return at[first.index() + burner.index()];
  }

  boolean isOn(Port port) {
    return at[port.index()] > 0;
  }

  /** Tells whether a choice stands on a word, by the word's index. */
  boolean isAt(Port port, int word) {
    return (int) at[port.index()] == word;
  }

  void set(Port port, double position) {
    at[port.index()] = position;
  }

  void walk(StateWalker walker) {
    for (int i = 0; i < at.length; i++) {
      at[i] = walker.visit(NAMES[i], at[i]);
    }
  }
}
