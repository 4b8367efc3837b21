/**
 * Is a script sound? The witness plays it through the same session as a trainee and must be able to
 * do it right, whatever the seed.
 *
 * <p>This package never lets a player see the truth: a witness knows what a trainee hears and sees.
 *
 * <p>Reading order: {@link handwheel.proof.WitnessPlayer}.
 */
@org.jspecify.annotations.NullMarked
package handwheel.proof;
