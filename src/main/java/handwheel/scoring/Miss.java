package handwheel.scoring;

/**
 * Why a step was not done.
 *
 * @param type class of the error
 * @param points points lost
 * @param tick when its time ran out
 * @param reading the figure behind it, for people
 * @param what what happened, for people
 * @param isExcused whether crew or gear is why
 */
record Miss(
    ErrorClass type, int points, long tick, String reading, String what, boolean isExcused) {
  boolean isNoFault() {
    return type == ErrorClass.NO_FAULT;
  }
}
