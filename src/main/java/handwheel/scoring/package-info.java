/**
 * From a script, a ship and the entries of a run to a score sheet: what was done, in which order,
 * in time, at the right place, with which consequences. Pure and in whole numbers: the same entries
 * give the same sheet, whenever and wherever it is reckoned.
 *
 * <p>This package never moves the plant, never reads a file or a clock, and decides nothing: the
 * machine advises, the board decides.
 *
 * <p>Reading order: {@link handwheel.scoring.Scorer}, {@link handwheel.scoring.ScoreSheet}, {@code
 * Finder} (when a step was done), {@code LeastBlame} (whose fault a wrong order is), {@code
 * Marking} (what it costs), {@link handwheel.scoring.ScoreText}.
 */
@org.jspecify.annotations.NullMarked
package handwheel.scoring;
