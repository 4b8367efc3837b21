package handwheel.proof;

import handwheel.drill.Player;
import java.util.function.Supplier;

/**
 * One run to be played.
 *
 * @param name what is tried, for people
 * @param seed seed of every draw
 * @param player makes who plays it
 */
public record Trial(String name, long seed, Supplier<Player> player) {}
