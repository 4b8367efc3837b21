package handwheel.ship;

import handwheel.plant.Port;
import java.util.OptionalDouble;

/**
 * One part of what an act does to the plant.
 *
 * @param port the plant's input
 * @param to where it goes, in the port's SI unit; empty: to the setting that was ordered
 * @param afterS how long after the hand is on it, s
 */
public record PortMove(Port port, OptionalDouble to, double afterS) {}
