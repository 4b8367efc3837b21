/**
 * A casualty script as a model: phases, cues, faults, the graded response, forbidden acts, cautions
 * and the witness. It says what happens and what is expected; it runs nothing.
 *
 * <p>This package never reads YAML and never moves the plant.
 *
 * <p>Reading order: {@link handwheel.casualty.Casualty}, {@link handwheel.casualty.Phase}, {@link
 * handwheel.casualty.Step}, {@link handwheel.casualty.Never}.
 */
@org.jspecify.annotations.NullMarked
package handwheel.casualty;
