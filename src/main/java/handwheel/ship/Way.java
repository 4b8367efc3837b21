package handwheel.ship;

/**
 * A way between two places, walked in both directions.
 *
 * @param from id of one end
 * @param to id of the other end
 * @param flatM level length, m
 * @param ladderM length along the ladder, m
 */
public record Way(String from, String to, double flatM, double ladderM) {}
