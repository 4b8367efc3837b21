package handwheel.casualty;

/**
 * How a drill starts.
 *
 * @param condition id of the ship's initial condition
 * @param crew how well the watch is drilled
 */
public record Start(String condition, CrewState crew) {}
