/**
 * The program as people start it: {@code main}, one class for each command, files, the clock and
 * the wiring. The only package that reads a clock or decides where files stand.
 *
 * <p>This package never decides what happens in a drill and never scores.
 *
 * <p>Reading order: {@link handwheel.app.Main}, then the command of interest.
 */
@org.jspecify.annotations.NullMarked
package handwheel.app;
