package handwheel.casualty;

import handwheel.diagnostics.SourceSpot;
import java.util.Optional;

/**
 * One line of the witness: waits for something, then a while, then says an order.
 *
 * @param upon what it waits for
 * @param waitTicks how long after it
 * @param say canonical order
 * @param spot where it stands in the script
 * @param only the drawn word with which it is said; always if empty
 */
public record WitnessLine(
    Upon upon, long waitTicks, String say, SourceSpot spot, Optional<When.DrawnIs> only) {}
