/**
 * What a person sees and presses, without a terminal: the state of the face, how it reacts to
 * events, how it is drawn as rows of text, and the words of the line mode. Reacting and drawing are
 * pure functions: the same state and event give the same next state, the same state and size the
 * same frame.
 *
 * <p>This package never reads a clock, never writes to a terminal, never uses colour, and never
 * knows more than the trainee may know from where he stands.
 *
 * <p>Reading order: {@link handwheel.screen.Desk}; inside: {@code State}, {@code Event}, {@code
 * Deed}, {@code Reaction}, {@code Painting}, {@code Board}; then {@link handwheel.screen.Expander}
 * for the order line and {@link handwheel.screen.LineDesk} for the line mode.
 */
@org.jspecify.annotations.NullMarked
package handwheel.screen;
