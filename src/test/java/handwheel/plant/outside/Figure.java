package handwheel.plant.outside;

/**
 * One figure of the plant beside one of the world outside.
 *
 * @param check which check it belongs to
 * @param what what was compared
 * @param found the plant's figure
 * @param outside the figure it is held to
 * @param allowed largest difference that passes, in the same unit
 */
record Figure(String check, String what, double found, double outside, double allowed) {
  static Figure relative(String check, String what, double found, double outside, double share) {
    return new Figure(check, what, found, outside, share * Math.abs(outside));
  }

  boolean holds() {
    return Math.abs(found - outside) <= allowed;
  }
}
