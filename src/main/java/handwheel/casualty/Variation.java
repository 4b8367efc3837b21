package handwheel.casualty;

import handwheel.units.Unit;

/**
 * A figure drawn evenly between two ends for each run.
 *
 * @param name lower-kebab name
 * @param fromSi lower end, SI
 * @param toSi upper end, SI
 * @param unit the unit its author wrote
 */
public record Variation(String name, double fromSi, double toSi, Unit unit) {}
