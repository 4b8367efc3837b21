/**
 * Quantities and their units, at the edges of the program. Inside the plant every figure is a bare
 * SI double whose name ends in its unit; a {@link handwheel.units.Measure} carries a figure across
 * packages, scripts and screens.
 *
 * <p>This package never knows what is measured, and it alone holds the offsets and factors.
 *
 * <p>Reading order: {@link handwheel.units.Dimension}, {@link handwheel.units.Unit}, {@link
 * handwheel.units.Measure}.
 */
@org.jspecify.annotations.NullMarked
package handwheel.units;
