package handwheel.terminal;

import handwheel.screen.Ascii;
import handwheel.screen.Out;
import java.util.function.LongSupplier;

/**
 * Under what conditions a face runs.
 *
 * @param clockNs a clock that only goes forward, ns
 * @param pace how much faster than real time; 0, in a pipe only: as fast as it goes
 * @param isAscii whether nothing but ASCII may be written
 * @param shutdown tells when the program is told to stop
 */
public record Conditions(LongSupplier clockNs, double pace, boolean isAscii, Shutdown shutdown) {
  /** Returns where lines go, in the characters that may be written. */
  Out lettersOf(Out out) {
    return isAscii ? text -> out.line(Ascii.of(text)) : out;
  }
}
