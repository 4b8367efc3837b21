/**
 * What the program tells a person about his input: findings with place, message and mend, and the
 * nearest valid words.
 *
 * <p>This package never reads a file and never throws for a person's mistake.
 *
 * <p>Reading order: {@link handwheel.diagnostics.SourceSpot}, {@link
 * handwheel.diagnostics.Finding}, {@link handwheel.diagnostics.NearestWords}.
 */
@org.jspecify.annotations.NullMarked
package handwheel.diagnostics;
