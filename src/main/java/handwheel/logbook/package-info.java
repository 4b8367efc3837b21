/**
 * The entries of a run, their line form and the chain of hashes that binds them. Entries are the
 * ground state: score, debrief and screens are derived from them. The form of an installation's
 * ledger is here too, because it is the same chain.
 *
 * <p>This package never opens a file, never reads a clock, and never writes a floating-point figure
 * as text: figures are scaled to integers. It never throws at what a file says: what is wrong with
 * a line or a file is part of the answer.
 *
 * <p>Reading order: {@link handwheel.logbook.Entry}, {@link handwheel.logbook.EntrySink}, {@link
 * handwheel.logbook.EntryLine}, {@link handwheel.logbook.Chain}, {@link
 * handwheel.logbook.ChainedEntries}, {@link handwheel.logbook.About}, {@link
 * handwheel.logbook.End}, {@link handwheel.logbook.RecordText}, {@link
 * handwheel.logbook.RunRecord}, {@link handwheel.logbook.LedgerText}.
 */
@org.jspecify.annotations.NullMarked
package handwheel.logbook;
