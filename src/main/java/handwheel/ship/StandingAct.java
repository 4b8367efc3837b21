package handwheel.ship;

import handwheel.plant.Quantity;

/**
 * What a drilled man does without being told.
 *
 * @param who station id
 * @param sees the true value he has before his eyes
 * @param below he acts when it falls below this, SI
 * @param afterS his delay, s
 * @param order what he then does
 */
public record StandingAct(String who, Quantity sees, double below, double afterS, Order order) {}
