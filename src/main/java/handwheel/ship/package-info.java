/**
 * A ship as data: places and the ways between them, fittings with their local and remote controls,
 * gauges and where they can be read, the watch, and the orders that can be given.
 *
 * <p>This package never moves anything and never reads a file.
 *
 * <p>Reading order: {@link handwheel.ship.Ship}, {@link handwheel.ship.Fitting}, {@link
 * handwheel.ship.Order}, {@link handwheel.ship.OrderText}.
 */
@org.jspecify.annotations.NullMarked
package handwheel.ship;
