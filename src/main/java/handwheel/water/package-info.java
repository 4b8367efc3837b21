/**
 * Properties of steam and water: one saturation table, read once, and one correlation for
 * superheated steam. Pure look-up; this package knows no time and no state of a plant.
 *
 * <p>Reading order: {@link handwheel.water.SaturationTable}, {@link handwheel.water.Saturation},
 * {@link handwheel.water.SuperheatedSteam}.
 */
@org.jspecify.annotations.NullMarked
package handwheel.water;
