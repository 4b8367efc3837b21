package handwheel.casualty;

import handwheel.diagnostics.SourceSpot;

/**
 * One line of the witness: waits for something, then a while, then says an order.
 *
 * @param upon what it waits for
 * @param waitTicks how long after it
 * @param say canonical order
 * @param spot where it stands in the script
 */
public record WitnessLine(Upon upon, long waitTicks, String say, SourceSpot spot) {}
