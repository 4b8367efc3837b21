package handwheel.ship;

/**
 * Where and how a fitting is worked.
 *
 * @param place id of the place
 * @param kind how it is worked
 * @param turns turns from open to shut; 0 where nothing turns
 * @param timeS time from open to shut by one steady man, s
 */
public record Control(String place, ControlKind kind, double turns, double timeS) {}
