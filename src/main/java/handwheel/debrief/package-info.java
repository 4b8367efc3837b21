/**
 * A run looked at again: simulated from its inputs, compared with its record line by line, and told
 * to the trainee.
 *
 * <p>This package never opens a file and never changes a record.
 *
 * <p>Reading order: {@link handwheel.debrief.RecordedInputs}, {@link
 * handwheel.debrief.Verification}, {@link handwheel.debrief.Debrief}, {@code DebriefPage}, {@code
 * PageText}, {@code PageHtml}; what a mistake cost: {@code Mending}, {@code Costs}.
 */
@org.jspecify.annotations.NullMarked
package handwheel.debrief;
