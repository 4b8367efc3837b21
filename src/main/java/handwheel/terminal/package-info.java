/**
 * The terminal itself: one JLine terminal owns it, Lanterna draws the differences between frames on
 * it, and both are known only here. The line mode uses the same terminal, a pipe or a dumb one.
 *
 * <p>This package never decides what is shown or what an order means, and reads the time only from
 * the clock it is given.
 *
 * <p>Reading order: {@link handwheel.terminal.FullScreen}, {@link handwheel.terminal.LineFace}.
 */
@org.jspecify.annotations.NullMarked
package handwheel.terminal;
