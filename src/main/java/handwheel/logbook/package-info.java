/**
 * The entries of a run, their line form and the chain of hashes that binds them. Entries are the
 * ground state: score, debrief and screens are derived from them.
 *
 * <p>This package never opens a file, never reads a clock, and never writes a floating-point figure
 * as text: figures are scaled to integers.
 *
 * <p>Reading order: {@link handwheel.logbook.Entry}, {@link handwheel.logbook.EntrySink}.
 */
@org.jspecify.annotations.NullMarked
package handwheel.logbook;
