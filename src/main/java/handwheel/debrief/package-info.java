/**
 * A run looked at again: simulated from its inputs, compared with its record line by line, and told
 * to the trainee.
 *
 * <p>This package never opens a file and never changes a record.
 *
 * <p>Reading order: {@link handwheel.debrief.RecordedInputs}, {@link
 * handwheel.debrief.Verification}, {@link handwheel.debrief.DebriefText}.
 */
@org.jspecify.annotations.NullMarked
package handwheel.debrief;
