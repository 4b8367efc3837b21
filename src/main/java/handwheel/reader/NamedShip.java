package handwheel.reader;

import handwheel.diagnostics.SourceSpot;

/**
 * The ship a script is written for.
 *
 * @param id the ship's id
 * @param spot where the script names it
 */
public record NamedShip(String id, SourceSpot spot) {}
