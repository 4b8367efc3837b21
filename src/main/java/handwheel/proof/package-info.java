/**
 * Is a script sound? The witness plays it through the same session as a trainee and must be able to
 * do it right, whatever the seed; everything that could go wrong is played as well and must cost
 * what it ought to.
 *
 * <p>This package never lets a player see the truth: a witness knows what a trainee hears and sees.
 * It starts no thread: trials are independent, and {@code app} plays them side by side.
 *
 * <p>Reading order: {@link handwheel.proof.WitnessPlayer}, {@link handwheel.proof.Prover}, {@link
 * handwheel.proof.Base}, then the mutants: {@link handwheel.proof.Slips}, {@link
 * handwheel.proof.Wrongs}, {@link handwheel.proof.Harms}, {@link handwheel.proof.CheapTries}, and
 * {@link handwheel.proof.Judge}. {@link handwheel.proof.ProofId} lists all that can be found.
 */
@org.jspecify.annotations.NullMarked
package handwheel.proof;
