package handwheel.casualty;

/**
 * A time allowed from a cue on.
 *
 * @param ticks how long
 * @param cue id of the cue
 */
public record Window(long ticks, String cue) {}
