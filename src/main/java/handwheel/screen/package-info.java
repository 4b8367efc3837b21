/**
 * What a person sees and presses, without a terminal: the state of the face, how it reacts to keys
 * and entries, how it is drawn as rows of text, and the words of the line mode. Drawing is a pure
 * function: the same state, sight and size give the same frame.
 *
 * <p>This package never reads a clock, never writes to a terminal and never knows more than the
 * trainee may know from where he stands.
 *
 * <p>Reading order: {@link handwheel.screen.Desk}, {@link handwheel.screen.State}, {@link
 * handwheel.screen.Frame}, {@link handwheel.screen.LineDesk}, {@link handwheel.screen.Expansion}.
 */
@org.jspecify.annotations.NullMarked
package handwheel.screen;
